import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { labelled, shown, wrap } from '../../../src/cli/columns.ts'
import { left, percent, plain, tenths } from '../../../src/cli/numbers.ts'
import { paint } from '../../../src/cli/paint.ts'

describe('numbers as a person reads them', () => {
  it.each([
    [0, '0.00'],
    [1.236, '1.24'],
    [-0.666, '−0.67'],
    [0.004, '0.004'],
    [-0.004, '−0.004'],
    [-0.0000004, '−0.001'],
    [-1e-12, '0.00'],
    [Number.POSITIVE_INFINITY, '∞'],
    [Number.NEGATIVE_INFINITY, '−∞'],
  ])('what is left: %s is %s', (n, text) => {
    expect(left(n)).toBe(text)
  })

  it('what is lacking never reads as nothing, and what is there never as lacking (seed 71)', () => {
    fc.assert(
      fc.property(fc.double({ min: -100, max: 100, noNaN: true }), (n) => {
        const text = left(n)
        if (n < -1e-9) expect(text).toMatch(/^−.*[1-9]/)
        if (n >= 0) expect(text).not.toContain('−')
        expect(Math.abs(Number(text.replace('−', '-')) - n)).toBeLessThanOrEqual(0.00501)
      }),
      { seed: 71 },
    )
  })

  it('a unit other than mm stands with the number', () => expect(left(-2, '°')).toBe('−2.00°'))
  it('a count has neither unit nor hundredths', () => expect([left(-2, ''), left(1, '')]).toEqual(['−2', '1']))

  it.each([
    [plain(12), '12'],
    [plain(-7.5), '−7.5'],
    [plain(1 / 3), '0.3333'],
    [plain(-0.00001), '0'],
    [tenths(59), '59.0'],
    [tenths(-0.04), '0.0'],
    [tenths(-3.26), '−3.3'],
    [percent(0), '0 %'],
    [percent(0.001), 'under 1 %'],
    [percent(0.999), 'over 99 %'],
    [percent(1), '100 %'],
    [percent(0.755), '76 %'],
  ])('%s is %s', (text, expected) => expect(text).toBe(expected))
})

describe('lines', () => {
  it('keep every word, in order, and never pass the width (seed 72)', () => {
    const word = fc.string({ minLength: 1, maxLength: 30 }).filter((w) => !/[\s\p{Cc}]/u.test(w))
    fc.assert(
      fc.property(fc.array(word, { maxLength: 30 }), fc.integer({ min: 8, max: 100 }), (words, width) => {
        const lines = wrap(words.join(' '), width)
        for (const line of lines) expect(line.length).toBeLessThanOrEqual(width)
        expect(lines.join('').replaceAll(' ', '')).toBe(words.join(''))
      }),
      { seed: 72 },
    )
  })

  it('hang under their label', () => {
    expect(labelled('why', 'one two three', 2, 5, 16)).toEqual(['  why  one two', '       three'])
  })

  it('show no control character, no line break, nothing that turns the writing round', () => {
    expect(shown('a\u001b[31mb\r\nc\td\u0000\u009b\u202e')).toBe('a?[31mb c d???')
  })
})

it('colour adds to the word and never stands for it', () => {
  expect(paint('CLASH', 'clash', false)).toBe('CLASH')
  expect(paint('CLASH', 'clash', true)).toBe('\u001b[1;31mCLASH\u001b[0m')
})
