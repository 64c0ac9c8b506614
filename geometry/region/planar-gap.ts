import { split } from './carve.ts'
import { discPolygon, polygonPolygon } from './convex-gap.ts'
import { type Edge, pointAt } from './edge.ts'
import { between, betweenApart, type Link, nearer, nearest } from './edge-distance.ts'
import { allFarthest } from './farthest.ts'
import { holdsOf } from './holds.ts'
import { distance, norm, type Point, point } from './point.ts'
import type { Form, Region } from './region.ts'

/**
 * The gap between two regions of the cross-section: their distance where they are apart, 0 where they touch, and
 * where they overlap minus the depth of the overlap (for simple forms the exact depth, otherwise the depth of the
 * deepest boundary piece found inside the other, which is never more than the true depth).
 */
export function planarGap(a: Region, b: Region): Link {
  const simple = closed(a, b)
  if (simple) return simple
  const apart = edgeGap(a, b)
  // Boundaries that nowhere meet: apart, or one inside the other.
  if (apart.d > touching && !holds(b, a) && !holds(a, b)) return apart
  const depth = overlap(a, b)
  return depth && depth.d > touching ? { d: -depth.d, p: depth.p, q: depth.q } : apart
}

/** The same where only a distance is wanted: 0 where the regions overlap, at a fraction of the cost. */
export function planarApart(a: Region, b: Region): Link {
  const simple = closed(a, b)
  if (simple) return simple.d < 0 ? { ...simple, d: 0 } : simple
  const apart = edgeGap(a, b)
  return apart.d > touching && (holds(b, a) || holds(a, b)) ? { ...apart, d: 0 } : apart
}

/** Closer than this, boundaries touch, mm. */
const touching = 1e-9

/** Whether a region lies around any piece of another's boundary. */
const holds = (outer: Region, inner: Region): boolean => inner.edges.some((e) => outer.contains(pointAt(e, 0.5)))

/** The shortest link between two boundaries. Pairs of pieces whose holding circles are farther apart are left out. */
function edgeGap(a: Region, b: Region): Link {
  let best: Link = { d: Number.POSITIVE_INFINITY, p: a.core, q: b.core }
  const [ha, hb] = [holdsOf(a), holdsOf(b)]
  for (let i = 0; i < a.edges.length; i++) {
    const [x, y, r] = [ha[3 * i] as number, ha[3 * i + 1] as number, ha[3 * i + 2] as number]
    for (let j = 0; j < b.edges.length; j++) {
      const apart = norm(x - (hb[3 * j] as number), y - (hb[3 * j + 1] as number)) - r - (hb[3 * j + 2] as number)
      if (apart >= best.d) continue
      const [e, f] = [a.edges[i] as Edge, b.edges[j] as Edge]
      best = nearer(best, apart > touching ? betweenApart(e, f) : between(e, f))
    }
  }
  return best
}

/**
 * The region with only the edges that can be nearest to anything between `thin` and `wide`, where the thin lies within
 * the wide: an edge farther from the wide one than some edge is from the thin one never is.
 */
export function nearPart(region: Region, thin: Region, wide: Region): Region {
  if (region.form.kind !== 'other') return region
  const most = edgeGap(thin, region).d
  const [hr, hw] = [holdsOf(region), holdsOf(wide)]
  const edges = region.edges.filter((_, i) => {
    for (let j = 0; j < wide.edges.length; j++) {
      const apart = norm(
        (hr[3 * i] as number) - (hw[3 * j] as number),
        (hr[3 * i + 1] as number) - (hw[3 * j + 1] as number),
      )
      if (apart - (hr[3 * i + 2] as number) - (hw[3 * j + 2] as number) <= most) return true
    }
    return false
  })
  return edges.length === region.edges.length ? region : { ...region, edges }
}

/**
 * In a slotted bore as in a whole one, where the way from the farthest point straight outwards meets metal: less metal
 * is never nearer, and there it is as near as ever.
 */
function closed(a: Region, b: Region): Link | undefined {
  const link = byForm(a.form, b.form)
  if (link) return link
  if (b.bore && !a.bore) return towards(a, b, b.bore)
  const back = a.bore && !b.bore ? towards(b, a, a.bore) : undefined
  return back && flip(back)
}

