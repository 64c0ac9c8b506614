import { norm } from '../../geometry/region/point.ts'
import { rememberOn } from '../../geometry/remember.ts'
import { type Gap, gap } from '../../geometry/solid/gap.ts'
import type { Solid } from '../../geometry/solid/solid.ts'
import { type Heading, swept } from '../../geometry/solid/sweep.ts'
import { type Level, type Tight, tightEnd } from '../quantity/level.ts'
import { exact, type Quantity, type Spread, sub } from '../quantity/quantity.ts'
import type { Body } from './body.ts'
import type { Pair } from './pair.ts'
import type { Pick } from './pick.ts'
import { acting, placeOf } from './quantities.ts'
import { realise } from './realise.ts'

type Fixed = ReadonlyMap<string, number>

/**
 * The gap of a pair at a level, as a proven bound: at "worst" `lo` is never more than the true gap anywhere in the
 * intervals; at "settled" `hi` is never less than what the best unknowns leave when the variations are at their
 * worst.
 */
export const gapAt = rememberOn((pair: Pair, level: Level): Gap => {
  if (level !== 'worst') return search(pair, level, order(pair.coupled), new Map())
  const found = search(pair, level, pair.coupledAtWorst, new Map())
  if (pair.coupledAtWorst.length === 0) return found
  const middle = evaluate(pair, level, new Map(pair.coupledAtWorst.map((s) => [s.path, 0])))
  const least = middle.lo < found.lo ? middle : found
  return { ...least, lo: least.lo - dip(pair, least.lo) }
})

/**
 * A corner that slides past another comes nearest on the way: how far a gap may dip below the least of its values at
 * the ends of coupled spreads (and in the middle of a single one). The places of two points run straight with a spread,
 * so their distance d bends by no more than v²/d where they pass at v, and between values h apart it dips by no more
 * than (v h)²/8d, nor than v h/2. A round's radius runs straight and bends nothing; inside a round bore the room bends
 * the other way and is least at an end.
 */
function dip({ a, b, coupledAtWorst: coupled }: Pair, least: number): number {
  if (least <= 0 || isRoundBore(b)) return 0
  const passed = coupled.map((s) => {
    const stretch = coupled.length > 1 ? s.minus + s.plus : Math.max(s.minus, s.plus)
    return stretch * (speed(a, s) + speed(b, s))
  })
  const most = passed.reduce((sum, p) => sum + p, 0) / 2
  const bent = passed.reduce((sum, p) => sum + p * p, 0) / 8
  return least > most ? Math.min(most, bent / (least - most)) : most
}

const isRoundBore = ({ shape: s }: Body): boolean => s.kind === 'bore' && !s.openings?.length

/** How far points of a body's outline move with a spread, mm a mm; at most. */
function speed(b: Body, spread: Spread): number {
  const moving = acting(b).filter((q) => q.role === 'place' || b.shape.kind !== 'round')
  const gains = moving.flatMap((q) => q.quantity.terms.filter((t) => t.spread.path === spread.path))
  return gains.reduce((sum, t) => sum + Math.abs(t.gain), 0)
}

/** Unknowns first: at "settled" their best is sought over the worst of the variations. */
const order = (spreads: readonly Spread[]): Spread[] =>
  [...spreads].sort((a, b) => Number(a.kind === 'varies') - Number(b.kind === 'varies'))

function search(pair: Pair, level: Level, open: readonly Spread[], fixed: Fixed): Gap {
  const [spread, ...rest] = open
  if (!spread || level === 'nominal') return evaluate(pair, level, fixed)
  const seekTight = level === 'worst' || (level === 'settled' && spread.kind === 'varies')
  const ends = seekTight ? [-spread.minus, spread.plus] : [-spread.minus, 0, spread.plus]
  const gaps = ends.map((e) => search(pair, level, rest, new Map(fixed).set(spread.path, e)))
  return gaps.reduce((kept, g) => ((seekTight ? g.lo < kept.lo : g.hi > kept.hi) ? g : kept))
}

function evaluate(pair: Pair, level: Level, fixed: Fixed): Gap {
  const { a, b } = solidsOf(pair, level, fixed)
  return between(a, b, pair.way)
}

/** A pair with numbers only. */
export interface SolidPair {
  readonly a: Solid
  readonly b: Solid
}

/**
 * The pair as solids at every corner of its coupled spreads: its worst gap is the least over them, wherever along the
 * axis the first body stands. For looking at many places of one pair.
 */
export function worstCorners(pair: Pair): SolidPair[] {
  const fixings = pair.coupledAtWorst.reduce<Fixed[]>(
    (list, s) => list.flatMap((f) => [-s.minus, s.plus].map((e) => new Map(f).set(s.path, e))),
    [new Map()],
  )
  return fixings.map((fixed) => solidsOf(pair, 'worst', fixed))
}

/** The pair as solids with every spread at its loose end. Spreads that act in several ways are not searched: a bound. */
export const bestSolids = (pair: Pair): SolidPair => solidsOf(pair, 'best', none)

/** The pair as solids, as measured. */
export const nominalSolids = (pair: Pair): SolidPair => solidsOf(pair, 'nominal', none)

