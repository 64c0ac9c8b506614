import { farthest } from '../../geometry/region/farthest.ts'
import { norm } from '../../geometry/region/point.ts'
import type { Heading } from '../../geometry/solid/sweep.ts'
import { least, most, type Quantity } from '../quantity/quantity.ts'
import type { Body } from './body.ts'

/** What costs nothing to know of a body, every doubt at its worst: its stretch of the axis, its radii about the axis. */
interface Outline {
  readonly lo: number
  readonly hi: number
  /** Nothing of it lies nearer to the axis than `inner`, nothing farther than `outer`. */
  readonly inner: number
  readonly outer: number
}

const known = new WeakMap<Body, Outline>()

/** A lower bound of the gap of two bodies at the worst, from their stretches and radii alone. */
export function roughGap(a: Body, b: Body, way?: Heading): number {
  const [p, q] = [outlineOf(a), outlineOf(b)]
  const ahead = q.lo - p.hi
  const behind = p.lo - q.hi
  const along = !way ? Math.max(ahead, behind) : way === 'blade' ? ahead : behind
  return Math.max(along, q.inner - p.outer, p.inner - q.outer)
}

function outlineOf(b: Body): Outline {
  let found = known.get(b)
  if (!found) {
    found = measured(b)
    known.set(b, found)
  }
  return found
}

const doubt = (q: Quantity | undefined): number =>
  q ? q.terms.reduce((sum, t) => sum + Math.abs(t.gain) * Math.max(t.spread.minus, t.spread.plus), 0) : 0

function measured(b: Body): Outline {
  const s = b.shape
  const swell = b.swell ? Math.max(0, most(b.swell)) : 0
  const aside = doubt(b.drift) + doubt(b.sway) + swell
  const place = 'x' in s ? norm(s.x.nominal, s.y.nominal) : 0
  const shift = aside + ('x' in s ? doubt(s.x) + doubt(s.y) : 0)
  if (s.kind === 'pin') {
    const r = most(s.radius) + aside
    const turn = Math.sin((doubt(b.turn) * Math.PI) / 180)
    const half = most(s.radius) + most(s.rOut) * turn
    const inner = least(s.rIn) - half * turn - aside
    return { lo: least(s.z) - r, hi: most(s.z) + r, inner, outer: norm(most(s.rOut), half) + aside }
  }
  const [lo, hi] = [s.z0.nominal - doubt(s.z0) - swell, s.z1.nominal + doubt(s.z1) + swell]
  if (s.kind === 'bore') {
    const free = Math.min(least(s.r0), least(s.r1))
    return { lo, hi, inner: free - place - shift, outer: Number.POSITIVE_INFINITY }
  }
  if (s.kind === 'round') {
    const r = Math.max(most(s.r0), most(s.r1))
    return { lo, hi, inner: place - r - shift, outer: place + r + shift }
  }
  if (s.kind === 'box') {
    const half = norm(most(s.halfWidth), most(s.halfHeight))
    const turn = Math.sin((doubt(b.turn) * Math.PI) / 180) * (place + half)
    return { lo, hi, inner: place - half - shift - turn, outer: place + half + shift + turn }
  }
  if (s.kind === 'sector')
    return { lo, hi, inner: least(s.rIn) - aside, outer: s.rOut ? most(s.rOut) + aside : Number.POSITIVE_INFINITY }
  const far = farthest(s.region, { x: 0, y: 0 })
  return { lo, hi, inner: 0, outer: norm(far.x, far.y) + aside }
}
