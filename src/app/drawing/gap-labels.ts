import type { CrossGap } from '../../papers/cross-gaps.ts'
import { type CrossFrame, place } from './outline-path.ts'

/** A gap on the sheet, with the place for its number beside the drawing. */
export interface PlacedGap {
  readonly gap: CrossGap
  readonly p: readonly [number, number]
  readonly q: readonly [number, number]
  readonly label: readonly [number, number]
  readonly side: 'left' | 'right'
}

/** Least distance of two numbers, px. */
const apart = 19

/** Puts the numbers into two columns beside the drawing, each at the height of its gap, none over another. */
export function placeGaps(gaps: readonly CrossGap[], frame: CrossFrame, radius: number): PlacedGap[] {
  const placed = gaps.map((gap) => {
    const [p, q] = [place(frame, gap.p), place(frame, gap.q)]
    const middle = [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2] as const
    return { gap, p, q, y: middle[1], side: middle[0] < frame.cx ? ('left' as const) : ('right' as const) }
  })
  return (['left', 'right'] as const).flatMap((side) => {
    const column = placed.filter((g) => g.side === side).toSorted((a, b) => a.y - b.y)
    const [top, bottom] = [frame.cy - radius, frame.cy + radius]
    const ys: number[] = []
    for (const g of column) ys.push(Math.max(top, g.y, (ys.at(-1) ?? Number.NEGATIVE_INFINITY) + apart))
    const over = Math.max(0, (ys.at(-1) ?? 0) - bottom)
    const x = side === 'left' ? frame.cx - radius - 14 : frame.cx + radius + 14
    return column.map((g, i) => ({ ...g, label: [x, (ys[i] as number) - over] as const }))
  })
}
