import { clock, point } from '../../geometry/region/point.ts'
import { rememberOn } from '../../geometry/remember.ts'
import type { Gap } from '../../geometry/solid/gap.ts'
import type { Heading } from '../../geometry/solid/sweep.ts'
import type { Body } from '../body/body.ts'
import { gapAt, gapWith } from '../body/gap-at.ts'
import { onePair } from '../body/one-pair.ts'
import type { Pair } from '../body/pair.ts'
import { spreadsOf } from '../body/quantities.ts'
import { roughGap } from '../body/rough.ts'
import { type Contribution, contribution, type Margins } from '../quantity/margins.ts'
import type { Where } from './finding.ts'

/** Two bodies and the gap they must keep, mm; `way` where the first is on its way in. */
export interface Demand {
  readonly a: Body
  readonly b: Body
  readonly way?: Heading
  readonly limit: number
}

/** The tightest of several pairs, at every level, and what moves it. */
export interface Tightest {
  readonly pair: Pair
  readonly limit: number
  /** Gap of the tightest pair at nominal and at worst. */
  readonly nominal: Gap
  readonly worst: Gap
  readonly margins: Margins
  readonly contributions: readonly Contribution[]
  readonly at: Where
}

/** Pairs whose worst margin is farther than this above the least cannot be the least at another level, mm, unless their spreads differ by more. */
const near = 0.5
/** Of pairs that cannot be tighter than the least found, so many are looked at. */
const enough = 6

/**
 * The least margin over many pairs; undefined without any. At "worst" the least of lower bounds, at "settled" the least
 * of upper bounds: a pair left out can only make the verdict more cautious in the first case and less hasty in the
 * second.
 */
export function tightest(demands: readonly Demand[]): Tightest | undefined {
  if (demands.length === 0) return undefined
  // Lower bounds of what is left at worst. Beside the pair of the least of them only a few can matter.
  const roughs = new Float64Array(demands.length)
  let lowest = 0
  for (let i = 0; i < demands.length; i++) {
    const d = demands[i] as Demand
    roughs[i] = roughGap(d.a, d.b, d.way) - d.limit
    // What is no number would be passed over below, and be clear without being so.
    if (Number.isNaN(roughs[i])) throw new RangeError(`no distance from ${d.a.id} to ${d.b.id}`)
    if ((roughs[i] as number) < (roughs[lowest] as number)) lowest = i
  }
  let left = judgedOf(demands[lowest] as Demand).left
  const judged: Judged[] = []
  for (const i of below(roughs, left + near)) {
    const rough = roughs[i] as number
    if (rough > left + near || (judged.length >= enough && rough >= left)) continue
    const found = judgedOf(demands[i] as Demand)
    judged.push(found)
    left = Math.min(left, found.left)
  }
  const close = judged.filter((j) => j.left <= left + near).sort((a, b) => a.left - b.left)
  const [first] = close
  if (!first) return undefined
  const { pair, limit, worst } = first
  const level = (name: 'nominal' | 'settled' | 'best') =>
    Math.min(...close.map((j) => gapAt(j.pair, name).hi - j.limit))
  const nominal = gapAt(pair, 'nominal')
  const seen = new Set(close.map((j) => j.demand))
  const margins: Margins = {
    worst: first.left,
    nominal: nominalOf(demands, roughs, seen, level('nominal')),
    settled: level('settled'),
    best: level('best'),
  }
  return {
    pair,
    limit,
    nominal,
    worst,
    margins: ordered(margins),
    contributions: contributionsOf(pair),
    at: whereOf(nominal),
  }
}

/** What is tightest at nominal need not be near the tightest at worst: every pair that might be is asked. */
function nominalOf(demands: readonly Demand[], roughs: Float64Array, seen: ReadonlySet<Demand>, among: number): number {
  let least = among
  for (const i of below(roughs, least)) {
    const d = demands[i] as Demand
    if ((roughs[i] as number) >= least) break
    if (seen.has(d) || roughGap(d.a, d.b, d.way, 'nominal') - d.limit >= least) continue
    least = Math.min(least, gapAt(onePair(d.a, d.b, d.way), 'nominal').hi - d.limit)
  }
  return least
}

/** Places of all numbers up to a limit, in rising order. */
function below(numbers: Float64Array, limit: number): number[] {
  const found: number[] = []
  for (let i = 0; i < numbers.length; i++) if ((numbers[i] as number) <= limit) found.push(i)
  return found.sort((a, b) => (numbers[a] as number) - (numbers[b] as number))
}

function judgedOf(demand: Demand): Judged {
  const pair = onePair(demand.a, demand.b, demand.way)
  const worst = gapAt(pair, 'worst')
  return { demand, pair, limit: demand.limit, worst, left: worst.lo - demand.limit }
}

interface Judged {
  readonly demand: Demand
  readonly pair: Pair
  readonly limit: number
  readonly worst: Gap
  /** Worst gap less the limit. */
  readonly left: number
}

/** Bounds that cross by rounding are set straight, so that worst ≤ nominal ≤ best and settled ≤ best. */
function ordered(m: Margins): Margins {
  const nominal = Math.max(m.worst, m.nominal)
  const best = Math.max(nominal, m.settled, m.best)
  return { worst: m.worst, nominal, settled: Math.max(m.worst, m.settled), best }
}

/** What each spread does to the gap of a pair on its own. */
export const contributionsOf = rememberOn((pair: Pair): readonly Contribution[] => {
  const nominal = gapAt(pair, 'nominal')
  const base = (nominal.lo + nominal.hi) / 2
  return spreadsOf(pair.a, pair.b).flatMap((s): Contribution[] => {
    if (s.minus + s.plus === 0) return s.source === 'assumed' ? [contribution(s, 0, 0)] : []
    const plus = gapWith(pair, s, s.plus) - base
    // An even spread acts evenly enough for its share; only an uneven one is worth a second look.
    const minus = s.minus === s.plus ? -plus : gapWith(pair, s, -s.minus) - base
    const [down, up] = [Math.min(plus, minus, 0), Math.max(plus, minus, 0)]
    return up - down < 1e-9 && s.source !== 'assumed' ? [] : [contribution(s, down, up)]
  })
})

export function whereOf(g: Gap): Where {
  const middle = point((g.p.x + g.q.x) / 2, (g.p.y + g.q.y) / 2)
  return { z: g.z, theta: clock(middle), r: Math.hypot(middle.x, middle.y) }
}
