import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { plausible } from '../../../src/entry/plausible.ts'
import { suspectRatio, suspectReadings, suspectSize, suspectWall } from '../../../src/entry/suspicion.ts'

describe('a size against what is usual (ranges: common practice, no source)', () => {
  it('a depth typed in inches where millimetres are plausible is questioned, with the number that may be meant', () => {
    const p = suspectSize(5.25, plausible.depth, 'sections/body/length')
    expect(p?.code).toBe('suspicious')
    expect(p?.path).toBe('sections/body/length')
    expect(p?.hint).toContain('133.35')
  })

  it.each([
    [133.35, plausible.depth, undefined],
    [1.1, plausible.bore, '27.94'],
    [28, plausible.bore, undefined],
    [711.2, plausible.bore, '28'],
    [0.028, plausible.bore, '28'],
    [280, plausible.bore, '28'],
    [2.8, plausible.bore, '2.8cm'],
  ])('%s in its range: asks %s', (value, usual, hint) => {
    const p = suspectSize(value, usual, 'x')
    if (hint === undefined) expect(p).toBeUndefined()
    else expect(p).toMatchObject({ code: 'suspicious', hint: expect.stringContaining(hint) })
  })

  it.each([
    [0, 'out-of-range'],
    [-5, 'out-of-range'],
    [Number.NaN, 'not-a-number'],
    [Number.POSITIVE_INFINITY, 'not-a-number'],
    [1e9, 'suspicious'],
  ])('%s is %s', (value, code) => {
    expect(suspectSize(value, plausible.bore, 'x')?.code).toBe(code)
  })

  it('asks about every plausible size typed in inches, unless it is plausible so too (seed 21)', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...Object.values(plausible)),
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        (usual, share) => {
          const size = usual.min + share * (usual.max - usual.min)
          const typed = size / 25.4
          const p = suspectSize(typed, usual, 'x')
          if (typed >= usual.min) expect(p).toBeUndefined()
          else expect(p?.hint).toContain('Inches?')
          expect(suspectSize(size, usual, 'x')).toBeUndefined()
        },
      ),
      { seed: 21 },
    )
  })
})

describe('a value beside its sibling', () => {
  it('a ratio of 25.4 either way is questioned, and says which may be in inches', () => {
    expect(suspectRatio(0.985, 25.02, 'b', 'the other reading')?.hint).toContain('this may be in inches')
    expect(suspectRatio(25.02, 0.985, 'b', 'the other reading')?.hint).toContain('the other reading may be in inches')
    expect(suspectRatio(25, 25.1, 'b', 'x')).toBeUndefined()
    expect(suspectRatio(1, 10, 'b', 'x')).toBeUndefined()
    expect(suspectRatio(0, 25, 'b', 'x')).toBeUndefined()
  })

  it('among readings, finds the one in inches and the one with a slipped digit', () => {
    const found = suspectReadings([25.02, 25.03, 0.985, 25.01, 52.02], 'bore/readings')
    expect(found.map((p) => p.path)).toEqual(['bore/readings/2/value', 'bore/readings/4/value'])
    expect(found[0]?.hint).toContain('25.4')
    expect(suspectReadings([25.02, 25.4, 25.3], 'r')).toEqual([])
    expect(suspectReadings([25], 'r')).toEqual([])
    expect(suspectReadings([], 'r')).toEqual([])
  })
})

describe('a bore in its tube', () => {
  it.each([
    [28, 32, undefined],
    [28, 28.6, undefined],
    [28, 28.5, 'suspicious'],
    [28, 28, 'contradiction'],
    [32, 28, 'contradiction'],
    [28, 1.25, 'contradiction'],
    [1.1, 32, 'suspicious'],
  ])('bore %s in %s: %s', (bore, outside, code) => {
    expect(suspectWall(bore, outside, 'x')?.code).toBe(code)
  })

  it('says which may be in inches, and which are swapped', () => {
    expect(suspectWall(28, 1.25, 'x')?.hint).toContain('1.25in')
    expect(suspectWall(32, 28, 'x')?.hint).toContain('swapped')
    expect(suspectWall(1.1, 32, 'x')?.hint).toContain('1.1in')
  })

  it('takes the thinnest wall as an argument', () => {
    expect(suspectWall(28, 28.5, 'x', 0.2)).toBeUndefined()
    expect(suspectWall(28, 30, 'x', 1.5)?.limit).toContain('1.5')
  })
})
