import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fitEllipse } from '../../../src/rules/ellipse.ts'
import { evenly } from '../../evenly.ts'

const angle = evenly(0, 180)
const rad = Math.PI / 180

/** d(θ) of a bore with a second harmonic: greatest diameter at `axis`. */
const diameter = (mean: number, amplitude: number, axis: number) => (theta: number) =>
  mean + amplitude * Math.cos(2 * (theta - axis) * rad)

const readAt = (thetas: readonly number[], d: (theta: number) => number) =>
  thetas.map((theta) => ({ theta, values: [d(theta)] }))

/** Directions spread so that neighbours are at least 25° apart: enough to fix an oval. */
const spreadDirections = fc
  .tuple(angle, fc.integer({ min: 3, max: 7 }), fc.array(evenly(-0.25, 0.25), { minLength: 7, maxLength: 7 }))
  .map(([start, n, jitter]) =>
    Array.from({ length: n }, (_, i) => (start + ((i + (n < 6 ? (jitter[i] as number) : 0)) * 180) / n) % 180),
  )

describe('the oval from readings', () => {
  it('three directions at 60°: least = mean − √(⅔ Σ(d − mean)²), for any three diameters (identity, computed; seed 41)', () => {
    const d = evenly(27, 29)
    fc.assert(
      fc.property(fc.tuple(d, d, d), angle, (ds, start) => {
        const read = ds.map((v, i) => ({ theta: (start + 60 * i) % 180, values: [v] }))
        const fit = fitEllipse(read)
        const mean = (ds[0] + ds[1] + ds[2]) / 3
        const amplitude = Math.sqrt((2 / 3) * ds.reduce((sum, v) => sum + (v - mean) ** 2, 0))
        expect(fit?.mean).toBeCloseTo(mean, 9)
        expect(fit?.amplitude).toBeCloseTo(amplitude, 9)
      }),
      { seed: 41 },
    )
  })

  it('three or more spread directions find the least diameter and its direction exactly (seed 42)', () => {
    fc.assert(
      fc.property(spreadDirections, evenly(0.001, 0.5), angle, (thetas, c, axis) => {
        const fit = fitEllipse(readAt(thetas, diameter(28, c, axis)))
        if (!fit) throw new Error('not fitted')
        expect(fit.mean - fit.amplitude).toBeCloseTo(28 - c, 8)
        expect(Math.cos(2 * (fit.greatestAt - axis) * rad)).toBeCloseTo(1, 6)
        expect(fit.greatestAt).toBeGreaterThanOrEqual(0)
        expect(fit.greatestAt).toBeLessThan(180)
      }),
      { seed: 42 },
    )
  })

  it('a true ellipse between flat jaws or over points differs from it in second order only (seed 43)', () => {
    const half = evenly(13.8, 14.2)
    fc.assert(
      fc.property(half, half, spreadDirections, angle, (a, b, thetas, axis) => {
        const flat = (t: number) => 2 * Math.hypot(a * Math.cos((t - axis) * rad), b * Math.sin((t - axis) * rad))
        const points = (t: number) => 2 / Math.hypot(Math.cos((t - axis) * rad) / a, Math.sin((t - axis) * rad) / b)
        const ovality = 2 * Math.abs(a - b)
        for (const d of [flat, points]) {
          const fit = fitEllipse(readAt(thetas, d))
          if (!fit) throw new Error('not fitted')
          const error = Math.abs(fit.mean - fit.amplitude - 2 * Math.min(a, b))
          expect(error).toBeLessThanOrEqual(ovality ** 2 / 28 + 1e-9)
        }
      }),
      { seed: 43 },
    )
  })

  it('the weights give the diameter they promise and sum to 1 (seed 44)', () => {
    fc.assert(
      fc.property(spreadDirections, evenly(0, 0.3), angle, angle, (thetas, c, axis, at) => {
        const read = readAt(thetas, diameter(28, c, axis))
        const fit = fitEllipse(read)
        if (!fit) throw new Error('not fitted')
        for (const side of [1, -1] as const) {
          const weights = fit.weights(side, at)
          const promised = 28 + side * c * Math.cos(2 * (at - axis) * rad)
          expect(weights.reduce((sum, w, i) => sum + w * (read[i]?.values[0] as number), 0)).toBeCloseTo(promised, 8)
          expect(weights.reduce((sum, w) => sum + w, 0)).toBeCloseTo(1, 9)
        }
      }),
      { seed: 44 },
    )
  })

  it('at 60° every weighting has unit norm: three readings are worth one, whatever the axis (computed)', () => {
    const fit = fitEllipse(readAt([10, 70, 130], diameter(28, 0.1, 33)))
    for (let at = 0; at < 180; at += 7) expect(Math.hypot(...(fit?.weights(-1, at) ?? []))).toBeCloseTo(1, 9)
  })

  it.each([[[0]], [[0, 90]], [[0, 5, 10]], [[0, 1, 90]], [[0, 10, 20, 30]]])(
    'directions %o do not fix an oval',
    (thetas) => {
      expect(fitEllipse(readAt(thetas, diameter(28, 0.1, 20)))).toBeUndefined()
    },
  )

  it.each([[[0, 60, 120]], [[0, 45, 90]], [[0, 45, 90, 135]], [[0, 50, 110]]])('directions %o do', (thetas) => {
    expect(fitEllipse(readAt(thetas, diameter(28, 0.1, 20)))?.amplitude).toBeCloseTo(0.1, 9)
  })

  it('residues tell the scatter: repeats pooled with what the oval does not explain', () => {
    const read = [0, 60, 120].map((theta) => ({ theta, values: [28, 28.02] }))
    const fit = fitEllipse(read)
    expect(fit?.dof).toBe(3)
    expect(fit?.s).toBeCloseTo(0.01 * Math.sqrt(2), 9)
    expect(fitEllipse(readAt([0, 60, 120], diameter(28, 0.1, 0)))).toMatchObject({ s: 0, dof: 0 })
  })
})
