import fc from 'fast-check'
import { expect, it } from 'vitest'
import type { Body, Shape } from '../../../src/body/body.ts'
import { gapAt } from '../../../src/body/gap-at.ts'
import { pairOf } from '../../../src/body/pair.ts'
import { exact, known } from '../../../src/quantity/quantity.ts'
import { evenly } from '../../evenly.ts'

const seed = 20261127

const body = (id: string, shape: Shape, more: Partial<Body> = {}): Body => ({ id, of: id, name: id, shape, ...more })

const pin = (theta: number, rIn: number, radius: number, doubt: number): Body =>
  body(
    'features/pin',
    { kind: 'pin', z: exact(5), theta, radius: exact(radius), rIn: exact(rIn), rOut: exact(20) },
    {
      turn: known(0, {
        path: 'features/pin/at/theta',
        kind: 'unknown',
        minus: doubt,
        plus: doubt,
        distribution: 'rectangular',
        source: 'measured',
        from: 'a test',
      }),
    },
  )

const post = (x: number, y: number, r: number): Body =>
  body('parts/post', {
    kind: 'round',
    z0: exact(0),
    z1: exact(10),
    x: exact(x),
    y: exact(y),
    r0: exact(r),
    r1: exact(r),
  })

it(`a pin off its clock angle, short of the axis or past it, is told no farther than it may stand (seed ${seed})`, () => {
  const some = fc.record({
    rIn: evenly(-12, 12),
    radius: evenly(0.5, 3),
    half: evenly(0.5, 12),
    x: evenly(-15, 15),
    y: evenly(-8, 8),
    r: evenly(0.3, 2),
  })
  fc.assert(
    fc.property(some, ({ rIn, radius, half, x, y, r }) => {
      const told = gapAt(pairOf(pin(0, rIn, radius, half), post(x, y, r)), 'worst').lo
      const offs = Array.from({ length: 41 }, (_, i) => half * (i / 20 - 1))
      const least = Math.min(...offs.map((w) => gapAt(pairOf(pin(w, rIn, radius, 0), post(x, y, r)), 'nominal').hi))
      expect(told).toBeLessThanOrEqual(least + 1e-6)
    }),
    { seed, numRuns: 300 },
  )
})
