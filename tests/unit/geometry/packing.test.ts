import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { widestChannel } from '../../../geometry/packing/channel.ts'
import { enclosingCircle, type Round } from '../../../geometry/packing/enclosing-circle.ts'
import { boxPushedTo, pack, pushedTo } from '../../../geometry/packing/packing.ts'
import { disc, rectangle } from '../../../geometry/region/region.ts'
import { evenly } from '../../evenly.ts'

const seed = 4417
const round: fc.Arbitrary<Round> = fc.record({
  c: fc.record({ x: evenly(-10, 10), y: evenly(-10, 10) }),
  r: fc.oneof(fc.constant(0), evenly(0, 8)),
  of: fc.constant('x'),
})

describe('smallest enclosing circle', () => {
  it(`holds every disc, and nothing smaller near it does (seed ${seed})`, () => {
    fc.assert(
      fc.property(fc.array(round, { minLength: 1, maxLength: 14 }), (rounds) => {
        const e = enclosingCircle(rounds)
        const need = (x: number, y: number) => Math.max(...rounds.map((o) => Math.hypot(o.c.x - x, o.c.y - y) + o.r))
        expect(need(e.c.x, e.c.y)).toBeLessThanOrEqual(e.r + 1e-6)
        // need() is convex, so a local minimum is the minimum.
        for (let i = 0; i < 24; i++) {
          const w = (i * Math.PI) / 12
          for (const step of [1e-3, 0.05, 2])
            expect(need(e.c.x + step * Math.cos(w), e.c.y + step * Math.sin(w))).toBeGreaterThanOrEqual(e.r - 1e-6)
        }
      }),
      { seed, numRuns: 300 },
    )
  })

  // REFERENCE 8.1, bundles of equal wires: closed forms, computed (2, 2.1547, 2.4142, 2.7013, 3, 3 × d).
  it.each([
    [2, 2],
    [3, 2.1547],
    [4, 2.4142],
    [5, 2.7013],
    [6, 3],
  ])(
    '%i equal wires set on a ring so that they touch need %f × d (circle packing, closed form, computed)',
    (n, factor) => {
      const ring = 0.5 / Math.sin(Math.PI / n)
      const wires = Array.from({ length: n }, (_, i) => ({
        c: { x: ring * Math.cos((2 * Math.PI * i) / n), y: ring * Math.sin((2 * Math.PI * i) / n) },
        r: 0.5,
        of: `${i}`,
      }))
      expect(2 * enclosingCircle(wires).r).toBeCloseTo(factor, 4)
    },
  )
})

describe('packing of a cross-section', () => {
  it('solves a board over an off-centre cell: corner and cell both touch the least circle', () => {
    // Cell Ø18.6 and, 0.5 above it, a board 18 × 6. By hand: cell bottom at −9.3, board corners (9.8 + 6, ±9).
    const cell = disc({ x: 0, y: 0 }, 9.3)
    const board = rectangle({ x: 9.3 + 0.5 + 3, y: 0 }, 9, 3, 0)
    const p = pack([
      { id: 'cell', region: cell },
      { id: 'board', region: board },
    ])
    expect(p.pairs[0]?.gap).toBeCloseTo(0.5, 12)
    // |c − cell| + 9.3 = |c − corner| with c = (k, 0): (k + 9.3)² = (15.8 − k)² + 81 → k = (15.8² + 81 − 9.3²) / (2·(9.3 + 15.8))
    const k = (15.8 ** 2 + 81 - 9.3 ** 2) / (2 * (9.3 + 15.8))
    expect(p.free.r).toBeCloseTo(k + 9.3, 9)
    expect(p.onAxis.r).toBeCloseTo(Math.hypot(15.8, 9), 9)
    expect(p.onAxis.touched[0]?.of).toBe('board')
  })

  it('pushes a cell and a board against a wall until the gap is left', () => {
    expect(pushedTo(13, 9.3, 0.3)).toBeCloseTo(3.4, 12)
    const c = boxPushedTo(13, 9, 3, 0.3) as number
    expect(Math.hypot(c + 3, 9)).toBeCloseTo(12.7, 12)
    expect(boxPushedTo(9, 9.5, 3, 0.3)).toBeUndefined()
  })
})

describe('widest channel', () => {
  it('is the whole body when nothing is there, and half the crescent beside a cell pushed to the wall', () => {
    expect(widestChannel(13, []).r).toBeCloseTo(13, 2)
    const r = widestChannel(13, [disc({ x: 0, y: 3.7 }, 9.3)]).r
    expect(r).toBeCloseTo((13 - (9.3 - 3.7)) / 2, 2)
  })

  it(`never reports more room than there is (seed ${seed})`, () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(evenly(-9, 9), evenly(-9, 9), evenly(1, 6), evenly(1, 3), evenly(0, 360)), { maxLength: 5 }),
        (boxes) => {
          const taken = boxes.map(([x, y, w, h, turn]) => rectangle({ x, y }, w, h, turn))
          const ch = widestChannel(13, taken, 1)
          if (ch.r <= 0) return
          expect(Math.hypot(ch.c.x, ch.c.y) + ch.r).toBeLessThanOrEqual(12 + 1e-9)
          const p = pack([
            { id: 'ch', region: disc(ch.c, ch.r - 1e-9) },
            ...taken.map((region, i) => ({ id: `${i}`, region })),
          ])
          expect(Math.min(...p.pairs.filter((g) => g.a === 'ch').map((g) => g.gap), 0)).toBeGreaterThanOrEqual(-1e-6)
        },
      ),
      { seed, numRuns: 100 },
    )
  })
})
