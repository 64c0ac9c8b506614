import fc from 'fast-check'
import { expect, test } from 'vitest'
import { profileOf } from '../../../geometry/map/profile.ts'
import { carve } from '../../../geometry/region/carve.ts'
import { pointAt } from '../../../geometry/region/edge.ts'
import { polar } from '../../../geometry/region/point.ts'
import { disc, type Region, rectangle } from '../../../geometry/region/region.ts'
import { evenly } from '../../evenly.ts'

const n = 360
const seed = 4711

/** Regions far from the axis, near it, and around it. */
const region = fc
  .record({
    r: evenly(0, 6),
    theta: evenly(0, 360),
    kind: fc.constantFrom('disc', 'box', 'bitten'),
    size: evenly(0.05, 5),
    slim: evenly(0.05, 1),
    facing: evenly(0, 360),
  })
  .map(({ r, theta, kind, size, slim, facing }): Region => {
    const c = polar(r, theta)
    if (kind === 'disc') return disc(c, size)
    if (kind === 'box') return rectangle(c, size, size * slim, facing)
    return carve(disc(c, size), [disc(polar(r + size, theta), size * slim)])
  })

test(`a grown profile holds all within that distance of the region (seed ${seed})`, () => {
  fc.assert(
    fc.property(region, evenly(0.01, 1), (shape, grow) => {
      const { inner, outer } = profileOf(shape, n, grow)
      const within = (x: number, y: number) => {
        const r = Math.hypot(x, y)
        const cell = Math.floor(((Math.atan2(y, x) / (2 * Math.PI)) * n + n) % n) % n
        expect(inner[cell]).toBeLessThanOrEqual(r + 1e-6)
        expect(outer[cell]).toBeGreaterThanOrEqual(r - 1e-6)
      }
      for (const e of shape.edges)
        for (let t = 0; t <= 1; t += 0.125)
          for (let w = 0; w < 2 * Math.PI; w += Math.PI / 8)
            for (const g of [grow / 3, grow]) {
              const p = pointAt(e, t)
              within(p.x + g * Math.cos(w), p.y + g * Math.sin(w))
            }
    }),
    { seed, numRuns: 200 },
  )
})

test('a body around the axis grows by no more than was asked, all around', () => {
  const { inner, outer } = profileOf(rectangle({ x: 0, y: 0 }, 5, 5, 0), n, 0.1)
  expect(Math.max(...inner)).toBe(0)
  // Corners at 7.07; halfway between them 5 and what a cell lets it grow.
  expect(Math.max(...outer)).toBeCloseTo(Math.hypot(5, 5) + 0.1, 6)
  expect(Math.min(...outer)).toBeLessThan(5.11)
})
