import type { GapCell, GapStripView } from './gap-strip.ts'
import type { OpenSeam } from './open-seams.ts'
import { type RadiiHere, radiiAt, type UnrolledView } from './unrolled.ts'

/** What there is at one place of the hilt. */
export interface Readout {
  readonly z: number
  readonly theta: number
  /** Free and filled radius in this direction; undefined beyond the hilt. */
  readonly radii: RadiiHere | undefined
  /** The slice of a sled that lies here; the tightest where two sleds do. */
  readonly cell: GapCell | undefined
  /** That slice keeps a distance wider than is told apart, mm. */
  readonly wide: number | undefined
  /** It lies in a mouth that nothing fills. */
  readonly seam: OpenSeam | undefined
}

export function readoutAt(gap: GapStripView, unrolled: UnrolledView, z: number, theta: number): Readout {
  const cells = gap.runs.flatMap((r) => r.cells.filter((c) => c.z0 <= z && z <= c.z1))
  const cell = cells.reduce<GapCell | undefined>((a, c) => (a && a.nominal <= c.nominal ? a : c), undefined)
  return {
    z,
    theta,
    radii: radiiAt(unrolled.table, z, theta),
    cell,
    seam: gap.seams.find((s) => s.z0 <= z && z <= s.z1),
    wide: cell && cell.nominal >= gap.widest ? gap.widest : undefined,
  }
}
