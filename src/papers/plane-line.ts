import { along, crossings, pointAt, segment } from '../../geometry/region/edge.ts'
import { type Point, polar, radians } from '../../geometry/region/point.ts'
import type { Region } from '../../geometry/region/region.ts'
import { type Span, union } from './spans.ts'

/**
 * In a lengthwise section every cross-section is seen on the line in which the cutting plane meets it: through the
 * axis, counted from it, towards clock angle θ up and away from it down.
 */

/** Farther out than anything in a hilt, mm. */
const reach = 500

/** Where the line towards θ (degrees) runs inside a region. */
export function spansOnLine(region: Region, theta: number): Span[] {
  const far = polar(reach, theta)
  const line = segment({ x: -far.x, y: -far.y }, far)
  const ts = [0, 1, ...region.edges.flatMap((e) => crossings(line, e))].toSorted((a, b) => a - b)
  return union(
    ts.slice(1).flatMap((t, i): Span[] => {
      const from = ts[i] as number
      return region.contains(pointAt(line, (from + t) / 2)) ? [[(2 * from - 1) * reach, (2 * t - 1) * reach]] : []
    }),
  )
}

/** How far a region reaches down and up along θ, seen from the side: its shadow. Empty for metal without end. */
export function shadow(region: Region, theta: number): Span | undefined {
  if (!Number.isFinite(region.hold.r)) return undefined
  const u = polar(1, theta)
  const heights = region.edges.flatMap((e) => {
    const turning =
      e.kind === 'segment'
        ? []
        : [radians(theta), radians(theta + 180)].flatMap((w) => {
            const t = along(e, w)
            return t === undefined ? [] : [pointAt(e, t)]
          })
    return [pointAt(e, 0), pointAt(e, 1), ...turning].map((p: Point) => p.x * u.x + p.y * u.y)
  })
  return heights.length === 0 ? undefined : [Math.min(...heights), Math.max(...heights)]
}
