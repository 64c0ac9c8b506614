/**
 * A number that knows how well it is known.
 *
 * A quantity is an affine form: `nominal + Σ gain · e`, one term for each independent spread `e` in [−minus, +plus].
 * Because terms keep the identity of their spread, what two quantities share cancels when they are subtracted: the
 * gap between two parts that sit on the same moved shelf does not depend on where the shelf is. That is what makes
 * the three-way verdict honest in both directions.
 */

/** Where a number came from. "computed" follows from others; "assumed" nobody measured, and the verdict says so. */
export type SourceKind = 'measured' | 'preset' | 'computed' | 'assumed'

/**
 * unknown: one true value, and measuring settles it. varies: it really takes all these values (float, a reprint, a
 * swapped cell, joint play, temperature).
 */
export type SpreadKind = 'unknown' | 'varies'

export type Distribution = 'rectangular' | 'triangular' | 'normal'

export interface Spread {
  /** What a person would measure or change to settle it: the field's path in the project. */
  readonly path: string
  readonly kind: SpreadKind
  /** How far below and above the nominal it may lie, mm or degrees, each ≥ 0. */
  readonly minus: number
  readonly plus: number
  readonly distribution: Distribution
  readonly source: SourceKind
  /** In words: the tool, the preset's source, the rule. */
  readonly from: string
}

export interface Term {
  readonly spread: Spread
  readonly gain: number
}

export interface Quantity {
  readonly nominal: number
  /** At most one term a spread path. A quantity without spread still keeps its term, for its source. */
  readonly terms: readonly Term[]
}

/** A number nothing can move: a count, a definition, a dimension the program itself chose. */
export const exact = (nominal: number): Quantity => ({ nominal, terms: [] })

export function known(nominal: number, spread: Spread): Quantity {
  return { nominal, terms: [{ spread, gain: 1 }] }
}

export function add(...parts: readonly Quantity[]): Quantity {
  return combine(parts.map((q) => [q, 1]))
}

export function sub(a: Quantity, b: Quantity): Quantity {
  return combine([
    [a, 1],
    [b, -1],
  ])
}

export function scale(q: Quantity, k: number): Quantity {
  return combine([[q, k]])
}

export function shift(q: Quantity, by: number): Quantity {
  return by === 0 ? q : { nominal: q.nominal + by, terms: q.terms }
}

/** Σ k·q with shared spreads merged; a term whose gains cancel disappears. */
export function combine(parts: readonly (readonly [Quantity, number])[]): Quantity {
  let nominal = 0
  const terms: Term[] = []
  for (const [q, k] of parts) {
    nominal += k * q.nominal
    for (const term of q.terms) {
      const gain = term.gain * k
      const at = terms.findIndex((t) => t.spread === term.spread || t.spread.path === term.spread.path)
      if (at < 0) terms.push({ spread: term.spread, gain })
      else terms[at] = { spread: term.spread, gain: (terms[at] as Term).gain + gain }
    }
  }
  return { nominal, terms: terms.filter((t) => Math.abs(t.gain) > 1e-12) }
}

/** Lowest and highest contribution of a term, mm. */
export function low(t: Term): number {
  return t.gain >= 0 ? -t.gain * t.spread.minus : t.gain * t.spread.plus
}

export function high(t: Term): number {
  return t.gain >= 0 ? t.gain * t.spread.plus : -t.gain * t.spread.minus
}

export function least(q: Quantity): number {
  return q.terms.reduce((sum, t) => sum + low(t), q.nominal)
}

export function most(q: Quantity): number {
  return q.terms.reduce((sum, t) => sum + high(t), q.nominal)
}

/**
 * What a sum of straight lines does not tell of a bend, up to `off` mm either way: a doubt of its own, settled by the
 * widest of those that it comes from.
 */
export function bend(off: number, of: readonly Quantity[], from: string): Quantity {
  if (!(off > 1e-9)) return exact(0)
  const [widest] = of.flatMap((q) => q.terms).toSorted((a, b) => high(b) - low(b) - high(a) + low(a))
  const path = `${widest?.spread.path}/bend`
  return known(0, {
    path,
    kind: 'unknown',
    minus: off,
    plus: off,
    distribution: 'rectangular',
    source: 'computed',
    from,
  })
}

/** What a quantity may be off, about 0. */
export const doubt = (q: Quantity): Quantity => ({ nominal: 0, terms: q.terms })

/** The farthest a quantity may be off either way, each of its spreads at the wider end. */
export const reachOf = (q: Quantity | undefined): number =>
  (q?.terms ?? []).reduce((sum, t) => sum + Math.abs(t.gain) * Math.max(t.spread.minus, t.spread.plus), 0)

/**
 * True where any number it rests on was assumed: such a finding is at best unsure.
 * @internal
 */
export function restsOnAssumed(q: Quantity): boolean {
  return q.terms.some((t) => t.spread.source === 'assumed')
}
