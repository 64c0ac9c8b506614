import { describe, expect, it } from 'vitest'
import { gapScale } from '../../../../src/app/strips/gap-scale.ts'
import { type LayoutAsk, layoutOf, panned, zoomed } from '../../../../src/app/strips/strip-frame.ts'

const whole = { z0: 0, z1: 240 }
const ask: LayoutAsk = {
  whole,
  reach: 20,
  range: undefined,
  width: 1240,
  viewHeight: 800,
  dimensions: false,
  middle: 0,
}

describe('the layout of the strips', () => {
  it('draws the section to scale and shows all of the hilt', () => {
    const { frame, range, cropped } = layoutOf(ask)
    expect(frame.x(100) - frame.x(90)).toBeCloseTo(frame.y(5) - frame.y(15), 9)
    expect(range.z0).toBeLessThan(0)
    expect(range.z1).toBeGreaterThan(240)
    expect(cropped).toBe(false)
  })

  it('has one ruler for all strips, the strips one below the other', () => {
    const { ruler, section, gap, unrolled, height } = layoutOf(ask)
    expect(section.y).toBeGreaterThanOrEqual(ruler.height)
    expect(gap.y).toBeGreaterThanOrEqual(section.y + section.height)
    expect(unrolled.y).toBeGreaterThanOrEqual(gap.y + gap.height)
    expect(height).toBeGreaterThanOrEqual(unrolled.y + unrolled.height)
  })

  it('crops a section that is zoomed in higher than its strip, and shows the part that is asked for', () => {
    const near = { ...ask, range: { z0: 100, z1: 130 } }
    const [middle, upper] = [layoutOf(near), layoutOf({ ...near, middle: 99 })]
    expect(middle.cropped).toBe(true)
    expect(middle.section.height).toBe(upper.section.height)
    // The upper end of the section is as far down as it goes: at the top of its strip.
    expect(upper.frame.y(20)).toBeCloseTo(upper.section.y + 6, 6)
    expect(middle.frame.x(130) - middle.frame.x(100)).toBeCloseTo(1240 - 112 - 16, 6)
  })

  it('shows all of the hilt on a phone too, and nothing beyond the screen', () => {
    const phone = layoutOf({ ...ask, width: 360, viewHeight: 740 })
    expect(phone.width).toBeCloseTo(360, 6)
    expect(phone.frame.x(0)).toBeGreaterThan(phone.left)
    expect(phone.frame.x(240)).toBeLessThan(360 - 16)
    const near = layoutOf({ ...ask, width: 360, viewHeight: 740, range: { z0: 100, z1: 160 } })
    expect(near.width).toBeCloseTo(360, 6)
  })
})

describe('zoom and pan of the ruler', () => {
  it('keep the height about which one zooms where it is', () => {
    const near = zoomed(whole, whole, 2, 60)
    expect(near).toEqual({ z0: 30, z1: 150 })
    expect(zoomed(near ?? whole, whole, 1 / 4, 60)).toBeUndefined()
  })

  it('never leave the hilt, and never come nearer than a centimetre', () => {
    expect(panned({ z0: 30, z1: 90 }, whole, -100)).toEqual({ z0: 0, z1: 60 })
    expect(panned({ z0: 30, z1: 90 }, whole, 500)).toEqual({ z0: 180, z1: 240 })
    const near = zoomed({ z0: 0, z1: 20 }, whole, 50, 0)
    expect(near).toEqual({ z0: 0, z1: 10 })
  })
})

describe('the height of the gap strip', () => {
  const cell = { z0: 0, z1: 1, best: 1, way: undefined, worstTo: undefined, limit: 0.15, between: [], ids: [] }
  const strip = (nominal: number, worst: number) => ({
    limit: 0.15,
    widest: 3,
    threads: [],
    bores: [],
    seams: [],
    runs: [{ sled: 'sleds/main', name: 'sled', cells: [{ ...cell, nominal, worst }] }],
  })

  it('has room for an overlap', () => {
    expect(gapScale(strip(0.4, 0.2))).toMatchObject({ low: -0.3, high: 1 })
    expect(gapScale(strip(0.4, -1)).low).toBeLessThanOrEqual(-1)
  })

  it('has its lines at round numbers', () => {
    expect(gapScale(strip(0.4, 0.2)).marks).toEqual([0, 0.5, 1])
  })
})
