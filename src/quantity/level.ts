import { high, low, type Quantity, type Term } from './quantity.ts'

/**
 * At which corner of the intervals a number is taken.
 *
 * worst: every spread at its tight end. best: every spread at its loose end. settled: the unknowns at their loose
 * end, the variations at their tight end; a check that fails even there is a clash, whatever is measured.
 */
export type Level = 'worst' | 'nominal' | 'settled' | 'best'

/** +1 where a larger number leaves less room (a part's radius), −1 where a smaller one does (a bore). */
export type Tight = 1 | -1

/** The value at a level, `tight` telling which way is tight. Exact for a quantity that acts monotonically. */
export function at(q: Quantity, tight: Tight, level: Level): number {
  if (level === 'nominal') return q.nominal
  let value = q.nominal
  for (const t of q.terms) value += tightEnd(t, tight, level)
  return value
}

/** What one term adds at a level. */
export function tightEnd(t: Term, tight: Tight, level: Exclude<Level, 'nominal'>): number {
  const tightest = level === 'worst' || (level === 'settled' && t.spread.kind === 'varies')
  return tight > 0 === tightest ? high(t) : low(t)
}
