import { describe, expect, it } from 'vitest'
import { gapLine } from '../../../src/app/push/gap-line.ts'
import { depthAt, push, sampleAt, stopsOf, touchAt, travelTo, wayLength } from '../../../src/app/push/pushing.ts'
import type { InsertionWay, WayTouch } from '../../../src/papers/insertion-way.ts'

const touch = (depth: number, overlap: number): WayTouch => ({
  depth,
  overlap,
  at: { z: depth, theta: 0, r: 15 },
  mover: 'sled',
  obstacle: 'neck',
  parts: ['sleds/main', 'sections/body/neck'],
})

/** In from 10 to 110; too near at 20, against something at 40 and again at 70. */
const blade: InsertionWay = {
  id: 'in:sleds/main',
  insertion: 'in',
  name: 'sled in',
  moves: 'sleds/main',
  unit: 'sleds/main',
  heading: 'blade',
  from: 10,
  to: 110,
  limit: 0.15,
  samples: [10, 20, 40, 60, 110].map((depth, i) => ({
    depth,
    gap: [Number.POSITIVE_INFINITY, 0.1, 0, -0.5, 0.3][i] as number,
    worst: [Number.POSITIVE_INFINITY, 0, -0.2, -0.7, 0.1][i] as number,
    mover: 'sled',
    obstacle: 'neck',
    at: undefined,
  })),
  touches: [touch(20, 0), touch(40, 0.5), touch(70, 0.2)],
  absent: [],
  carries: [],
}
/** The same from the other end. */
const rear: InsertionWay = { ...blade, heading: 'rear', from: 110, to: 10, touches: [touch(70, 0.2), touch(40, 0.5)] }

describe('pushing a unit in', () => {
  it('counts how far in it is, whichever way it goes', () => {
    expect([wayLength(blade), wayLength(rear)]).toEqual([100, 100])
    expect([travelTo(blade, 40), travelTo(rear, 40)]).toEqual([30, 70])
    expect([depthAt(blade, 30), depthAt(rear, 70)]).toEqual([40, 40])
  })

  it('stops at the first touch, not at what it only passes too near', () => {
    expect(push(blade, 0, 100, -1)).toMatchObject({ travel: 30, stop: { depth: 40 } })
    expect(push(rear, 0, 100, -1)).toMatchObject({ travel: 40, stop: { depth: 70 } })
    expect(stopsOf(blade).map((t) => t.depth)).toEqual([40, 70])
  })

  it('stays there, however often it is pushed, and can be drawn out', () => {
    expect(push(blade, 30, 30.5, -1)).toMatchObject({ travel: 30, stop: { depth: 40 } })
    expect(push(blade, 30, 12, -1)).toEqual({ travel: 12, stop: undefined })
    expect(touchAt(blade, 30)?.depth).toBe(40)
    expect(touchAt(blade, 29)).toBeUndefined()
  })

  it('goes past by leave, and stops at the next', () => {
    expect(push(blade, 30, 100, 30)).toMatchObject({ travel: 60, stop: { depth: 70 } })
    expect(push(blade, 60, 100, 60)).toEqual({ travel: 100, stop: undefined })
  })

  it('keeps to its way', () => {
    expect(push(blade, 0, Number.NEGATIVE_INFINITY, -1).travel).toBe(0)
    expect(push({ ...blade, touches: [] }, 0, Number.POSITIVE_INFINITY, -1).travel).toBe(100)
  })

  it('knows the tightest place nearest to a depth', () => {
    expect(sampleAt(blade, 55)?.gap).toBe(-0.5)
    expect(sampleAt({ ...blade, samples: [] }, 55)).toBeUndefined()
  })
})

describe('the line of the gap', () => {
  const line = gapLine(blade, 300, 60)

  it('is broken where there is nothing to meet, and runs the same way from both ends', () => {
    expect(line.lines).toHaveLength(1)
    expect(line.lines[0]?.split(' ')).toHaveLength(4)
    expect(line.x(travelTo(blade, 40))).toBe(90)
    expect(gapLine(rear, 300, 60).x(travelTo(rear, 40))).toBe(210)
  })

  it('has zero and limit inside, and all it draws', () => {
    for (const gap of [0, blade.limit, 5, -5]) {
      expect(line.y(gap)).toBeGreaterThanOrEqual(0)
      expect(line.y(gap)).toBeLessThanOrEqual(60)
    }
    expect(line.y(0)).toBeGreaterThan(line.y(blade.limit))
    expect(line.least).toBe(-0.7)
  })
})