function solidsOf(pair: Pair, level: Level, fixed: Fixed): SolidPair {
  const grow = level === 'nominal' ? 0 : doubt(pair, level, fixed)
  if (fixed.size === 0 && pair.shared.size === 0)
    return { a: grown(atLevel(pair.a, level), grow), b: atLevel(pair.b, level) }
  const pick: Pick = (q, tight) => valueAt(q, tight, level, fixed, pair.shared)
  const a = realise(pair.a, pick, { grow, widen: turnDoubt(pair.a, level) })
  return { a, b: realise(pair.b, pick, { widen: turnDoubt(pair.b, level) }) }
}

function grown(s: Solid, grow: number): Solid {
  if (grow === 0) return s
  const more = { ...s, grow: s.grow + grow }
  if (more.kind !== 'prism' || !more.within) return more
  return { ...more, within: { ...more.within, grow: more.within.grow + grow } }
}

const none: Fixed = new Map()
const nothing: ReadonlySet<string> = new Set()

/** Bodies meet many others; at a level they always look the same. */
const atLevel = rememberOn(
  (b: Body, level: Level): Solid =>
    realise(b, (q, tight) => valueAt(q, tight, level, none, nothing), { widen: turnDoubt(b, level) }),
)

function valueAt(q: Quantity, tight: Tight | 0, level: Level, fixed: Fixed, shared: ReadonlySet<string>): number {
  let value = q.nominal
  for (const t of q.terms) {
    const e = fixed.get(t.spread.path)
    if (e !== undefined) value += t.gain * e
    else if (
      level !== 'nominal' &&
      tight !== 0 &&
      !(level === 'settled' && t.spread.kind === 'varies' && shared.has(t.spread.path))
    )
      value += tightEnd(t, tight, level)
  }
  return value
}

/** The gap with one spread at `e` and everything else nominal: how a contributor's share is found. */
export function gapWith(pair: Pair, spread: Spread, e: number): number {
  const fixed = new Map([[spread.path, e]])
  const pick: Pick = (q) => valueAt(q, 0, 'nominal', fixed, pair.shared)
  const aside = (q: Quantity | undefined): number => (q ? Math.abs(pick(q, 0)) : 0)
  const drift = [pair.a, pair.b].reduce((sum, b) => sum + aside(b.drift) + aside(b.sway), 0)
  const g = between(realise(pair.a, pick, { grow: drift }), realise(pair.b, pick), pair.way)
  return (g.lo + g.hi) / 2
}

function between(a: Solid, b: Solid, way: Heading | undefined): Gap {
  if (!way) return gap(a, b)
  const gaps = swept(a, way).map((s) => gap(s, b))
  return gaps.reduce((least, g) => ({
    ...(g.lo < least.lo ? g : least),
    hi: Math.min(g.hi, least.hi),
    lo: Math.min(g.lo, least.lo),
  }))
}

/** Degrees by which a body is widened for doubt about its clock angle; of a variation only the nominal is sure at "settled". */
function turnDoubt(b: Body, level: Level): number {
  if (!b.turn || level === 'nominal') return 0
  const of = (kind: Spread['kind']) =>
    (b.turn?.terms ?? [])
      .filter((t) => t.spread.kind === kind)
      .reduce((sum, t) => sum + Math.abs(t.gain) * Math.max(t.spread.minus, t.spread.plus), 0)
  if (level === 'worst') return of('unknown') + of('varies')
  return level === 'settled' ? -of('unknown') : -of('unknown') - of('varies')
}

/**
 * How much the cross-section of the first body is swollen for doubt about where the two stand to each other. A
 * shift by s changes a distance by at most s, so swelling by the sum is safe at "worst". At "settled" the unknown
 * part is taken off; of the variations only a drift counts, because it can go any way and therefore does go the worst.
 */
function doubt(pair: Pair, level: Level, fixed: Fixed): number {
  const total = placeDoubt(pair, fixed)
  for (const b of [pair.a, pair.b]) {
    for (const t of b.drift?.terms ?? [])
      total[t.spread.kind === 'varies' ? 'drift' : 'unknown'] += Math.abs(t.gain) * t.spread.plus
    for (const t of b.sway?.terms ?? [])
      total[t.spread.kind] += Math.abs(t.gain) * Math.max(t.spread.minus, t.spread.plus)
  }
  if (level === 'worst') return total.unknown + total.drift + total.varies
  return level === 'settled' ? total.drift - total.unknown : -total.unknown - total.drift - total.varies
}

function placeDoubt(pair: Pair, fixed: Fixed): { unknown: number; varies: number; drift: number } {
  const total = { unknown: 0, varies: 0, drift: 0 }
  const [a, b] = [placeOf(pair.a), placeOf(pair.b)]
  const zero = exact(0)
  const [dx, dy] = [sub(a.x ?? zero, b.x ?? zero), sub(a.y ?? zero, b.y ?? zero)]
  for (const path of new Set([...dx.terms, ...dy.terms].map((t) => t.spread.path))) {
    if (fixed.has(path)) continue
    const [tx, ty] = [dx.terms.find((t) => t.spread.path === path), dy.terms.find((t) => t.spread.path === path)]
    const spread = (tx ?? ty)?.spread as Spread
    total[spread.kind] += norm(tx?.gain ?? 0, ty?.gain ?? 0) * Math.max(spread.minus, spread.plus)
  }
  return total
}
