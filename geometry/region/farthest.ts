import { rememberOn } from '../remember.ts'
import { pointAt } from './edge.ts'
import { distance, norm, origin, type Point } from './point.ts'
import type { Region } from './region.ts'

/** The point of a region's boundary that lies farthest from c. Exact for arcs and segments. */
export function farthest(region: Region, c: Point): Point {
  const f = region.form
  if (f.kind === 'polygon') return f.points.reduce((best, p) => (distance(p, c) > distance(best, c) ? p : best))
  if (f.kind === 'disc') return (arcFar(f.c, f.r, 0, 2 * Math.PI, c) as [Point])[0]
  let best = region.core
  for (const e of region.edges) {
    const candidates: Point[] = e.kind === 'segment' ? [e.a, e.b] : arcFar(e.c, e.r, e.start, e.sweep, c)
    for (const p of candidates) if (distance(p, c) > distance(best, c)) best = p
  }
  return best
}

function arcFar(m: Point, r: number, start: number, sweep: number, c: Point): Point[] {
  const on = (w: number): Point => ({ x: m.x + r * Math.cos(w), y: m.y + r * Math.sin(w) })
  const away = Math.atan2(m.y - c.y, m.x - c.x)
  const turn = (((away - start) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI)
  return turn <= sweep ? [on(away)] : [on(start), on(start + sweep)]
}

const same = 1e-9
const known = new WeakMap<Region, { c: Point; points: Point[] }>()

/** All that lie farthest: more than one where an arc about c itself is the farthest, its ends and middle then. */
export function allFarthest(region: Region, c: Point): readonly Point[] {
  const kept = known.get(region)
  if (kept && kept.c.x === c.x && kept.c.y === c.y) return kept.points
  const candidates = region.edges.flatMap((e) =>
    e.kind === 'segment'
      ? [e.a, e.b]
      : [...arcFar(e.c, e.r, e.start, e.sweep, c), ...[0, 0.25, 0.5, 0.75, 1].map((t) => pointAt(e, t))],
  )
  const most = candidates.reduce((best, p) => Math.max(best, distance(p, c)), 0)
  const points = candidates.filter((p) => distance(p, c) >= most - same)
  known.set(region, { c, points })
  return points
}

/** How far a region reaches from the hilt's axis, mm. */
export const reachFromAxis = rememberOn((region: Region): number => {
  const far = farthest(region, origin)
  return norm(far.x, far.y)
})
