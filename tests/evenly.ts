import fc from 'fast-check'

/**
 * A number evenly spread over a stretch, its ends included and drawn often. `fc.double` spreads over the floating-point
 * format instead, where half of all numbers between 0 and 10 are smaller than anything that matters in a hilt.
 */
export const evenly = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1e6 }).map((n) => min + ((max - min) * n) / 1e6)
