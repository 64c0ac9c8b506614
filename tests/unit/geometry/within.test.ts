import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { disc, rectangle } from '../../../geometry/region/region.ts'
import { gap } from '../../../geometry/solid/gap.ts'
import type { Bore, Prism, Radial, Turned } from '../../../geometry/solid/solid.ts'
import { moved } from '../../../geometry/solid/solid.ts'
import { swept } from '../../../geometry/solid/sweep.ts'
import type { Body } from '../../../src/body/body.ts'
import { realise } from '../../../src/body/realise.ts'
import { exact } from '../../../src/quantity/quantity.ts'
import { evenly } from '../../evenly.ts'

/** Solids that lie within another as well: the cut end of a chamfered sled, the metal of a taper with slots. */

const seed = 20261126

interface Cut {
  readonly z0: number
  readonly z1: number
  readonly r0: number
  readonly r1: number
  readonly width: number
}

/** A cone about the axis, cut down to a strip so and so wide. */
const cut: fc.Arbitrary<Cut> = fc
  .record({ z0: evenly(-5, 5), length: evenly(0.3, 4), r0: evenly(4, 10), less: evenly(-3, 3), width: evenly(2, 16) })
  .map(({ z0, length, r0, less, width }) => ({ z0, z1: z0 + length, r0, r1: r0 + less, width }))

const strip = ({ width }: Cut) => rectangle({ x: 0, y: 0 }, 20, width / 2, 90)

function solid(c: Cut): Prism {
  const { z0, z1, r0, r1 } = c
  const within: Turned = { kind: 'turned', c: { x: 0, y: 0 }, z0, z1, r0, r1, grow: 0 }
  return { kind: 'prism', region: strip(c), z0, z1, grow: 0, within }
}

/** Points of the cut cone: shares of its height, of the circle and of the way out to its edge. */
const share = evenly(0, 1)
const spot = fc.tuple(share, share, share)

function pointOf({ z0, z1, r0, r1, width }: Cut, [h, a, o]: readonly [number, number, number]) {
  const z = z0 + h * (z1 - z0)
  const w = 2 * Math.PI * a
  const out = Math.min(r0 + h * (r1 - r0), Math.abs(width / 2 / Math.max(1e-9, Math.abs(Math.sin(w)))))
  return { x: o * out * Math.cos(w), y: o * out * Math.sin(w), z }
}

const dot = (p: { x: number; y: number; z: number }): Prism => ({
  kind: 'prism',
  region: disc(p, 1e-6),
  z0: p.z,
  z1: p.z,
  grow: 0,
})

/** What a point leaves free, and what rounding may add. */
const free = (d: number): number => Math.max(0, d) + 1e-5

const bore: fc.Arbitrary<Bore> = fc
  .record({ x: evenly(-2, 2), y: evenly(-2, 2), z: evenly(-8, 12), length: evenly(1, 10), r: evenly(6, 14) })
  .map(({ x, y, z, length, r }) => ({ kind: 'bore', c: { x, y }, z0: z, z1: z + length, r0: r, r1: r, grow: 0 }))
const pin: fc.Arbitrary<Radial> = fc
  .record({ theta: evenly(0, 360), z: evenly(-6, 10), radius: evenly(0.5, 3), rIn: evenly(2, 12) })
  .map((p) => ({ kind: 'radial', ...p, rOut: p.rIn + 5, grow: 0 }))

describe('a solid that lies within another', () => {
  it(`has no gap larger than any of its points has, and none smaller than without it (seed ${seed})`, () => {
    fc.assert(
      fc.property(cut, fc.oneof(bore, pin), fc.array(spot, { minLength: 20, maxLength: 20 }), (c, other, spots) => {
        const { within: _within, ...bare } = solid(c)
        const g = gap(solid(c), other)
        expect(g.lo).toBeGreaterThanOrEqual(gap(bare, other).lo)
        for (const s of spots) expect(g.lo).toBeLessThanOrEqual(free(gap(dot(pointOf(c, s)), other).hi))
      }),
      { seed, numRuns: 300 },
    )
  })

  it(`moved or drawn out behind it holds its points in every place it passed (seed ${seed})`, () => {
    fc.assert(
      fc.property(cut, fc.constantFrom('blade', 'rear'), evenly(0, 30), spot, (c, way, back, s) => {
        const by = way === 'blade' ? -back : back
        const p = pointOf(c, s)
        const passed = dot({ ...p, z: p.z + by })
        expect(gap(moved(solid(c), by), passed).lo).toBeLessThanOrEqual(2e-5)
        const trail = swept(solid(c), way as 'blade' | 'rear').map((part) => gap(part, passed).lo)
        expect(Math.min(...trail)).toBeLessThanOrEqual(2e-5)
      }),
      { seed, numRuns: 300 },
    )
  })

  it(`printed with an error holds its faces that much farther out, square to them (seed ${seed})`, () => {
    fc.assert(
      fc.property(cut, evenly(0, 0.3), share, share, (c, error, h, a) => {
        const shape = { kind: 'outline', region: strip(c), z0: exact(c.z0), z1: exact(c.z1), taper: c } as const
        const body: Body = { id: 'b', of: 'b', name: 'b', shape, swell: exact(error) }
        const real = realise(body, (q) => q.nominal)
        const w = 2 * Math.PI * a
        const p = pointOf(c, [h, a, 1])
        const slope = (c.r1 - c.r0) / (c.z1 - c.z0)
        const out = error / Math.hypot(1, slope)
        const face = { x: p.x + out * Math.cos(w), y: p.y + out * Math.sin(w), z: p.z - slope * out }
        expect(gap(real, dot(face)).lo).toBeLessThanOrEqual(2e-5)
      }),
      { seed, numRuns: 500 },
    )
  })

  it('counts a cut chamfer at its own radius: a shoulder of 5 clears a cone that ends at 4.6', () => {
    const c: Cut = { z0: 0, z1: 0.4, r0: 5, r1: 4.6, width: 6 }
    const shoulder: Bore = { kind: 'bore', c: { x: 0, y: 0 }, z0: 0.4, z1: 5, r0: 5, r1: 5, grow: 0 }
    expect(gap(solid(c), shoulder).lo).toBeCloseTo(0.4 / Math.SQRT2, 9)
  })
})
