import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { least, most } from '../../../src/quantity/quantity.ts'
import { lengthFromReadings } from '../../../src/rules/length.ts'
import type { Tool } from '../../../src/rules/tool.ts'

const calliper: Tool = { name: 'calliper, outside jaws', mpe: 0.02, resolution: 0.01, jaws: false }

function size(values: readonly number[], tool = calliper, coverage?: number) {
  const readings = values.map((value) => ({ value }))
  const outcome = lengthFromReadings(readings, { tool, path: 'p', ...(coverage === undefined ? {} : { coverage }) })
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems))
  return outcome.value
}

describe('the worked calliper average (reference table, computed)', () => {
  const { mean, s, combined } = size([25.02, 25.03, 25.01, 25.02, 25.03])
  const part = (name: string) => combined.components.find((c) => c.name === name)?.u

  it('mean 25.022, s 0.00837, uA 0.00374, uMPE 0.01155, ures 0.00289, uc 0.01248, U(k=2) 0.025', () => {
    expect(mean).toBeCloseTo(25.022, 4)
    expect(s).toBeCloseTo(0.00837, 5)
    expect(part('scatter')).toBeCloseTo(0.00374, 5)
    expect(part('instrument')).toBeCloseTo(0.01155, 5)
    expect(part('resolution')).toBeCloseTo(0.00289, 5)
    expect(combined.u).toBeCloseTo(0.01248, 5)
    expect(2 * combined.u).toBeCloseTo(0.025, 3)
  })

  it('averaging cannot push U(k=2) below twice 0.0119', () => {
    const many = size(Array.from({ length: 900 }, (_, i) => 25.02 + 0.01 * (i % 2)))
    expect(2 * many.combined.u).toBeGreaterThanOrEqual(2 * 0.0119)
    expect(2 * many.combined.u).toBeLessThan(2 * 0.01192)
  })
})

describe('a length from readings', () => {
  it('a single reading lies within the tool’s limits: ±(mpe + q/2), rectangular, unknown, measured', () => {
    const { quantity } = size([25])
    expect(quantity.nominal).toBe(25)
    const spread = quantity.terms[0]?.spread
    expect(spread).toMatchObject({ path: 'p', kind: 'unknown', distribution: 'rectangular', source: 'measured' })
    expect(spread?.minus).toBeCloseTo(0.025, 12)
    expect(spread?.plus).toBeCloseTo(0.025, 12)
    expect(spread?.from).toBe('1 reading, calliper, outside jaws')
  })

  it('where scatter rules, it is k·u with Student’s t, normal', () => {
    const { quantity, combined, ask } = size([25.0, 25.2, 24.9, 25.1])
    expect(quantity.terms[0]?.spread.distribution).toBe('normal')
    expect(combined.dof).toBe(3)
    expect(most(quantity) - quantity.nominal).toBeCloseTo(combined.expanded, 12)
    expect(ask.map((a) => a.what)).toEqual(['repeat'])
  })

  it('few repeats that one size can have given tell no less than one, but for how they lie apart', () => {
    const { quantity, combined, mean } = size([25.0, 25.02, 24.98])
    // The tool's limits as for one reading, and as far as one of three can lie from their mean at s = 0.02.
    expect(most(quantity) - mean).toBeCloseTo(0.025 + 0.02 * Math.sqrt(4 / 3), 9)
    expect(most(quantity) - mean).toBeLessThan(combined.expanded)
  })

  it('never wider than k·u, nor than the tool’s limits and the scatter together (seed 31)', () => {
    const reading = fc.integer({ min: 24_900, max: 25_100 }).map((v) => v / 1000)
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 8 }), (values) => {
        const { quantity, combined, mean } = size(values)
        const half = most(quantity) - mean
        expect(mean - least(quantity)).toBeCloseTo(half, 12)
        expect(half).toBeLessThanOrEqual(combined.expanded + 1e-12)
        if (values.length === 1) expect(half).toBeLessThanOrEqual(0.025 + 1e-9)
      }),
      { seed: 31 },
    )
  })

  it('more coverage never narrows it', () => {
    const widths = [0.6, 0.9, 0.95, 0.99, 0.999].map((c) => most(size([25, 25.01, 25.02], calliper, c).quantity))
    expect(widths).toEqual(widths.toSorted((a, b) => a - b))
  })

  it.each([
    [[], 'too-few-readings'],
    [[Number.NaN], 'not-a-number'],
    [[Number.POSITIVE_INFINITY], 'not-a-number'],
    [[0], 'out-of-range'],
    [[-25], 'out-of-range'],
    [[1e9], 'out-of-range'],
    [Array.from({ length: 1001 }, () => 25), 'too-large'],
  ])('readings %o: %s', (values, code) => {
    const outcome = lengthFromReadings(
      values.map((value) => ({ value })),
      { tool: calliper, path: 'p' },
    )
    expect(!outcome.ok && outcome.problems[0]).toMatchObject({ code, path: expect.stringContaining('p/readings') })
  })

  it('names every bad reading, a bad tool and a bad coverage at once', () => {
    const outcome = lengthFromReadings([{ value: 0 }, { value: 25 }, { value: Number.NaN }], {
      tool: { ...calliper, mpe: -1, resolution: Number.NaN },
      coverage: 1,
      path: 'p',
    })
    expect(!outcome.ok && outcome.problems.map((p) => p.path)).toEqual([
      'p/readings/0/value',
      'p/readings/2/value',
      'p/tool/mpe',
      'p/tool/resolution',
      'p/coverage',
    ])
  })
})
