import { clock } from '../../geometry/region/point.ts'
import type { Across } from './across.ts'

/** The clock angle a round nest opens to: where the part lies nearest to the outside, away from the boards for one on the axis. */
export function openSide({ x, y }: Pick<Across, 'x' | 'y'>, board: Pick<Across, 'facing'> | undefined): number {
  const at = { x: x.nominal, y: y.nominal }
  if (Math.hypot(at.x, at.y) > 0.2) return Number(clock(at).toFixed(3))
  return board ? (board.facing + 180) % 360 : 180
}
