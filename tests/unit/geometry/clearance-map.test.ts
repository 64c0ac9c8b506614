import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { clearanceMap } from '../../../geometry/map/clearance-map.ts'
import { gridOver } from '../../../geometry/map/grid.ts'
import { tightPlaces } from '../../../geometry/map/tightest.ts'
import { polar } from '../../../geometry/region/point.ts'
import { disc, rectangle, sector } from '../../../geometry/region/region.ts'
import { gap } from '../../../geometry/solid/gap.ts'
import type { Bore, Prism, Radial, Solid, Turned } from '../../../geometry/solid/solid.ts'
import { swept } from '../../../geometry/solid/sweep.ts'
import { evenly } from '../../evenly.ts'

const seed = 90210
const grid = gridOver(-5, 65, 0.5, 2)

const bore = (z0: number, z1: number, r: number): Bore => ({
  kind: 'bore',
  c: { x: 0, y: 0 },
  z0,
  z1,
  r0: r,
  r1: r,
  grow: 0,
})
const obstacle: fc.Arbitrary<Solid> = fc.oneof(
  fc.tuple(evenly(0, 30), evenly(2, 20), evenly(9, 14)).map(([z, l, r]) => bore(z, z + l, r)),
  fc
    .tuple(evenly(0, 360), evenly(5, 55), evenly(0.5, 3), evenly(6, 12))
    .map(([theta, z, radius, rIn]): Radial => ({ kind: 'radial', theta, z, radius, rIn, rOut: 16, grow: 0 })),
  fc.tuple(evenly(0, 360), evenly(5, 120), evenly(5, 50), evenly(1, 8), evenly(7, 13)).map(
    ([t, half, z, l, r]): Prism => ({
      kind: 'prism',
      region: sector(r, Number.POSITIVE_INFINITY, t, half),
      z0: z,
      z1: z + l,
      grow: 0,
    }),
  ),
)
const body: fc.Arbitrary<Solid> = fc.oneof(
  fc
    .tuple(evenly(0, 4), evenly(0, 360), evenly(3, 9), evenly(0, 30), evenly(5, 25))
    .map(([e, t, r, z, l]): Prism => ({ kind: 'prism', region: disc(polar(e, t), r), z0: z, z1: z + l, grow: 0 })),
  fc.tuple(evenly(0, 7), evenly(0, 360), evenly(2, 8), evenly(1, 3), evenly(0, 30), evenly(5, 25)).map(
    ([e, t, w, h, z, l]): Prism => ({
      kind: 'prism',
      region: rectangle(polar(e, t), w, h, t),
      z0: z,
      z1: z + l,
      grow: 0,
    }),
  ),
  fc
    .tuple(evenly(4, 11), evenly(4, 11), evenly(0, 30), evenly(5, 25))
    .map(([r0, r1, z, l]): Turned => ({ kind: 'turned', c: { x: 0, y: 0 }, z0: z, z1: z + l, r0, r1, grow: 0 })),
)

const exactGap = (b: Solid, o: Solid, way: 'blade' | undefined) =>
  Math.min(...(way ? swept(b, way) : [b]).map((s) => gap(s, o).hi))

describe('clearance map', () => {
  it.each([undefined, 'blade'] as const)(`never proves clear what is not (way %s, seed ${seed})`, (way) => {
    fc.assert(
      fc.property(
        fc.array(body, { minLength: 1, maxLength: 3 }),
        fc.array(obstacle, { minLength: 1, maxLength: 4 }),
        evenly(0.05, 0.8),
        (bodies, obstacles, clearance) => {
          const options = way ? { clearance, way } : { clearance }
          const map = clearanceMap(bodies, obstacles, grid, options)
          const proven = map.leastLeft.every((left) => left >= 0)
          const least = Math.min(...bodies.flatMap((b) => obstacles.map((o) => exactGap(b, o, way))))
          if (proven) expect(least).toBeGreaterThanOrEqual(clearance - 1e-3)
          const places = tightPlaces(map, bodies, obstacles, options)
          if (least < clearance - 1e-3) {
            expect(places.length).toBeGreaterThan(0)
            expect((places[0] as (typeof places)[0]).gap.lo).toBeLessThan(clearance)
          }
        },
      ),
      { seed, numRuns: 150 },
    )
  })

  it('leaves of each row the radial room over the clearance, exact where all is round', () => {
    const sled: Prism = { kind: 'prism', region: disc({ x: 0, y: 0 }, 12), z0: 10, z1: 50, grow: 0 }
    const map = clearanceMap([sled], [bore(0, 30, 13), bore(30, 60, 12.6)], grid, { clearance: 0.2 })
    const row = (z: number) => map.leastLeft[Math.floor((z - grid.z0) / grid.dz)]
    expect(row(20)).toBeCloseTo(0.8, 6)
    expect(row(40)).toBeCloseTo(0.4, 6)
    expect(row(5)).toBe(Number.POSITIVE_INFINITY)
  })

  it('sees a shoulder ahead: the clearance grows along z too', () => {
    const sled: Prism = { kind: 'prism', region: disc({ x: 0, y: 0 }, 12), z0: 10, z1: 29.9, grow: 0 }
    const close = clearanceMap([sled], [bore(30, 60, 8)], gridOver(0, 60), { clearance: 0.3 })
    const far = clearanceMap([{ ...sled, z1: 29.25 }], [bore(30, 60, 8)], gridOver(0, 60), { clearance: 0.3 })
    expect(Math.min(...close.leastLeft)).toBeLessThan(0)
    expect(Math.min(...far.leastLeft)).toBeGreaterThanOrEqual(0)
  })

  it('on the way in, a neck behind a wider part is the throat of everything beyond it', () => {
    const sled: Prism = { kind: 'prism', region: disc({ x: 0, y: 0 }, 12), z0: 30, z1: 50, grow: 0 }
    const obstacles = [bore(0, 8, 11), bore(8, 60, 13)]
    expect(Math.min(...clearanceMap([sled], obstacles, grid, { clearance: 0.2 }).leastLeft)).toBeGreaterThan(0)
    const map = clearanceMap([sled], obstacles, grid, { clearance: 0.2, way: 'blade' })
    expect(Math.min(...map.leastLeft)).toBeCloseTo(-1.2, 5)
    expect(tightPlaces(map, [sled], obstacles, { clearance: 0.2, way: 'blade' })[0]?.obstacle).toBe(0)
  })
})
