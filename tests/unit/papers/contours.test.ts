import { describe, expect, it } from 'vitest'
import { type ContourRing, contourRings } from '../../../src/papers/contours.ts'

const field = (rows: readonly (readonly number[])[]) => ({
  columns: rows[0]?.length ?? 0,
  rows: rows.length,
  at: (c: number, r: number) => rows[r]?.[c] ?? Number.NaN,
})

/** Twice the area inside a ring, by its corners. */
const doubleArea = (ring: ContourRing) =>
  Math.abs(
    ring.reduce((sum, [x, y], i) => {
      const [u, v] = ring[(i + 1) % ring.length] as readonly [number, number]
      return sum + x * v - u * y
    }, 0),
  )

describe('contour rings', () => {
  it('find one peak as a diamond, halfway to its neighbours', () => {
    const rings = contourRings(
      field([
        [0, 0, 0],
        [0, 2, 0],
        [0, 0, 0],
      ]),
      1,
    )
    expect(rings).toHaveLength(1)
    expect(rings[0]?.map(([x, y]) => [x, y]).toSorted()).toEqual([
      [0.5, 1],
      [1, 0.5],
      [1, 1.5],
      [1.5, 1],
    ])
  })

  it('close along the edge of a field that is high everywhere', () => {
    const rings = contourRings(
      field([
        [5, 5, 5, 5],
        [5, 5, 5, 5],
        [5, 5, 5, 5],
      ]),
      1,
    )
    expect(rings).toHaveLength(1)
    expect(doubleArea(rings[0] as ContourRing)).toBe(2 * 3 * 2)
    expect(rings[0]).toHaveLength(4)
  })

  it('give nothing where nothing is high', () => {
    expect(contourRings(field([[0, 0.9]]), 1)).toEqual([])
  })

  it('draw a hole as a ring of its own', () => {
    const rings = contourRings(
      field([
        [2, 2, 2, 2, 2],
        [2, 2, 2, 2, 2],
        [2, 2, 0, 2, 2],
        [2, 2, 2, 2, 2],
        [2, 2, 2, 2, 2],
      ]),
      1,
    )
    expect(rings.map(doubleArea).toSorted((a, b) => a - b)).toEqual([1, 32])
  })

  it('keep two peaks across a square apart over low ground, and join them over high ground', () => {
    const apart = contourRings(
      field([
        [2, 0],
        [0, 2],
      ]),
      1.5,
    )
    const joined = contourRings(
      field([
        [2, 0],
        [0, 2],
      ]),
      0.5,
    )
    expect([apart.length, joined.length]).toEqual([2, 1])
  })

  it('cross straight ground where the level lies, whatever the step', () => {
    const slope = { columns: 11, rows: 3, at: (c: number) => c }
    const [ring] = contourRings(slope, 3.25)
    expect(Math.min(...(ring ?? []).map(([x]) => x))).toBeCloseTo(3.25, 9)
    expect(Math.max(...(ring ?? []).map(([x]) => x))).toBe(10)
  })

  it.each(Array.from({ length: 20 }, (_, seed) => seed + 1))(
    'hold just the high points of a random field, seed %i',
    (seed) => {
      let s = seed
      const random = () => {
        s = (s * 1103515245 + 12345) % 2147483648
        return s / 2147483648
      }
      const rows = Array.from({ length: 9 }, () => Array.from({ length: 13 }, () => Math.round(4 * random()) / 4))
      const rings = contourRings(field(rows), 0.5)
      for (const [r, row] of rows.entries())
        for (const [c, v] of row.entries()) {
          const onEdge = c === 0 || r === 0 || c === 12 || r === 8
          if (!onEdge) expect([c, r, inside(rings, c, r)]).toEqual([c, r, v >= 0.5])
        }
    },
  )
})

/** Even and odd crossings of a ray that meets no corner. */
function inside(rings: readonly ContourRing[], x: number, y: number): boolean {
  const eps = 1e-5
  const crossings = rings.flatMap((ring) =>
    ring.filter(([ax, ay], i) => {
      const [bx, by] = ring[(i + 1) % ring.length] as readonly [number, number]
      if (ay > y + eps === by > y + eps) return false
      return ax + ((y + eps - ay) / (by - ay)) * (bx - ax) > x
    }),
  )
  return crossings.length % 2 === 1
}
