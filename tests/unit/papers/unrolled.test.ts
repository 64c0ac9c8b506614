import { describe, expect, it } from 'vitest'
import { gapStripView } from '../../../src/papers/gap-strip.ts'
import { readoutAt } from '../../../src/papers/readout.ts'
import { radiiAt, unrolledView } from '../../../src/papers/unrolled.ts'
import { answerTo, demo } from '../job/demo-answer.ts'

const ferry = answerTo(demo('ferry-lantern')).assembly
const map = unrolledView(ferry)

describe('the unrolled map', () => {
  it('knows the free bore and the sled at a place', () => {
    // Readings 30.05, 30.02 and 30.04 at 60° fix the ellipse: least diameter 30.0367 − √(⅔ · 0.000467) = 30.0190.
    const here = radiiAt(map.table, 140.5, 270)
    expect(here?.free).toBeCloseTo(15.0095, 4)
    expect(here?.freeBy).toBe('body bore')
    expect(here?.filled).toBeLessThan(15.0095)
    expect(radiiAt(map.table, -30, 0)).toBeUndefined()
  })

  it('shows the key slot as room', () => {
    const [inSlot, beside] = [radiiAt(map.table, 80.5, 180), radiiAt(map.table, 80.5, 240)]
    expect((inSlot?.free ?? 0) - (beside?.free ?? 0)).toBeCloseTo(1.6, 1)
  })

  it('draws everything that is in, through or over the wall, half as wide as it is', () => {
    expect(map.marks.map((m) => [m.id, m.kind, m.form])).toEqual([
      ['sleeves/grip', 'sleeve', 'block'],
      ['features/slot', 'slot', 'block'],
      ['features/rivet', 'intrusion', 'round'],
      ['screws/retention', 'screw', 'round'],
      ['parts/switch', 'part', 'round'],
    ])
    const rivet = map.marks.find((m) => m.id === 'features/rivet')
    // 4 mm across on an outside of radius 19: asin(2 / 19) = 6.04°.
    expect(rivet).toMatchObject({ z: 150, theta: 90, halfZ: 2, halfTheta: expect.closeTo(6.04, 2) })
    expect(map.marks.find((m) => m.kind === 'sleeve')).toMatchObject({ z: 148, halfZ: 44, halfTheta: 180 })
  })

  it('has a seam where each section begins', () => {
    expect(map.seams.map((s) => [s.z, s.name])).toEqual([
      [32, 'rear tube'],
      [102, 'body'],
      [198, 'neck'],
      [228, 'emitter'],
    ])
  })

  it('does not take a switch that stands in its window for an overlap', () => {
    expect(map.overlap).toEqual([])
    const pin = ferry.intrusions.find((i) => i.body.id === 'features/rivet')
    if (pin?.body.shape.kind !== 'pin') throw new Error('the rivet is a pin')
    const far = { ...pin.body, shape: { ...pin.body.shape, rIn: { nominal: 6, terms: [] } } }
    const deeper = { ...ferry, intrusions: ferry.intrusions.map((i) => (i === pin ? { ...i, body: far } : i)) }
    expect(unrolledView(deeper).overlap.length).toBeGreaterThan(0)
  })

  it('goes on over 0°: contours meet where it is cut', () => {
    for (const { rings } of map.bands)
      for (const ring of rings)
        for (const [, theta] of ring) {
          expect(theta).toBeGreaterThanOrEqual(-2)
          expect(theta).toBeLessThanOrEqual(362)
        }
  })

  it('is read at the cursor together with the gap strip', () => {
    const at = readoutAt(gapStripView(ferry), map, 140.2, 270)
    expect(at.cell).toMatchObject({ z0: expect.any(Number), between: ['sled', 'body bore'] })
    expect(at.wide).toBeUndefined()
    expect(readoutAt(gapStripView(ferry), map, 250, 0).cell).toBeUndefined()
  })
})
