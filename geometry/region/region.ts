import { arc, circle, type Edge, segment } from './edge.ts'
import { nearest } from './edge-distance.ts'
import { distance, norm, origin, type Point, polar, radians, turnBetween } from './point.ts'

/**
 * A closed part of the cross-section plane, given by its boundary and by a rule that says what lies inside. Unbounded
 * regions are allowed: the metal around a bore is everything outside a circle.
 */
export interface Region {
  readonly edges: readonly Edge[]
  /** Strictly inside; points on the boundary may go either way. */
  readonly contains: (p: Point) => boolean
  /** Some point that lies well inside. */
  readonly core: Point
  /** Simple forms keep their numbers, for closed formulas. */
  readonly form: Form
  /** A circle that holds the whole region; its radius is Infinity for metal. */
  readonly hold: { readonly c: Point; readonly r: number }
  /** For metal around a bore, slotted or not: the bore's circle, inside which there is none of it. */
  readonly bore?: { readonly c: Point; readonly r: number }
}

export type Form =
  | { readonly kind: 'disc'; readonly c: Point; readonly r: number }
  | { readonly kind: 'outside'; readonly c: Point; readonly r: number }
  | { readonly kind: 'polygon'; readonly points: readonly Point[] }
  | { readonly kind: 'other' }

/** A filled disc, radius r > 0 mm. */
export function disc(c: Point, r: number): Region {
  return {
    edges: [circle(c, r)],
    contains: (p) => distance(p, c) < r,
    core: c,
    form: { kind: 'disc', c, r },
    hold: { c, r },
  }
}

/** All that lies outside a circle: the metal around a bore. */
export function outside(c: Point, r: number): Region {
  return {
    edges: [circle(c, r)],
    contains: (p) => distance(p, c) > r,
    core: { x: c.x + 2 * r + 1, y: c.y },
    form: { kind: 'outside', c, r },
    hold: { c, r: Number.POSITIVE_INFINITY },
    bore: { c, r },
  }
}

/** A convex polygon, corners in order (either way round). */
export function polygon(points: readonly Point[]): Region {
  const n = points.length
  let [x, y] = [0, 0]
  for (const p of points) {
    x += p.x / n
    y += p.y / n
  }
  const core = { x, y }
  let r = 0
  for (const p of points) r = Math.max(r, distance(p, core))
  let turn: number | undefined
  const contains = (p: Point): boolean => {
    turn ??= Math.sign(signedArea(points))
    for (let i = 0; i < n; i++) {
      const [a, b] = [points[i] as Point, points[i + 1 < n ? i + 1 : 0] as Point]
      if (!(turn * ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) > 0)) return false
    }
    return true
  }
  return {
    edges: points.map((p, i) => segment(p, points[(i + 1) % n] as Point)),
    contains,
    core,
    form: { kind: 'polygon', points },
    hold: { c: core, r },
  }
}

/**
 * A rectangle: centre, half width along its own first direction, half height along its second, and the clock angle
 * (degrees) of the second: a board "facing" θ has its thickness along θ and its width across.
 */
export function rectangle(c: Point, halfWidth: number, halfHeight: number, facing: number): Region {
  const [ux, uy] = [Math.cos(radians(facing)), Math.sin(radians(facing))]
  const corner = (a: number, b: number): Point => ({ x: c.x + a * ux - b * uy, y: c.y + a * uy + b * ux })
  return polygon([
    corner(-halfHeight, -halfWidth),
    corner(halfHeight, -halfWidth),
    corner(halfHeight, halfWidth),
    corner(-halfHeight, halfWidth),
  ])
}

/**
 * A ring sector about `centre`, the hilt's axis where left out: from rIn to rOut (Infinity for metal without end),
 * half-angle ≤ 180° about θ.
 */
export function sector(rIn: number, rOut: number, theta: number, half: number, centre: Point = origin): Region {
  const whole = half >= 180
  const outer = Number.isFinite(rOut) ? rOut : rIn + 1000
  const [start, sweep] = whole ? [0, 2 * Math.PI] : [radians(theta - half), radians(2 * half)]
  const at = (r: number, w: number): Point => {
    const p = polar(r, w)
    return { x: centre.x + p.x, y: centre.y + p.y }
  }
  const edges: Edge[] = []
  if (rIn > 0) edges.push(arc(centre, rIn, start, sweep))
  if (Number.isFinite(rOut)) edges.push(arc(centre, rOut, start, sweep))
  if (!whole) for (const w of [theta - half, theta + half]) edges.push(segment(at(rIn, w), at(outer, w)))
  const contains = (p: Point) => {
    const [x, y] = [p.x - centre.x, p.y - centre.y]
    const r = norm(x, y)
    return r > rIn && r < rOut && (whole || Math.abs(turnBetween(theta, (Math.atan2(y, x) * 180) / Math.PI)) < half)
  }
  const core = at((rIn + Math.min(outer, rIn + 2)) / 2, theta)
  return { edges, contains, core, form: { kind: 'other' }, hold: { c: centre, r: rOut } }
}

export function signedArea(points: readonly Point[]): number {
  return points.reduce((sum, p, i) => {
    const q = points[(i + 1) % points.length] as Point
    return sum + (p.x * q.y - q.x * p.y) / 2
  }, 0)
}

/** Distance from a point to the boundary, mm. */
export function toBoundary(region: Region, p: Point): number {
  return region.edges.reduce((least, e) => Math.min(least, distance(p, nearest(e, p))), Number.POSITIVE_INFINITY)
}
