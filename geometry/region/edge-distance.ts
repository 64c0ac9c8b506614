import { type Arc, along, crossings, type Edge, pointAt, type Segment } from './edge.ts'
import { distance, type Point, point } from './point.ts'

/** The shortest way between two edges: its length and its two ends. */
export interface Link {
  readonly d: number
  readonly p: Point
  readonly q: Point
}

export const link = (p: Point, q: Point): Link => ({ d: distance(p, q), p, q })
export const nearer = (a: Link, b: Link): Link => (b.d < a.d ? b : a)
const flip = (l: Link): Link => ({ d: l.d, p: l.q, q: l.p })

/** The nearest point of an edge to p. Exact. */
export function nearest(e: Edge, p: Point): Point {
  if (e.kind === 'segment') {
    const [ux, uy] = [e.b.x - e.a.x, e.b.y - e.a.y]
    const uu = ux * ux + uy * uy
    const t = uu === 0 ? 0 : ((p.x - e.a.x) * ux + (p.y - e.a.y) * uy) / uu
    return pointAt(e, Math.min(1, Math.max(0, t)))
  }
  const t = along(e, Math.atan2(p.y - e.c.y, p.x - e.c.x))
  if (t !== undefined) return pointAt(e, t)
  const [a, b] = [pointAt(e, 0), pointAt(e, 1)]
  return distance(a, p) <= distance(b, p) ? a : b
}

/** The shortest link between two edges, p on the first; 0 where they cross. Exact. */
export function between(e: Edge, f: Edge): Link {
  const hit = crossings(e, f)[0]
  if (hit !== undefined) {
    const p = pointAt(e, hit)
    return { d: 0, p, q: p }
  }
  let best = link(pointAt(e, 0), nearest(f, pointAt(e, 0)))
  const consider = (l: Link) => {
    best = nearer(best, l)
  }
  consider(link(pointAt(e, 1), nearest(f, pointAt(e, 1))))
  consider(flip(link(pointAt(f, 0), nearest(e, pointAt(f, 0)))))
  consider(flip(link(pointAt(f, 1), nearest(e, pointAt(f, 1)))))
  if (e.kind === 'arc' && f.kind === 'arc') for (const l of arcArc(e, f)) consider(l)
  if (e.kind === 'segment' && f.kind === 'arc') consider(segmentArc(e, f))
  if (e.kind === 'arc' && f.kind === 'segment') consider(flip(segmentArc(f, e)))
  return best
}

/** Beyond the ends, the only other local minimum is at the foot of the perpendicular from the arc's centre. */
function segmentArc(s: Segment, a: Arc): Link {
  const foot = nearest(s, a.c)
  return link(foot, nearest(a, foot))
}

/** Beyond the ends, the minima lie on the line through both centres. */
function arcArc(a: Arc, b: Arc): Link[] {
  const angle = Math.atan2(b.c.y - a.c.y, b.c.x - a.c.x)
  return [angle, angle + Math.PI].flatMap((w) => {
    if (along(a, w) === undefined) return []
    const p = point(a.c.x + a.r * Math.cos(w), a.c.y + a.r * Math.sin(w))
    return [link(p, nearest(b, p))]
  })
}
