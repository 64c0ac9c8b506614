import { describe, expect, it } from 'vitest'
import { disc, outside, rectangle } from '../../../geometry/region/region.ts'
import { shadow, spansOnLine } from '../../../src/papers/plane-line.ts'

describe('a cross-section seen on the cutting plane', () => {
  it('a disc beside the axis is met on its chord', () => {
    // Circle of radius 5 about (3, 4): the line towards θ = 0 passes it at distance 4, so its half chord is 3.
    const [chord] = spansOnLine(disc({ x: 3, y: 4 }, 5), 0)
    expect(chord?.[0]).toBeCloseTo(0, 9)
    expect(chord?.[1]).toBeCloseTo(6, 9)
  })

  it('seen from the other side the same disc is upside down', () => {
    const d = disc({ x: 7, y: 1 }, 2)
    const [[a, b] = [0, 0]] = spansOnLine(d, 20)
    const [[c, e] = [0, 0]] = spansOnLine(d, 200)
    expect([-e, -c]).toEqual([expect.closeTo(a, 9), expect.closeTo(b, 9)])
  })

  it('a plane that misses a disc meets nothing, and its shadow still tells where it is', () => {
    const d = disc({ x: 0, y: 10 }, 2)
    expect(spansOnLine(d, 0)).toEqual([])
    expect(shadow(d, 0)).toEqual([expect.closeTo(-2, 9), expect.closeTo(2, 9)])
    expect(shadow(d, 90)).toEqual([expect.closeTo(8, 9), expect.closeTo(12, 9)])
  })

  it('a board facing θ is met over its thickness, and casts its width as a shadow a quarter turn on', () => {
    const board = rectangle({ x: 6, y: 0 }, 9, 1, 0)
    expect(spansOnLine(board, 0)).toEqual([[expect.closeTo(5, 9), expect.closeTo(7, 9)]])
    expect(shadow(board, 90)).toEqual([expect.closeTo(-9, 9), expect.closeTo(9, 9)])
  })

  it('the metal around a bore is met above and below it and casts no shadow', () => {
    const metal = outside({ x: 0, y: 0 }, 15)
    expect(spansOnLine(metal, 33).map(([a, b]) => Math.min(Math.abs(a), Math.abs(b)))).toEqual([
      expect.closeTo(15, 9),
      expect.closeTo(15, 9),
    ])
    expect(shadow(metal, 33)).toBeUndefined()
  })
})
