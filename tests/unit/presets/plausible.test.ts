import { describe, expect, it } from 'vitest'
import { bounds } from '../../../src/presets/bounds.ts'
import { loadPresets } from '../../../src/presets/presets.ts'

const presets = loadPresets()
const parts = (['cell', 'contact', 'speaker', 'board', 'switch', 'port', 'connector'] as const).flatMap((kind) => [
  ...presets.ofKind(kind),
])

describe('sizes a bench would believe', () => {
  it.each(parts.map((p) => [p.id, p] as const))('%s', (_, { body }) => {
    if (body.shape === 'outline') {
      const x = body.outline.map((corner) => corner[1])
      const z = body.outline.map((corner) => corner[0])
      const width = Math.max(...x) - Math.min(...x)
      const length = Math.max(...z)
      // Boards of the trade: 16–20 × 28–55 × 4.5–10 over the components (from memory).
      expect(Math.min(...z)).toBe(0)
      expect(Math.max(...x) + Math.min(...x)).toBe(0)
      expect(width).toBeGreaterThanOrEqual(16)
      expect(width).toBeLessThanOrEqual(20)
      expect(length).toBeGreaterThanOrEqual(28)
      expect(length).toBeLessThanOrEqual(55)
      const tallest = (side: string) =>
        Math.max(
          ...body.components
            .filter((c) => c.side === side)
            .map((c) => (typeof c.height === 'number' ? c.height : bounds(c.height).max)),
        )
      const total = bounds(body.thickness).max + tallest('top') + tallest('bottom')
      expect(total).toBeGreaterThanOrEqual(4.5)
      expect(total).toBeLessThanOrEqual(10)
      return
    }
    const sizes = body.shape === 'cylinder' ? [body.diameter, body.length] : [body.width, body.height, body.length]
    for (const size of sizes) {
      const { min, nominal, max } = bounds(size)
      expect(min).toBeGreaterThan(0)
      expect(nominal).toBeGreaterThanOrEqual(min)
      expect(max).toBeGreaterThanOrEqual(nominal)
      // Nothing that goes into a hilt is longer than a protected 21700 cell.
      expect(max).toBeLessThanOrEqual(77)
    }
  })

  it('a contact is shorter the more it is pressed, in every one of its kind', () => {
    for (const c of presets.ofKind('contact')) {
      expect(bounds(c.solid).max).toBeLessThanOrEqual(c.working.min)
      expect(c.working.min).toBeLessThan(c.working.max)
      expect(c.working.max).toBeLessThanOrEqual(bounds(c.free).min)
      if (c.body.shape !== 'outline') expect(bounds(c.body.length)).toMatchObject(c.working)
    }
  })

  it('a button top and a protection board make a cell longer and never thinner', () => {
    for (const c of presets.ofKind('cell')) {
      const flat = presets.ofKind('cell').find((f) => f.size === c.size && f.terminal === 'flat' && !f.protected)
      if (c === flat) continue
      if (flat?.body.shape !== 'cylinder' || c.body.shape !== 'cylinder')
        throw new Error(`${c.id} has no flat cell beside it`)
      expect(bounds(c.body.length).min).toBeGreaterThan(bounds(flat.body.length).min)
      expect(bounds(c.body.length).max).toBeGreaterThan(bounds(flat.body.length).max)
      expect(bounds(c.body.diameter).max).toBeGreaterThanOrEqual(bounds(flat.body.diameter).max)
    }
  })
})
