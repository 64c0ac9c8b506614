import { describe, expect, it } from 'vitest'
import { breakLine } from '../../../src/app/drawing/break-line.ts'
import { frameOf, pathOf } from '../../../src/app/drawing/frame.ts'
import { placeGaps } from '../../../src/app/drawing/gap-labels.ts'
import { outlinePath } from '../../../src/app/drawing/outline-path.ts'
import { marginScale } from '../../../src/app/findings/margin-bar.tsx'
import { fixed, percent, signed } from '../../../src/app/sheet/numbers.ts'

const margin = { left: 50, right: 10, top: 30, bottom: 40 }

describe('the frame of a drawing', () => {
  it('has one scale for both directions, and fits the room', () => {
    const f = frameOf({ z0: 0, z1: 180, reach: 20, width: 960, margin, tallest: 400, leastScale: 2 })
    expect(f.scale).toBe(5)
    expect(f.x(180) - f.x(0)).toBe(900)
    expect(f.y(-20) - f.y(20)).toBe(200)
    expect(f.z(f.x(37.5))).toBeCloseTo(37.5, 9)
  })

  it('is held by its height on a wide sheet, and scrolls rather than shrink on a narrow one', () => {
    const ask = { z0: 0, z1: 100, reach: 20, margin, tallest: 240, leastScale: 2.5 }
    expect(frameOf({ ...ask, width: 2000 }).scale).toBe(6)
    expect(frameOf({ ...ask, width: 200 })).toMatchObject({ scale: 2.5, width: 310 })
  })

  it('draws paths in pixels', () => {
    const f = frameOf({ z0: 0, z1: 100, reach: 20, width: 260, margin, tallest: 400, leastScale: 1 })
    expect(
      pathOf(
        [
          [0, 0],
          [10, 5],
        ],
        f,
        true,
      ),
    ).toBe('M50 70L70 60Z')
    const line = [
      [0, 20],
      [100, 20],
    ] as const
    expect(breakLine(line, f)).toBe(breakLine(line, f))
    expect(breakLine(line, f).endsWith('250 30')).toBe(true)
  })
})

describe('the cross-section on the sheet', () => {
  it('has θ = 0 up and θ = 90° to the right, and turns clockwise', () => {
    const quarter = { x: 10, y: 0, steps: [{ x: 0, y: 10, r: 10, large: false, forward: true }], closed: false }
    expect(outlinePath(quarter, { scale: 2, cx: 100, cy: 100 })).toBe('M100 80A20 20 0 0 1 120 100')
  })

  it('writes the numbers of gaps beside it, none over another', () => {
    const gaps = Array.from({ length: 6 }, (_, i) => ({
      a: `${i}`,
      b: 'bore',
      ids: [`${i}`, 'bore'] as const,
      p: { x: 9 + i / 100, y: 3 },
      q: { x: 9.4 + i / 100, y: 3.1 },
      gap: 0.4,
      limit: 0.15,
      passing: false,
      tightest: i === 0,
    }))
    const placed = placeGaps(gaps, { scale: 10, cx: 150, cy: 150 }, 120)
    const ys = placed.map((g) => g.label[1]).toSorted((a, b) => a - b)
    for (const [i, y] of ys.entries()) if (i > 0) expect(y - (ys[i - 1] as number)).toBeGreaterThanOrEqual(19)
    expect(placed.every((g) => g.side === 'right' && g.label[0] > 150 + 120)).toBe(true)
  })
})

describe('numbers on the page', () => {
  it('have a true minus, a sign where it tells something, and no negative nothing', () => {
    expect([fixed(-1.256), fixed(-0.001), fixed(12, 1)]).toEqual(['−1.26', '0.00', '12.0'])
    expect([signed(0.02), signed(-0.3), signed(-0.0001)]).toEqual(['+0.02', '−0.30', '+0.00'])
  })

  it('never round a chance to certainty', () => {
    expect([percent(0.004), percent(0.386), percent(0.996), percent(1)]).toEqual([
      'under 1 %',
      '39 %',
      'over 99 %',
      '100 %',
    ])
  })
})

describe('the scale of the margins', () => {
  it('always shows the limit and some room on both sides', () => {
    expect(marginScale([])).toEqual({ from: -0.5, to: 1.5 })
  })
})
