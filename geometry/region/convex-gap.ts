import { type Segment, segment } from './edge.ts'
import { type Link, link, nearest } from './edge-distance.ts'
import { distance, type Point, point } from './point.ts'

/** Corners of a convex polygon, counted the way θ grows. */
type Corners = readonly Point[]

/** From a disc to a convex polygon; negative: the exact depth. p on the disc, q on the polygon. */
export function discPolygon(c: Point, r: number, corners: Corners): Link {
  let best = Number.POSITIVE_INFINITY
  let q = corners[0] as Point
  let inside = true
  const turn = turnOf(corners)
  for (let i = 0; i < corners.length; i++) {
    const [a, b] = [corners[i] as Point, corners[(i + 1) % corners.length] as Point]
    if (turn * ((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)) < 0) inside = false
    const n = nearest(segment(a, b), c)
    const d = distance(c, n)
    if (d < best) {
      best = d
      q = n
    }
  }
  const sign = inside ? -1 : 1
  const [ux, uy] = best > 0 ? [(sign * (q.x - c.x)) / best, (sign * (q.y - c.y)) / best] : [1, 0]
  return { d: sign * best - r, p: point(c.x + r * ux, c.y + r * uy), q }
}

/** Between two convex polygons; negative: the exact depth, along the normal of one of their sides. */
export function polygonPolygon(a: Corners, b: Corners): Link {
  const [s, t] = [separation(a, b), separation(b, a)]
  const least = s.d >= t.d ? s : { ...t, p: t.q, q: t.p }
  if (least.d <= 0) return least
  let best: Link = { d: Number.POSITIVE_INFINITY, p: a[0] as Point, q: b[0] as Point }
  const consider = (corners: Corners, sides: readonly Segment[], swap: boolean) => {
    for (const corner of corners) {
      for (const side of sides) {
        const n = nearest(side, corner)
        const d = distance(corner, n)
        if (d < best.d) best = swap ? link(n, corner) : link(corner, n)
      }
    }
  }
  consider(a, sidesOf(b), false)
  consider(b, sidesOf(a), true)
  return best
}

function sidesOf(corners: Corners): Segment[] {
  return corners.map((p, i) => segment(p, corners[(i + 1) % corners.length] as Point))
}

/** The side of `a` beyond which the deepest corner of `b` lies farthest out; p on that side, q that corner. */
function separation(a: Corners, b: Corners): Link {
  const turn = turnOf(a)
  let best: Link = { d: Number.NEGATIVE_INFINITY, p: a[0] as Point, q: b[0] as Point }
  for (let i = 0; i < a.length; i++) {
    const [u, v] = [a[i] as Point, a[(i + 1) % a.length] as Point]
    const length = distance(u, v)
    if (length === 0) continue
    const [nx, ny] = [(turn * (v.y - u.y)) / length, (-turn * (v.x - u.x)) / length]
    let least = Number.POSITIVE_INFINITY
    let corner = b[0] as Point
    for (const w of b) {
      const d = (w.x - u.x) * nx + (w.y - u.y) * ny
      if (d < least) {
        least = d
        corner = w
      }
    }
    if (least > best.d) best = { d: least, p: point(corner.x - least * nx, corner.y - least * ny), q: corner }
  }
  return best
}

/** +1 where the corners are counted the way θ grows, −1 otherwise. */
function turnOf(corners: Corners): 1 | -1 {
  let area = 0
  for (let i = 0; i < corners.length; i++) {
    const [p, q] = [corners[i] as Point, corners[(i + 1) % corners.length] as Point]
    area += p.x * q.y - q.x * p.y
  }
  return area >= 0 ? 1 : -1
}
