import type { InsertionWay } from '../../papers/insertion-way.ts'
import { travelTo, wayLength } from './pushing.ts'

/** Gap over the way in, to be drawn in a box of so many pixels. */
export interface GapLine {
  /** The gap as measured, as the points of a line; broken where nothing is there to meet. */
  readonly lines: readonly string[]
  /** Between the gap as measured and the gap at the worst, as a filled band. */
  readonly bands: readonly string[]
  readonly x: (travel: number) => number
  readonly y: (gap: number) => number
  /** The gaps at the upper and the lower edge, mm. */
  readonly most: number
  readonly least: number
}

/** Gaps above this are all one: there is room, mm. */
const roomy = 2
/** Overlaps beyond this are all one, mm. */
const deep = -2

export function gapLine(way: InsertionWay, width: number, height: number): GapLine {
  const finite = way.samples.filter((s) => Number.isFinite(s.gap))
  const most = Math.min(roomy, Math.max(0.6, 2 * way.limit, ...finite.map((s) => s.gap)))
  const least = Math.max(deep, Math.min(-0.3, ...finite.map((s) => s.worst)))
  const long = wayLength(way) || 1
  const x = (travel: number) => (travel / long) * width
  const y = (gap: number) => ((most - Math.min(most, Math.max(least, gap))) / (most - least)) * height
  const runs: (typeof finite)[] = [[]]
  for (const s of way.samples)
    if (Number.isFinite(s.gap)) runs.at(-1)?.push(s)
    else runs.push([])
  const drawn = runs.filter((r) => r.length > 1)
  const point = (s: (typeof finite)[number], gap: number) =>
    `${x(travelTo(way, s.depth)).toFixed(1)},${y(gap).toFixed(1)}`
  return {
    lines: drawn.map((r) => r.map((s) => point(s, s.gap)).join(' ')),
    bands: drawn.map((r) =>
      [...r.map((s) => point(s, s.gap)), ...r.toReversed().map((s) => point(s, s.worst))].join(' '),
    ),
    x,
    y,
    most,
    least,
  }
}
