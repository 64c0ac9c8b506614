import type { Demand, Memo } from './demand.ts'
import { type Doubt, endsOf } from './draw.ts'
import type { Bounds } from './gaps.ts'
import { type Rng, rngOf } from './rng.ts'
import { type Job, type World, worldAt } from './world.ts'

export interface Found {
  readonly gap: Bounds
  readonly draw: Readonly<Record<string, number>>
}

type Values = Map<string, number>

/** What a doubt does to a gap, alone at each of its ends. */
interface Move {
  readonly doubt: Doubt
  readonly ends: readonly { readonly value: number; readonly gap: Bounds }[]
}

/** Random draws looked at besides the corners. */
const randomDraws = 4

/**
 * Looks for the draw in which a demand is worst, and for the one in which it holds best against every variation. All
 * it knows of the job is how to measure a gap in a draw.
 */
export class Search {
  readonly #job: Job
  readonly #demands: readonly Demand[]
  readonly #memo: Memo = new Map()
  readonly #doubts: readonly Doubt[]
  readonly #nominal: readonly Bounds[]
  readonly #rng: Rng
  /** For each demand the doubts that move its gap, with the gap at each of their ends. */
  readonly #moves: readonly Move[][]
  readonly #random: readonly { values: Values; gaps: Bounds[] }[]