function towards(a: Region, metal: Region, { c, r }: { c: Point; r: number }): Link | undefined {
  if (!Number.isFinite(a.hold.r)) return undefined
  for (const p of allFarthest(a, c)) {
    const d = distance(p, c)
    if (d < 1e-9) return undefined
    const [ux, uy] = [(p.x - c.x) / d, (p.y - c.y) / d]
    const just = Math.max(d, r) + 1e-6
    if (metal.contains(point(c.x + just * ux, c.y + just * uy)))
      return { d: r - d, p, q: point(c.x + r * ux, c.y + r * uy) }
  }
  return undefined
}

function byForm(a: Form, b: Form): Link | undefined {
  if (a.kind === 'disc' && b.kind === 'disc') return discDisc(a.c, a.r, b.c, b.r)
  if (a.kind === 'disc' && b.kind === 'polygon') return discPolygon(a.c, a.r, b.points)
  if (a.kind === 'polygon' && b.kind === 'disc') return flip(discPolygon(b.c, b.r, a.points))
  if (a.kind === 'polygon' && b.kind === 'polygon') return polygonPolygon(a.points, b.points)
  if (b.kind === 'outside') return inBore(a, b.c, b.r)
  if (a.kind === 'outside') {
    const l = inBore(b, a.c, a.r)
    return l && flip(l)
  }
  return undefined
}

const flip = (l: Link): Link => ({ d: l.d, p: l.q, q: l.p })

function discDisc(c: Point, r: number, e: Point, s: number): Link {
  const d = distance(c, e)
  const [ux, uy] = d > 0 ? [(e.x - c.x) / d, (e.y - c.y) / d] : [1, 0]
  return { d: d - r - s, p: point(c.x + r * ux, c.y + r * uy), q: point(e.x - s * ux, e.y - s * uy) }
}

/** A disc or polygon inside a bore: radius of the bore less the farthest point. */
function inBore(a: Form, c: Point, R: number): Link | undefined {
  if (a.kind !== 'disc' && a.kind !== 'polygon') return undefined
  const far =
    a.kind === 'disc'
      ? beyond(a.c, a.r, c)
      : a.points.reduce((best, p) => (distance(p, c) > distance(best, c) ? p : best))
  const d = distance(far, c)
  const [ux, uy] = d > 0 ? [(far.x - c.x) / d, (far.y - c.y) / d] : [1, 0]
  return { d: R - d, p: far, q: point(c.x + R * ux, c.y + R * uy) }
}

/** The point of a disc that lies farthest from a place. */
function beyond(c: Point, r: number, from: Point): Point {
  const d = distance(c, from)
  const [ux, uy] = d > 0 ? [(c.x - from.x) / d, (c.y - from.y) / d] : [1, 0]
  return point(c.x + r * ux, c.y + r * uy)
}

/**
 * The deepest of the pieces of one boundary that lie inside the other region. Pieces are cut where the boundaries
 * cross, so each lies wholly inside or outside, and an overlap always shows at one of their middles or cores.
 */
function overlap(a: Region, b: Region): Link | undefined {
  let best: Link | undefined
  const consider = (from: Region, into: Region, swap: boolean) => {
    const points = split(from.edges, [into]).flatMap((e: Edge) => [
      pointAt(e, 0.5),
      pointAt(e, 0),
      pointAt(e, 0.25),
      pointAt(e, 0.75),
      pointAt(e, 1),
    ])
    for (const p of [...points, from.core]) {
      if (!into.contains(p)) continue
      const q = nearestOn(into, p)
      const d = distance(p, q)
      if (!best || d > best.d) best = swap ? { d, p: q, q: p } : { d, p, q }
    }
  }
  consider(a, b, false)
  consider(b, a, true)
  return best
}

function nearestOn(region: Region, p: Point): Point {
  let best = p
  let least = Number.POSITIVE_INFINITY
  for (const e of region.edges) {
    const q = nearest(e, p)
    const d = distance(p, q)
    if (d < least) {
      least = d
      best = q
    }
  }
  return best
}
