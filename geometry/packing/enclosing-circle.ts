import { distance, type Point } from '../region/point.ts'

/** A disc to be enclosed; a corner is a disc of radius 0. `of` names what it belongs to. */
export interface Round {
  readonly c: Point
  readonly r: number
  readonly of: string
}

export interface Enclosing {
  readonly c: Point
  readonly r: number
  /** What touches the circle: two or three discs or corners, or one. */
  readonly touched: readonly Round[]
}

/** Slack allowed when asking whether a disc lies inside, mm. */
const eps = 1e-9

/**
 * The smallest circle around a set of discs and corners, exact to rounding. Unlike points, discs do not always lie on
 * the circle of the set they join, so instead of Welzl's recursion the two or three that fix the circle are found by
 * the exchange (dual simplex) of the farthest one in. Radius in mm; at least one disc is needed.
 * Source: smallest enclosing ball of balls, Fischer and Gärtner 2003 (from memory); here in the plane with bases ≤ 3.
 */
export function enclosingCircle(rounds: readonly Round[]): Enclosing {
  const [first] = rounds
  if (first === undefined) throw new RangeError('enclosingCircle needs at least one disc')
  let best: Enclosing = { c: first.c, r: first.r, touched: [first] }
  for (let guard = 0; guard < 10 * rounds.length + 100; guard++) {
    const out = farthestOut(rounds, best)
    if (!out) return best
    best = smallestBasis([...best.touched, out])
  }
  return smallestBasis(rounds)
}

/** The smallest circle about a fixed centre: how large a bore on the axis must be. */
export function enclosingAbout(c: Point, rounds: readonly Round[]): Enclosing {
  let best: Enclosing = { c, r: 0, touched: [] }
  for (const o of rounds) {
    const r = distance(c, o.c) + o.r
    if (r > best.r) best = { c, r, touched: [o] }
  }
  return best
}

function farthestOut(rounds: readonly Round[], e: Enclosing): Round | undefined {
  let worst: Round | undefined
  let by = eps
  for (const o of rounds) {
    const over = distance(o.c, e.c) + o.r - e.r
    if (over > by) {
      by = over
      worst = o
    }
  }
  return worst
}

/** The smallest circle around a few discs, by trying every one, pair and triple of them. */
function smallestBasis(rounds: readonly Round[]): Enclosing {
  let best: Enclosing | undefined
  const consider = (e: Enclosing | undefined) => {
    if (e && (!best || e.r < best.r) && rounds.every((o) => distance(o.c, e.c) + o.r <= e.r + 1e-7)) best = e
  }
  for (const [i, a] of rounds.entries()) {
    consider({ c: a.c, r: a.r, touched: [a] })
    for (const [j, b] of rounds.slice(i + 1).entries()) {
      consider(aroundTwo(a, b))
      for (const d of rounds.slice(i + j + 2)) for (const e of aroundThree(a, b, d)) consider(e)
    }
  }
  if (!best) throw new RangeError('enclosingCircle: no circle holds these discs (a size is not a number)')
  return best
}

function aroundTwo(a: Round, b: Round): Enclosing | undefined {
  const d = distance(a.c, b.c)
  if (d <= Math.abs(a.r - b.r)) return undefined
  const r = (d + a.r + b.r) / 2
  const t = (r - a.r) / d
  return { c: { x: a.c.x + t * (b.c.x - a.c.x), y: a.c.y + t * (b.c.y - a.c.y) }, r, touched: [a, b] }
}

/** The circle that touches three discs from outside: |c − pᵢ| + rᵢ = R. Subtracting leaves c linear in R. */
function aroundThree(a: Round, b: Round, d: Round): Enclosing[] {
  const row = (o: Round) => ({
    x: 2 * (o.c.x - a.c.x),
    y: 2 * (o.c.y - a.c.y),
    k: 2 * (a.r - o.r),
    m: o.c.x ** 2 - a.c.x ** 2 + o.c.y ** 2 - a.c.y ** 2 - o.r ** 2 + a.r ** 2,
  })
  const [p, q] = [row(b), row(d)]
  const det = p.x * q.y - p.y * q.x
  if (Math.abs(det) < 1e-12) return []
  // c = u + v·R, from x·cx + y·cy = m − k·R … with k collecting the radii.
  const u = { x: (p.m * q.y - p.y * q.m) / det, y: (p.x * q.m - p.m * q.x) / det }
  const v = { x: -(p.k * q.y - p.y * q.k) / det, y: -(p.x * q.k - p.k * q.x) / det }
  const w = { x: u.x - a.c.x, y: u.y - a.c.y }
  const A = v.x ** 2 + v.y ** 2 - 1
  const B = w.x * v.x + w.y * v.y + a.r
  const C = w.x ** 2 + w.y ** 2 - a.r ** 2
  return roots(A, B, C)
    .filter((R) => R >= Math.max(a.r, b.r, d.r))
    .map((R) => ({ c: { x: u.x + v.x * R, y: u.y + v.y * R }, r: R, touched: [a, b, d] }))
}

/** Roots of A·R² + 2B·R + C = 0. */
function roots(A: number, B: number, C: number): number[] {
  if (Math.abs(A) < 1e-12) return B === 0 ? [] : [-C / (2 * B)]
  const D = B * B - A * C
  if (D < 0) return []
  const s = Math.sqrt(D)
  return [(-B - s) / A, (-B + s) / A]
}
