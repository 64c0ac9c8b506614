import { cross, dot, minus, plus, times, type V3 } from './vec.ts'

/** Anything convex, known by its farthest point along a direction. */
export interface Supported {
  readonly support: (d: V3) => V3
  /** A point of it, to start from. */
  readonly core: V3
}

/** Distances are found to this, mm. */
const fine = 1e-6
/** Squared distances below this are contact, mm². */
const contact = 1e-14

/**
 * The distance between two convex bodies; 0 where they touch or overlap. Where it is sure to be more than `enough`
 * the search stops and what is returned is a lower bound beyond it.
 * Source: Gilbert, Johnson and Keerthi 1988, with the closest point of a simplex by regions (from memory).
 */
export function distanceBetween(a: Supported, b: Supported, enough = Number.POSITIVE_INFINITY): number {
  const far = (d: V3): V3 => minus(a.support(d), b.support(times(d, -1)))
  let v = minus(a.core, b.core)
  if (dot(v, v) < contact) v = { x: 1, y: 0, z: 0 }
  let simplex: V3[] = []
  let least = Number.POSITIVE_INFINITY
  for (let n = 0; n < 200; n++) {
    const w = far(times(v, -1))
    const vv = dot(v, v)
    const length = Math.sqrt(vv)
    const below = dot(v, w) / length
    if (simplex.length > 0) {
      if (below > enough) return below
      if (length - below <= fine) return length
    }
    if (simplex.some((p) => p.x === w.x && p.y === w.y && p.z === w.z)) return length
    const next = nearestOf([...simplex, w])
    simplex = next.simplex
    v = next.v
    const now = dot(v, v)
    if (now < contact || simplex.length === 4) return 0
    if (now >= least) return Math.sqrt(least)
    least = now
  }
  return Math.sqrt(dot(v, v))
}

interface Nearest {
  readonly v: V3
  /** The corners that carry the nearest point. */
  readonly simplex: V3[]
}

/** The point of a simplex nearest to the origin. All four corners are kept only where the origin lies inside. */
function nearestOf(s: readonly V3[]): Nearest {
  const [a, b, c, d] = s as [V3, V3, V3, V3]
  if (s.length === 1) return { v: a, simplex: [a] }
  if (s.length === 2) return onSegment(a, b)
  if (s.length === 3) return onTriangle(a, b, c)
  return onTetrahedron(a, b, c, d)
}

function onSegment(a: V3, b: V3): Nearest {
  const ab = minus(b, a)
  const t = -dot(a, ab)
  if (t <= 0) return { v: a, simplex: [a] }
  const whole = dot(ab, ab)
  if (t >= whole) return { v: b, simplex: [b] }
  return { v: plus(a, times(ab, t / whole)), simplex: [a, b] }
}

function onTriangle(a: V3, b: V3, c: V3): Nearest {
  const [ab, ac] = [minus(b, a), minus(c, a)]
  const [d1, d2] = [-dot(ab, a), -dot(ac, a)]
  if (d1 <= 0 && d2 <= 0) return { v: a, simplex: [a] }
  const [d3, d4] = [-dot(ab, b), -dot(ac, b)]
  if (d3 >= 0 && d4 <= d3) return { v: b, simplex: [b] }
  const vc = d1 * d4 - d3 * d2
  if (vc <= 0 && d1 >= 0 && d3 <= 0) return { v: plus(a, times(ab, d1 / (d1 - d3))), simplex: [a, b] }
  const [d5, d6] = [-dot(ab, c), -dot(ac, c)]
  if (d6 >= 0 && d5 <= d6) return { v: c, simplex: [c] }
  const vb = d5 * d2 - d1 * d6
  if (vb <= 0 && d2 >= 0 && d6 <= 0) return { v: plus(a, times(ac, d2 / (d2 - d6))), simplex: [a, c] }
  const va = d3 * d6 - d5 * d4
  if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) {
    const t = (d4 - d3) / (d4 - d3 + (d5 - d6))
    return { v: plus(b, times(minus(c, b), t)), simplex: [b, c] }
  }
  const all = va + vb + vc
  if (!(Math.abs(all) > 0)) return nearer(nearer(onSegment(a, b), onSegment(b, c)), onSegment(a, c))
  return { v: plus(a, plus(times(ab, vb / all), times(ac, vc / all))), simplex: [a, b, c] }
}

const nearer = (p: Nearest, q: Nearest): Nearest => (dot(q.v, q.v) < dot(p.v, p.v) ? q : p)

function onTetrahedron(a: V3, b: V3, c: V3, d: V3): Nearest {
  const faces = [
    [a, b, c, d],
    [a, c, d, b],
    [a, d, b, c],
    [b, d, c, a],
  ] as const
  const [ab, ac, ad] = [minus(b, a), minus(c, a), minus(d, a)]
  const size = Math.sqrt(Math.max(dot(ab, ab), dot(ac, ac), dot(ad, ad)))
  // A flat tetrahedron has no inside, whatever rounding says of it: then every face is asked.
  const flat = Math.abs(dot(cross(ab, ac), ad)) < 1e-9 * size ** 3
  let best: Nearest | undefined
  for (const [p, q, r, other] of faces) {
    const normal = cross(minus(q, p), minus(r, p))
    const side = -dot(normal, p) * dot(normal, minus(other, p))
    if (!flat && side > 0) continue
    const found = onTriangle(p, q, r)
    best = best ? nearer(best, found) : found
  }
  return best ?? { v: { x: 0, y: 0, z: 0 }, simplex: [a, b, c, d] }
}
