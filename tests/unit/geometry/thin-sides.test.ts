import { expect, it } from 'vitest'
import { disc, outside, rectangle } from '../../../geometry/region/region.ts'
import { thinSides } from '../../../geometry/region/thin-sides.ts'

const origin = { x: 0, y: 0 }
/** 30° off straight a face is still opposite, beyond it is a sharp edge. */
const c30 = Math.cos(Math.PI / 6)

it('a slot through a round outside leaves a thin side on either hand, by hand', () => {
  // Its sides lie at 10.3 from the axis of a round of 12.3 and go out through it.
  const slot = rectangle({ x: 7.5, y: 0 }, 10.3, 7.5, 0)
  const found = thinSides(slot, outside(origin, 12.3), 1.2)
  expect(found).toHaveLength(2)
  for (const s of found) {
    expect(s.thickness).toBeCloseTo(12.3 * c30 - 10.3, 1)
    // Thinner than 1.2 from √(12.3² − 11.5²) = 4.36 on, opposite up to 12.3 / 2.
    expect(s.length).toBeCloseTo(6.15 - 4.364, 0)
  }
})

it('a narrow slot leaves none: it meets the outside squarely', () => {
  expect(thinSides(rectangle({ x: 5, y: 0 }, 2, 10, 0), outside(origin, 12.3), 1.2)).toEqual([])
})

it('a round pocket that dips a little into a flat one leaves thin sides beside the dip', () => {
  const round = disc({ x: 5.9, y: 0 }, 6)
  const flat = rectangle({ x: -2, y: 0 }, 5, 2, 0)
  const found = thinSides(round, flat, 1)
  expect(found.length).toBeGreaterThan(0)
  expect(Math.min(...found.map((s) => s.thickness))).toBeLessThan(0.2)
})

it('a groove that lies on the sides of its own mouth leaves none', () => {
  const mouth = rectangle({ x: 8, y: 0 }, 2, 3, 0)
  expect(thinSides(rectangle({ x: 5, y: 0 }, 2, 3, 0), mouth, 1.2)).toEqual([])
})
