import { describe, expect, it } from 'vitest'
import { coverageFactor, tQuantile } from '../../../src/rules/student-t.ts'

describe('quantiles of Student’s t', () => {
  it.each([0.6, 0.9, 0.975, 0.995, 0.9999])('at p %s equal the closed forms for ν = 1, 2 and 4 (computed)', (p) => {
    expect(tQuantile(p, 1)).toBeCloseTo(Math.tan(Math.PI * (p - 0.5)), 7)
    const alpha = 4 * p * (1 - p)
    expect(tQuantile(p, 2)).toBeCloseTo((2 * p - 1) * Math.sqrt(2 / alpha), 8)
    const q = Math.cos(Math.acos(Math.sqrt(alpha)) / 3) / Math.sqrt(alpha)
    expect(tQuantile(p, 4)).toBeCloseTo(2 * Math.sqrt(q - 1), 7)
  })

  // GUM Table G.2 and any handbook's t table; from memory, three decimals as printed.
  it.each([
    [1, 12.706, 63.657],
    [2, 4.303, 9.925],
    [3, 3.182, 5.841],
    [5, 2.571, 4.032],
    [10, 2.228, 3.169],
    [16, 2.12, 2.921],
    [20, 2.086, 2.845],
    [30, 2.042, 2.75],
    [50, 2.009, 2.678],
    [100, 1.984, 2.626],
    [Number.POSITIVE_INFINITY, 1.96, 2.576],
  ])('two-sided for ν = %s: k95 %s, k99 %s (table, from memory)', (dof, k95, k99) => {
    expect(Math.abs(coverageFactor(0.95, dof) - k95)).toBeLessThan(0.0006)
    expect(Math.abs(coverageFactor(0.99, dof) - k99)).toBeLessThan(0.0006)
  })

  it('the normal quantiles to nine decimals (1.959963985, 2.575829304; from memory)', () => {
    expect(coverageFactor(0.95, Number.POSITIVE_INFINITY)).toBeCloseTo(1.959963985, 9)
    expect(coverageFactor(0.99, Number.POSITIVE_INFINITY)).toBeCloseTo(2.575829304, 9)
  })

  it('fall with ν towards the normal, and are odd in p', () => {
    for (const p of [0.9, 0.995]) {
      let before = Number.POSITIVE_INFINITY
      for (const dof of [1, 2, 3, 4, 7, 16, 51, 400, 9999, 1e9, Number.POSITIVE_INFINITY]) {
        const now = tQuantile(p, dof)
        expect(now).toBeLessThanOrEqual(before)
        expect(tQuantile(1 - p, dof)).toBeCloseTo(-now, 9)
        before = now
      }
    }
    expect(tQuantile(0.5, 3)).toBe(0)
  })

  it.each([
    [0, 3],
    [1, 3],
    [0.9, 0],
    [0.9, 2.5],
    [Number.NaN, 3],
    [0.9, Number.NaN],
  ])('coverage %s with ν %s is a bug of the caller', (coverage, dof) => {
    expect(() => coverageFactor(coverage, dof)).toThrow(RangeError)
  })
})
