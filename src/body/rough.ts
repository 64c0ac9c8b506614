import { reachFromAxis } from '../../geometry/region/farthest.ts'
import { norm, polar } from '../../geometry/region/point.ts'
import type { Heading } from '../../geometry/solid/sweep.ts'
import { type Quantity, reachOf } from '../quantity/quantity.ts'
import type { Body } from './body.ts'

/** What costs nothing to know of a body: its stretch of the axis, its radii about the axis, a circle around it. */
interface Outline {
  readonly lo: number
  readonly hi: number
  /** Nothing of it lies nearer to the axis than `inner`, nothing farther than `outer`. */
  readonly inner: number
  readonly outer: number
  /** Middle and radius of a circle of the cross-section that holds it; radius Infinity where there is none. */
  readonly x: number
  readonly y: number
  readonly r: number
}

type Level = 'worst' | 'nominal'

const known = { worst: new WeakMap<Body, Outline>(), nominal: new WeakMap<Body, Outline>() }

/** A lower bound of the gap of two bodies, every doubt at its worst or none, from their stretches and outlines alone. */
export function roughGap(a: Body, b: Body, way?: Heading, level: Level = 'worst'): number {
  const p = outlineOf(a, level)
  const q = outlineOf(b, level)
  const ahead = q.lo - p.hi
  const behind = p.lo - q.hi
  const along = !way ? Math.max(ahead, behind) : way === 'blade' ? ahead : behind
  const circles = norm(p.x - q.x, p.y - q.y) - p.r - q.r
  const across = Math.max(q.inner - p.outer, p.inner - q.outer, circles)
  return along > 0 && across > 0 ? norm(along, across) : Math.max(along, across)
}

function outlineOf(b: Body, level: Level): Outline {
  let found = known[level].get(b)
  if (!found) {
    found = measured(b, level === 'worst' ? 1 : 0)
    known[level].set(b, found)
  }
  return found
}

/** `k` is 1 where all doubt counts, 0 where none does. */
function measured(b: Body, k: 0 | 1): Outline {
  const s = b.shape
  const off = (q: Quantity | undefined): number => k * reachOf(q)
  const up = (q: Quantity): number => q.nominal + off(q)
  const down = (q: Quantity): number => q.nominal - off(q)
  const swell = b.swell ? Math.max(0, up(b.swell)) : 0
  const aside = off(b.drift) + off(b.sway) + swell
  const turn = Math.sin((Math.min(90, off(b.turn)) * Math.PI) / 180)
  if (s.kind === 'pin') {
    const [r, rIn, rOut] = [up(s.radius) + aside, down(s.rIn), up(s.rOut)]
    const reach = Math.max(rOut, -rIn)
    const half = up(s.radius) + reach * turn
    const inner = rIn - half * turn - aside
    const c = polar((rIn + rOut) / 2, s.theta)
    const held = norm((rOut - rIn) / 2, half) + reach * turn + aside
    return { lo: down(s.z) - r, hi: up(s.z) + r, inner, outer: norm(reach, half) + aside, ...c, r: held }
  }
  const [lo, hi] = [down(s.z0) - swell, up(s.z1) + swell]
  if (s.kind === 'sector') {
    const outer = s.rOut ? up(s.rOut) + aside : Number.POSITIVE_INFINITY
    return { lo, hi, inner: down(s.rIn) - aside, outer, x: 0, y: 0, r: outer }
  }
  if (s.kind === 'outline') {
    const { c, r } = s.region.hold
    const held = r + aside + turn * (norm(c.x, c.y) + r)
    return { lo, hi, inner: 0, outer: reachFromAxis(s.region) + aside, x: c.x, y: c.y, r: held }
  }
  const place = norm(s.x.nominal, s.y.nominal)
  const shift = aside + off(s.x) + off(s.y)
  const c = { x: s.x.nominal, y: s.y.nominal }
  if (s.kind === 'bore') {
    const free = Math.min(down(s.r0), down(s.r1))
    const [outer, r] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]
    return { lo, hi, inner: free - place - shift, outer, ...c, r }
  }
  const own = s.kind === 'round' ? Math.max(up(s.r0), up(s.r1)) : norm(up(s.halfWidth), up(s.halfHeight))
  const held = own + shift + turn * (place + own)
  return { lo, hi, inner: place - held, outer: place + held, ...c, r: held }
}
