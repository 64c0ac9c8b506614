import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Point, polar } from '../../../geometry/region/point.ts'
import { disc, polygon, rectangle, sector } from '../../../geometry/region/region.ts'
import { gap } from '../../../geometry/solid/gap.ts'
import type { Bore, Prism, Radial, Solid, Turned } from '../../../geometry/solid/solid.ts'
import { evenly } from '../../evenly.ts'
import { sampledGap } from './sampled-gap.ts'

const seed = 20261125

const place = fc.record({ x: evenly(-8, 8), y: evenly(-8, 8) })
const stretch = fc.tuple(evenly(-10, 10), evenly(1, 12)).map(([z0, l]) => ({ z0, z1: z0 + l }))
const prism: fc.Arbitrary<Prism> = fc
  .tuple(
    stretch,
    fc.oneof(
      fc.tuple(place, evenly(1, 8)).map(([c, r]) => disc(c, r)),
      fc
        .tuple(place, evenly(0.5, 8), evenly(0.5, 4), evenly(0, 360))
        .map(([c, w, h, turn]) => rectangle(c, w, h, turn)),
      fc
        .tuple(evenly(2, 12), evenly(1, 5), evenly(0, 360), evenly(5, 170))
        .map(([r, t, a, half]) => sector(r, r + t, a, half)),
    ),
  )
  .map(([s, region]) => ({ kind: 'prism', region, ...s, grow: 0 }))
const turned: fc.Arbitrary<Turned> = fc
  .tuple(stretch, place, evenly(1, 9), evenly(1, 9))
  .map(([s, c, r0, r1]) => ({ kind: 'turned', c, ...s, r0, r1, grow: 0 }))
const pin: fc.Arbitrary<Radial> = fc
  .tuple(evenly(0, 360), evenly(-6, 6), evenly(0.5, 4), evenly(2, 10), evenly(2, 8))
  .map(([theta, z, radius, rIn, l]) => ({ kind: 'radial', theta, z, radius, rIn, rOut: rIn + l, grow: 0 }))
const bore: fc.Arbitrary<Bore> = fc
  .tuple(stretch, fc.record({ x: evenly(-2, 2), y: evenly(-2, 2) }), evenly(8, 20), evenly(8, 20))
  .map(([s, c, r0, r1]) => ({ kind: 'bore', c, ...s, r0, r1, grow: 0 }))
const body = fc.oneof(prism, turned, pin)

describe('gap between two solids', () => {
  it(`holds the distance found by sampling both bodies (seed ${seed})`, () => {
    fc.assert(
      fc.property(body, fc.oneof(body, bore), (a, b) => {
        const g = gap(a as Solid, b as Solid)
        const sampled = sampledGap(a, b)
        expect(g.lo).toBeLessThanOrEqual(g.hi + 1e-9)
        if (sampled.overlaps) expect(g.lo).toBeLessThan(1e-6)
        else expect(g.lo).toBeLessThanOrEqual(sampled.distance + 1e-6)
        if (g.hi < -1e-3) expect(sampled.distance).toBeLessThan(1.5)
        else if (!sampled.overlaps) expect(sampled.distance).toBeLessThan(Math.max(0, g.hi) + 4)
      }),
      { seed, numRuns: 300 },
    )
  })

  it(`has bounds that meet to a hundredth of the gap, or two thousandths of a millimetre, where bodies are apart (seed ${seed})`, () => {
    fc.assert(
      fc.property(prism, pin, (a, b) => {
        const g = gap(a, b)
        if (g.lo > 0) expect(g.hi - g.lo).toBeLessThan(Math.max(2e-3, 1.01e-2 * g.hi))
      }),
      { seed, numRuns: 200 },
    )
  })

  it(`does not change when both turn about the axis (seed ${seed})`, () => {
    fc.assert(
      fc.property(pin, evenly(3, 10), evenly(0, 360), evenly(0, 360), (a, r, at, by) => {
        const cell = (turn: number): Prism => ({
          kind: 'prism',
          region: disc(polar(r, at + turn), 2),
          z0: -3,
          z1: 4,
          grow: 0,
        })
        const g = gap(cell(0), a)
        const h = gap(cell(by), { ...a, theta: a.theta + by })
        expect(h.lo).toBeCloseTo(g.lo, 2)
      }),
      { seed, numRuns: 100 },
    )
  })

  it('is exact for a disc off the axis in a round bore: R − e − r', () => {
    const cell: Prism = { kind: 'prism', region: disc({ x: 0, y: 3 }, 9.3), z0: 0, z1: 65, grow: 0 }
    const hole: Bore = { kind: 'bore', c: { x: 0, y: 0 }, z0: -5, z1: 80, r0: 13, r1: 13, grow: 0 }
    const g = gap(cell, hole)
    expect(g.lo).toBeCloseTo(0.7, 12)
    expect(g.p.y).toBeCloseTo(12.3, 12)
  })

  it('sees a shoulder ahead as well as the wall above', () => {
    const cell: Prism = { kind: 'prism', region: disc({ x: 0, y: 0 }, 12), z0: 0, z1: 65, grow: 0 }
    const neck: Bore = { kind: 'bore', c: { x: 0, y: 0 }, z0: 65.25, z1: 80, r0: 10, r1: 10, grow: 0 }
    expect(gap(cell, neck).lo).toBeCloseTo(0.25, 12)
  })

  it('says how deep a ring overlaps a narrow neck', () => {
    const ring: Prism = { kind: 'prism', region: disc({ x: 0, y: 0 }, 12), z0: 0, z1: 5, grow: 0 }
    const neck: Bore = { kind: 'bore', c: { x: 0, y: 0 }, z0: -10, z1: 80, r0: 11.6, r1: 11.6, grow: 0 }
    expect(gap(ring, neck).hi).toBeCloseTo(-0.4, 12)
  })

  it('measures a board corner to the bore: the far corner governs', () => {
    const corners: Point[] = [
      { x: 6, y: -9 },
      { x: 7, y: -9 },
      { x: 7, y: 9 },
      { x: 6, y: 9 },
    ]
    const board: Prism = { kind: 'prism', region: polygon(corners), z0: 0, z1: 30, grow: 0 }
    const hole: Bore = { kind: 'bore', c: { x: 0, y: 0 }, z0: 0, z1: 30, r0: 13, r1: 13, grow: 0 }
    expect(gap(board, hole).lo).toBeCloseTo(13 - Math.hypot(7, 9), 12)
  })
})
