import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { either, type Span, union, within, without } from '../../../src/papers/spans.ts'

const seed = 20_411

const span = fc
  .tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: 1, max: 30 }))
  .map(([a, l]): Span => [a, a + l])
const list = fc.array(span, { maxLength: 8 })
const length = (spans: readonly Span[]): number => spans.reduce((sum, [a, b]) => sum + b - a, 0)
const holds = (spans: readonly Span[], x: number): boolean => spans.some(([a, b]) => a < x && x < b)

describe(`stretches of a line, seed ${seed}`, () => {
  it('a union holds what any of its stretches holds, sorted and apart', () => {
    fc.assert(
      fc.property(list, (spans) => {
        const joined = union(spans)
        for (let x = -50.5; x < 85; x++) expect(holds(joined, x)).toBe(holds(spans, x))
        for (const [i, s] of joined.entries()) if (i > 0) expect(s[0]).toBeGreaterThan((joined[i - 1] as Span)[1])
      }),
      { seed, numRuns: 200 },
    )
  })

  it('what is left and what is taken add up to the whole', () => {
    fc.assert(
      fc.property(list, span, (spans, cut) => {
        expect(length(without(spans, [cut])) + length(within(union(spans), cut))).toBeCloseTo(length(union(spans)), 9)
      }),
      { seed, numRuns: 200 },
    )
  })

  it('"either" is where exactly one of two lists is', () => {
    fc.assert(
      fc.property(list, list, (a, b) => {
        const one = either(a, b)
        for (let x = -50.5; x < 85; x++) expect(holds(one, x)).toBe(holds(a, x) !== holds(b, x))
      }),
      { seed, numRuns: 200 },
    )
  })
})