  constructor(job: Job, demands: readonly Demand[]) {
    this.#job = job
    this.#demands = demands
    this.#rng = rngOf(demands.length)
    const nominal = worldAt(job)
    this.#nominal = this.#all(nominal)
    this.#doubts = [...nominal.r.draw.seen.values()]
    const moves: Move[][] = demands.map(() => [])
    for (const doubt of this.#doubts) {
      const ends = endsOf(doubt).map((value) => ({ value, gaps: this.#all(worldAt(job, this.#alone(doubt, value))) }))
      for (const i of demands.keys()) {
        const own = ends.map((e) => ({ value: e.value, gap: e.gaps[i] as Bounds }))
        const now = this.#nominal[i] as Bounds
        if (own.some((e) => Math.abs(e.gap.lo - now.lo) + Math.abs(e.gap.hi - now.hi) > 1e-7))
          moves[i]?.push({ doubt, ends: own })
      }
    }
    this.#moves = moves.map((own) => [...own, ...this.#amounts(own)])
    this.#random = Array.from({ length: randomDraws }, () => {
      const values: Values = new Map(this.#doubts.map((d) => [d.path, this.#any(d)]))
      return { values, gaps: this.#all(worldAt(job, values)) }
    })
  }

  nominal(i: number): Bounds {
    return this.#nominal[i] as Bounds
  }

  /** The draw in which the gap is least, as far as corners and random draws show. */
  worst(i: number): Found {
    let best: Found = { gap: this.nominal(i), draw: {} }
    const take = (values: Values, gap: Bounds): void => {
      if (gap.hi < best.gap.hi) best = { gap, draw: Object.fromEntries(values) }
    }
    for (const r of this.#random) take(r.values, r.gaps[i] as Bounds)
    const limit = (this.#demands[i] as Demand).limit
    const fall = this.#movesOf(i).reduce(
      (sum, m) => sum + Math.max(0, ...m.ends.map((e) => this.nominal(i).hi - e.gap.hi)),
      0,
    )
    // Even all doubts together, and half as much again, do not bring it near its limit.
    if (this.nominal(i).hi - 1.5 * fall > limit + 0.3) return best
    const start: Values = new Map(this.#movesOf(i).map((m) => [m.doubt.path, lowest(m.ends)]))
    for (const from of [start, ...this.#random.slice(0, 1).map((r) => new Map(r.values))]) {
      const end = this.#descend(
        i,
        from,
        this.#movesOf(i).map((m) => m.doubt),
        (g) => g.hi,
      )
      take(end.values, end.gap)
    }
    return best
  }

  /** The unknowns at their best, each variation at its worst; stops where no start can reach `wanted`. */
  settled(i: number, wanted: number): Found {
    const moves = this.#movesOf(i)
    const unknown = moves.filter((m) => m.doubt.kind === 'unknown')
    const varying = moves.filter((m) => m.doubt.kind === 'varies').map((m) => m.doubt)
    const worstOf = (values: Values): { values: Values; gap: Bounds } => {
      const start = new Map(values)
      for (const m of moves) if (m.doubt.kind === 'varies') start.set(m.doubt.path, lowest(m.ends))
      return this.#descend(i, start, varying, (g) => g.lo)
    }
    let values: Values = new Map(unknown.map((m) => [m.doubt.path, highest(m.ends, this.nominal(i))]))
    let found = worstOf(values)
    for (const from of [new Map<string, number>()]) {
      const other = worstOf(from)
      if (other.gap.lo > found.gap.lo) [values, found] = [from, other]
    }
    for (let round = 0; round < 2 && found.gap.lo < wanted; round++) {
      for (const m of unknown) {
        for (const value of between(m.doubt)) {
          const tried = new Map(values).set(m.doubt.path, value)
          const next = worstOf(tried)
          if (next.gap.lo > found.gap.lo + 1e-6) [values, found] = [tried, next]
        }
      }
    }
    return { gap: found.gap, draw: Object.fromEntries(found.values) }
  }

  /** Coordinate by coordinate to where the gap is least. */
  #descend(
    i: number,
    from: Values,
    doubts: readonly Doubt[],
    of: (g: Bounds) => number,
  ): { values: Values; gap: Bounds } {
    let values = from
    let gap = this.#one(i, values)
    for (let round = 0; round < 3; round++) {
      let better = false
      for (const doubt of doubts) {
        for (const value of [...endsOf(doubt), 0]) {
          if (values.get(doubt.path) === value) continue
          const tried = new Map(values).set(doubt.path, value)
          const g = this.#one(i, tried)
          if (of(g) < of(gap) - 1e-6) {
            values = tried
            gap = g
            better = true
          }
        }
      }
      if (!better) break
    }
    return { values, gap }
  }

  #movesOf(i: number): readonly Move[] {
    return this.#moves[i] as readonly Move[]
  }

  /** Where a direction moves a gap, so does how far it goes that way, though the way it went alone may have told nothing. */
  #amounts(own: readonly Move[]): Move[] {
    return own.flatMap((m) => {
      const amount = this.#amountOf(m.doubt)
      if (!amount || own.some((o) => o.doubt === amount)) return []
      const least = m.ends.reduce((a, b) => (b.gap.hi < a.gap.hi ? b : a)).gap
      return [{ doubt: amount, ends: [{ value: amount.plus, gap: least }] }]
    })
  }

  #amountOf(d: Doubt): Doubt | undefined {
    if (!d.path.endsWith('/direction')) return undefined
    return this.#doubts.find((o) => o.path === d.path.slice(0, -'/direction'.length))
  }

  /** A direction tells nothing without something that goes that way. */
  #alone(d: Doubt, value: number): Values {
    const values: Values = new Map([[d.path, value]])
    const goes = this.#amountOf(d)
    if (goes) values.set(goes.path, goes.plus)
    return values
  }

  /** Print error only outwards: inwards a true gap is bounded from below alone. */
  #any(d: Doubt): number {
    const inwards = d.path.startsWith('printer') ? 0 : -d.minus
    return this.#rng.between(inwards, d.plus, 6)
  }

  #all(w: World): Bounds[] {
    return this.#demands.map((d) => d.gap(w, this.#memo))
  }

  #one(i: number, values: Values): Bounds {
    return (this.#demands[i] as Demand).gap(worldAt(this.#job, values), this.#memo)
  }
}

const lowest = (ends: readonly { value: number; gap: Bounds }[]): number =>
  ends.reduce((a, b) => (b.gap.hi < a.gap.hi ? b : a)).value

function highest(ends: readonly { value: number; gap: Bounds }[], nominal: Bounds): number {
  const best = ends.reduce((a, b) => (b.gap.lo > a.gap.lo ? b : a))
  return best.gap.lo > nominal.lo ? best.value : 0
}

const between = (d: Doubt): number[] =>
  d.turns ? [...endsOf(d)] : [-d.minus, -d.minus / 2, 0, d.plus / 2, d.plus].filter((v, i, l) => l.indexOf(v) === i)
