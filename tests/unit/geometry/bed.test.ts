import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bedGap, besideOneAnother } from '../../../geometry/mesh/bed.ts'
import { evenly } from '../../evenly.ts'

const side = evenly(1, 250)
const sizes = fc.array(fc.record({ x: side, y: side }), { minLength: 1, maxLength: 12 })

describe('bodies on the bed', () => {
  it('one lies at the gap from both near edges', () => {
    expect(besideOneAnother([{ x: 30, y: 20 }])).toEqual([{ x: bedGap, y: bedGap }])
  })

  it('four alike make a square', () => {
    const at = besideOneAnother(Array.from({ length: 4 }, () => ({ x: 28, y: 28 })))
    expect(at).toEqual([
      { x: 10, y: 10 },
      { x: 48, y: 10 },
      { x: 10, y: 48 },
      { x: 48, y: 48 },
    ])
  })

  it('none nearer than the gap to another or to an edge, and the rows in their order (seed 81)', () => {
    fc.assert(
      fc.property(sizes, (list) => {
        const at = besideOneAnother(list)
        const box = (i: number) => {
          const [p, s] = [at[i], list[i]] as [{ x: number; y: number }, { x: number; y: number }]
          return { x0: p.x, y0: p.y, x1: p.x + s.x, y1: p.y + s.y }
        }
        for (let i = 0; i < list.length; i++) {
          const a = box(i)
          expect(Math.min(a.x0, a.y0)).toBeGreaterThanOrEqual(bedGap)
          for (let k = i + 1; k < list.length; k++) {
            const b = box(k)
            const apart = Math.max(b.x0 - a.x1, a.x0 - b.x1, b.y0 - a.y1, a.y0 - b.y1)
            expect(apart).toBeGreaterThanOrEqual(bedGap - 1e-9)
            expect(b.y0 > a.y0 || b.x0 > a.x0).toBe(true)
          }
        }
      }),
      { seed: 81 },
    )
  })

  it('no row is wider than the lot laid out as a square, or than its widest body (seed 82)', () => {
    fc.assert(
      fc.property(sizes, (list) => {
        const at = besideOneAnother(list)
        const reach = Math.max(...at.map((p, i) => p.x + (list[i]?.x ?? 0)))
        const square = Math.sqrt(list.reduce((sum, s) => sum + (s.x + bedGap) * (s.y + bedGap), 0))
        expect(reach).toBeLessThanOrEqual(bedGap + Math.max(square, ...list.map((s) => s.x)) + 1e-9)
      }),
      { seed: 82 },
    )
  })
})
