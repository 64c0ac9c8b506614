import { type Arc, along, crossings, type Edge, pointAt, type Segment } from './edge.ts'
import { distance, norm, type Point, point } from './point.ts'

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
    return pointAt(e, foot(e, p))
  }
  const t = along(e, Math.atan2(p.y - e.c.y, p.x - e.c.x))
  if (t !== undefined) return pointAt(e, t)
  return distance(e.a, p) <= distance(e.b, p) ? e.a : e.b
}

/** The shortest link between two edges, p on the first; 0 where they cross. Exact. */
export function between(e: Edge, f: Edge): Link {
  const hit = crossings(e, f)[0]
  if (hit !== undefined) {
    const p = pointAt(e, hit)
    return { d: 0, p, q: p }
  }
  return betweenApart(e, f)
}

/** The same for edges that are known not to cross. */
export function betweenApart(e: Edge, f: Edge): Link {
  if (e.kind === 'segment') return f.kind === 'segment' ? apart(e, f) : segmentArc(e, f)
  if (f.kind === 'segment') return flip(segmentArc(f, e))
  let best = link(e.a, nearest(f, e.a))
  const consider = (l: Link) => {
    best = nearer(best, l)
  }
  consider(link(e.b, nearest(f, e.b)))
  consider(flip(link(f.a, nearest(e, f.a))))
  consider(flip(link(f.b, nearest(e, f.b))))
  for (const l of arcArc(e, f)) consider(l)
  return best
}

/** Segments that do not cross are nearest at an end of one of them. The most frequent question: it makes no objects. */
function apart(e: Segment, f: Segment): Link {
  const ends = [foot(f, e.a), foot(f, e.b), foot(e, f.a), foot(e, f.b)] as const
  const squares = [away(f, ends[0], e.a), away(f, ends[1], e.b), away(e, ends[2], f.a), away(e, ends[3], f.b)] as const
  let i = 0
  for (let k = 1; k < 4; k++) if ((squares[k] as number) < (squares[i] as number)) i = k
  const d = Math.sqrt(squares[i] as number)
  if (i < 2) return { d, p: i === 0 ? e.a : e.b, q: pointAt(f, ends[i] as number) }
  return { d, p: pointAt(e, ends[i] as number), q: i === 2 ? f.a : f.b }
}

/** Where on a segment, 0…1, a point is nearest. */
function foot(s: Segment, p: Point): number {
  const [ux, uy] = [s.b.x - s.a.x, s.b.y - s.a.y]
  const uu = ux * ux + uy * uy
  return uu === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - s.a.x) * ux + (p.y - s.a.y) * uy) / uu))
}

function away(s: Segment, t: number, p: Point): number {
  const [x, y] = [s.a.x + t * (s.b.x - s.a.x) - p.x, s.a.y + t * (s.b.y - s.a.y) - p.y]
  return x * x + y * y
}

/**
 * A straight piece and an arc that do not cross are nearest at an end of one of them, or at the foot of the perpendicular
 * from the arc's centre. An end of the straight piece whose direction the arc does not reach is nearest to an end of the
 * arc, which is asked for anyway.
 */
function segmentArc(s: Segment, a: Arc): Link {
  const first = foot(s, a.a)
  const second = foot(s, a.b)
  const [u, v] = [away(s, first, a.a), away(s, second, a.b)]
  let d = Math.sqrt(Math.min(u, v))
  let t = u <= v ? first : second
  let onto = u <= v ? a.a : a.b
  for (const w of [0, 1, foot(s, a.c)]) {
    const [x, y] = [s.a.x + w * (s.b.x - s.a.x) - a.c.x, s.a.y + w * (s.b.y - s.a.y) - a.c.y]
    const beside = Math.abs(norm(x, y) - a.r)
    if (beside >= d) continue
    const turn = along(a, Math.atan2(y, x))
    if (turn === undefined) continue
    d = beside
    t = w
    onto = pointAt(a, turn)
  }
  return { d, p: pointAt(s, t), q: onto }
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
