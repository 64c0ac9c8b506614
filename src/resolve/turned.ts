import type { Quantity } from '../quantity/quantity.ts'

/** Doubt about a clock angle, degrees about 0. */
export function turned(theta: Quantity): Quantity | undefined {
  const terms = theta.terms.filter((t) => t.spread.minus + t.spread.plus > 0)
  return terms.length === 0 ? undefined : { nominal: 0, terms }
}
