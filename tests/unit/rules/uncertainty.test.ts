import { describe, expect, it } from 'vitest'
import { coverageFactors } from '../../../src/rules/student-t.ts'
import { combineUncertainty, rectangular, resolution, scatter } from '../../../src/rules/uncertainty.ts'

describe('GUM example H.1, the end gauge (read in public test suites; recomputed)', () => {
  // Sensitivities from the example's model: length of the standard 50.000623 mm, θ −0.1 °C, αs 11.5e-6 per °C.
  const nm = 1
  const standard = { name: 'standard', u: 25 * nm, dof: 18 }
  const comparison = [
    { name: 'repeats', u: 5.8, dof: 24 },
    { name: 'random, comparator', u: 3.9, dof: 5 },
    { name: 'systematic, comparator', u: 6.7, dof: 8 },
  ]
  const expansion = { name: 'difference of expansion', u: 50.000623e6 * 0.1 * 0.58e-6, dof: 50 }
  const temperature = { name: 'difference of temperature', u: 50.000623e6 * 11.5e-6 * 0.029, dof: 2 }
  const budget = [standard, ...comparison, expansion, temperature]

  it('parts 9.7, 2.9 and 16.6 nm', () => {
    expect(combineUncertainty(comparison, coverageFactors(0.99)).u).toBeCloseTo(9.7, 1)
    expect(expansion.u).toBeCloseTo(2.9, 1)
    // 16.6 as published, with θ's temperature coefficient rounded: 16.67 recomputed.
    expect(Math.abs(temperature.u - 16.6)).toBeLessThan(0.1)
  })

  it('combined 32 nm, νeff 16, k99 2.92, U99 93 nm', () => {
    const { u, dof, k, expanded } = combineUncertainty(budget, coverageFactors(0.99))
    expect(Math.round(u)).toBe(32)
    expect(dof).toBe(16)
    expect(k).toBeCloseTo(2.92, 2)
    expect(Math.abs(expanded - 93)).toBeLessThan(1)
  })

  it('k95 2.12 at ν 16 (computed)', () => {
    expect(combineUncertainty(budget, coverageFactors(0.95)).k).toBeCloseTo(2.1199, 4)
  })
})

describe('GUM 4.4.3, twenty temperatures (data from memory; computed)', () => {
  const readings = [
    96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95, 101.11, 101.2,
    101.57, 101.84, 102.36, 102.72,
  ]
  it('mean 100.145, s 1.489, s/√n 0.333', () => {
    const { mean, s, u, dof } = scatter(readings)
    expect(mean).toBeCloseTo(100.145, 3)
    expect(s).toBeCloseTo(1.489, 3)
    expect(u).toBeCloseTo(0.333, 3)
    expect(dof).toBe(19)
  })
})

describe('Type B divisors (GUM 4.3.7, F.2.2.1; from memory)', () => {
  it('limits ±a give a/√3, a step q gives q/√12: the same thing for a = q/2', () => {
    expect(rectangular(1)).toBeCloseTo(0.57735, 5)
    expect(resolution(1)).toBeCloseTo(0.288675, 5)
    expect(resolution(0.01)).toBeCloseTo(rectangular(0.005), 12)
  })
})

describe('combining', () => {
  it('one component keeps its own degrees of freedom, whole numbers staying whole', () => {
    for (const dof of [1, 2, 3, 16, 19, 100])
      expect(combineUncertainty([{ name: 'a', u: 0.3, dof }], coverageFactors(0.95)).dof).toBe(dof)
  })

  it('limits alone have infinite degrees of freedom; nothing at all gives nothing', () => {
    const certain = combineUncertainty([{ name: 'a', u: 1, dof: Number.POSITIVE_INFINITY }], coverageFactors(0.95))
    expect(certain.dof).toBe(Number.POSITIVE_INFINITY)
    expect(combineUncertainty([], coverageFactors(0.95))).toMatchObject({ u: 0, expanded: 0 })
    expect(combineUncertainty([{ name: 'a', u: 0, dof: 3 }], coverageFactors(0.95))).toMatchObject({
      u: 0,
      expanded: 0,
    })
  })

  it('one reading tells nothing of scatter', () => {
    expect(scatter([25.02])).toEqual({ mean: 25.02, s: 0, u: 0, dof: 0 })
  })
})
