import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { carve, join } from '../../../geometry/region/carve.ts'
import { farthest } from '../../../geometry/region/farthest.ts'
import { type Point, polar } from '../../../geometry/region/point.ts'
import { disc, type Region, rectangle } from '../../../geometry/region/region.ts'
import type { Body } from '../../../src/body/body.ts'
import { roomAside } from '../../../src/body/room-aside.ts'
import { exact } from '../../../src/quantity/quantity.ts'
import { evenly } from '../../evenly.ts'
import { findingOf, sure } from './judged.ts'
import { bore, job, pin } from './smallest.ts'

const seed = 20261126

/** A round piece of radius 10 with notches, each half as wide as told, open to the outside at its clock angle. */
const notched = (notches: readonly { theta: number; half: number }[]): Region =>
  notches.length === 0
    ? disc({ x: 0, y: 0 }, 10)
    : carve(
        disc({ x: 0, y: 0 }, 10),
        notches.map(({ theta, half }) => rectangle(polar(10, theta), half, 4, theta)),
      )

const piece = (region: Region, z0 = 0): Body => ({
  id: `piece ${z0}`,
  of: 'sled',
  name: 'sled',
  shape: { kind: 'outline', region, z0: exact(z0), z1: exact(z0 + 10) },
})
const hole = (r: number, c: Point): Body => ({
  id: 'bore',
  of: 'tube',
  name: 'bore',
  shape: { kind: 'bore', x: exact(c.x), y: exact(c.y), r0: exact(r), r1: exact(r), z0: exact(-20), z1: exact(80) },
})

/** How far regions get one way until one of them meets the bore: by halving. */
function farOneWay(regions: readonly Region[], r: number, c: Point, theta: number): number {
  const u = polar(1, theta)
  const fits = (t: number): boolean => {
    const from = { x: c.x - t * u.x, y: c.y - t * u.y }
    return regions.every((region) => {
      const far = farthest(region, from)
      return Math.hypot(far.x - from.x, far.y - from.y) <= r
    })
  }
  let [free, stopped] = [0, 30]
  for (let n = 0; n < 40; n++) {
    const middle = (free + stopped) / 2
    if (fits(middle)) free = middle
    else stopped = middle
  }
  return free
}

const notches = fc.array(fc.record({ theta: evenly(0, 360), half: evenly(0.5, 4) }), { maxLength: 3 })

describe('the room of a sled in its bores', () => {
  it(`is never less than it gets any way, and what is sure is never more (seed ${seed})`, () => {
    fc.assert(
      fc.property(
        fc.array(notches, { minLength: 1, maxLength: 3 }),
        evenly(0.05, 1),
        evenly(0, 0.5),
        evenly(0, 360),
        evenly(0, 360),
        (pieces, play, off, at, way) => {
          const regions = pieces.map(notched)
          const c = polar(off, at)
          const room = roomAside(
            regions.map((r, i) => piece(r, 20 * i)),
            [hole(10 + off + play, c)],
          )
          const ways = [way, at, ...pieces.flat().map((n) => n.theta)]
          const found = ways.map((theta) => farOneWay(regions, 10 + off + play, c, theta))
          for (const far of found) {
            expect(far).toBeLessThanOrEqual((room?.most ?? 0) + 1e-6)
            expect(far).toBeGreaterThanOrEqual((room?.sure ?? 0) - 1e-6)
          }
        },
      ),
      { seed, numRuns: 300 },
    )
  })

  it('is exact for a round piece in a round bore: R − r, and e more on the wide side of a bore that lies aside', () => {
    expect(roomAside([piece(notched([]))], [hole(10.4, { x: 0, y: 0 })])).toEqual({
      sure: expect.closeTo(0.4, 9),
      most: expect.closeTo(0.4, 9),
    })
    const aside = roomAside([piece(notched([]))], [hole(10.4, { x: 0.3, y: 0 })])
    expect(aside).toEqual({ sure: expect.closeTo(0.1, 9), most: expect.closeTo(0.7, 9) })
  })

  it('grows by little for a channel, by much for half a piece, and a whole piece elsewhere stops both', () => {
    const bores = [hole(10.4, { x: 0, y: 0 })]
    const channel = piece(notched([{ theta: 40, half: 1.7 }]))
    const half = piece(carve(disc({ x: 0, y: 0 }, 10), [rectangle({ x: 10, y: 0 }, 11, 10, 0)]))
    expect(roomAside([channel], bores)?.most).toBeCloseTo(0.406, 3)
    // Its two corners meet the wall: the square root of 10.4² − 10².
    expect(roomAside([half], bores)?.most).toBeCloseTo(Math.sqrt(10.4 ** 2 - 10 ** 2), 6)
    expect(roomAside([half, piece(notched([]), 20)], bores)?.most).toBeCloseTo(0.4, 9)
  })

  it('is told by the round of a piece with a key along all of it, which rides in a slot', () => {
    const keyed = piece(join([disc({ x: 0, y: 0 }, 10), rectangle({ x: 10.5, y: 0 }, 1, 1.5, 0)]))
    const slot = { theta: 0, halfWidth: exact(1.2), floor: exact(13), reach: 13 }
    const whole = hole(10.4, { x: 0, y: 0 })
    const slotted = { ...whole, shape: { ...whole.shape, openings: [slot] } } as Body
    expect(roomAside([keyed], [slotted])?.most).toBeGreaterThan(0.4)
    expect(roomAside([keyed], [slotted])?.most).toBeLessThan(0.45)
  })
})

describe('a sled that floats in a bore', () => {
  const worst = (section: object, shape: object) =>
    findingOf(
      job({
        sections: [{ ...bore({ diameter: sure(20.8) }), ...section }],
        sleds: [
          {
            id: 'main',
            from: 10,
            to: 60,
            bodies: [
              { from: 10, to: 40, diameter: sure(20) },
              { from: 40, to: 60, diameter: sure(18) },
            ],
          },
        ] as never,
        insertions: [
          { id: 'in', moves: 'sleds/main', through: { of: 'sections/tube', end: 'rear' }, lateral: 'floats' },
        ],
        features: [pin(shape)],
      }),
      'clearance:sleds/main:stripped',
    ).margin.worst

  it('comes nearer to a pin by the room it has', () => {
    // The wide piece stops it after 0.4; the pin's tip lies 0.6 from the narrow one.
    expect(worst({}, { tip: sure(9.6) })).toBeCloseTo(0.6 - 0.4 - 0.15, 6)
  })

  it('comes nearer by what a bore beside the axis adds on its wide side', () => {
    const eccentricity = { offset: sure(0.2), theta: sure(0) }
    expect(worst({ eccentricity }, { tip: sure(9.6) })).toBeCloseTo(0.6 - 0.6 - 0.15, 6)
  })
})
