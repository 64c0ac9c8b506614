import { describe, expect, it } from 'vitest'
import { carve } from '../../../geometry/region/carve.ts'
import { disc, rectangle } from '../../../geometry/region/region.ts'
import { type Outline, outlinesOf } from '../../../src/papers/outline.ts'

/** Area inside an outline, round steps summed as circle segments. */
function area(o: Outline): number {
  let [x, y, sum] = [o.x, o.y, 0]
  for (const s of o.steps) {
    sum += (x * s.y - s.x * y) / 2
    if (s.r !== undefined) {
      const half = Math.asin(Math.min(1, Math.hypot(s.x - x, s.y - y) / 2 / s.r))
      sum += (s.forward ? 1 : -1) * s.r ** 2 * (half - Math.sin(half) * Math.cos(half))
    }
    x = s.x
    y = s.y
  }
  return Math.abs(sum)
}

describe('outlines', () => {
  it('a disc is one closed line of the right area', () => {
    const [o, ...more] = outlinesOf(disc({ x: 2, y: -1 }, 7)) as [Outline, ...Outline[]]
    expect(more).toEqual([])
    expect(o.closed).toBe(true)
    expect(area(o)).toBeCloseTo(Math.PI * 49, 6)
  })

  it('a disc with a slot to its edge is one line around both', () => {
    const slotted = carve(disc({ x: 0, y: 0 }, 10), [rectangle({ x: 10, y: 0 }, 3, 5, 0)])
    const lines = outlinesOf(slotted)
    expect(lines.map((l) => l.closed)).toEqual([true])
    // The slot is 6 wide and reaches from x = 5 to the circle: 2·∫₀³ (√(100 − y²) − 5) dy.
    const slot = 3 * Math.sqrt(91) + 100 * Math.asin(0.3) - 30
    expect(area(lines[0] as Outline)).toBeCloseTo(100 * Math.PI - slot, 6)
  })

  it('a disc with a hole is two lines', () => {
    const ring = carve(disc({ x: 0, y: 0 }, 10), [disc({ x: 3, y: 0 }, 4)])
    expect(
      outlinesOf(ring)
        .map(area)
        .toSorted((a, b) => a - b),
    ).toEqual([expect.closeTo(16 * Math.PI, 6), expect.closeTo(100 * Math.PI, 6)])
  })
})
