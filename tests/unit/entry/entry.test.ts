import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseAngle, parseLength, parsePitch } from '../../../src/entry/entry.ts'
import type { Outcome } from '../../../src/problem/problem.ts'

/** The inch is 25.4 mm by definition (international yard agreement of 1959); all values here are computed from it. */

type Read = { value: number; plus?: number; minus?: number; unit: string }

function read(outcome: Outcome<Read & { text: string }>, typed: string): Read {
  if (!outcome.ok) throw new Error(`${typed}: ${JSON.stringify(outcome.problems)}`)
  const { text, ...rest } = outcome.value
  expect(text).toBe(typed)
  return rest
}

const mm = (value: number): Read => ({ value, unit: 'mm' })
const inches = (value: number): Read => ({ value, unit: 'in' })
const spread = (value: number, plus: number, minus: number, unit = 'mm'): Read => ({ value, plus, minus, unit })

const lengths: readonly (readonly [string, Read])[] = [
  ['25.4', mm(25.4)],
  ['25,4', mm(25.4)],
  ['25,400', mm(25.4)],
  [' 25.4 ', mm(25.4)],
  ['25.', mm(25)],
  ['.5', mm(0.5)],
  [',5', mm(0.5)],
  ['0', mm(0)],
  ['-3', mm(-3)],
  ['−3.5', mm(-3.5)],
  ['+3', mm(3)],
  ['25.4 mm', mm(25.4)],
  ['25.4MM', mm(25.4)],
  ['2.5cm', { value: 25, unit: 'cm' }],
  ['0,9 m', { value: 900, unit: 'm' }],
  ['Ø25.4', mm(25.4)],
  ['ø 25,4 mm', mm(25.4)],
  ['⌀25.4', mm(25.4)],
  ['1in', inches(25.4)],
  ['1 in.', inches(25.4)],
  ['1"', inches(25.4)],
  ['1″', inches(25.4)],
  ["1''", inches(25.4)],
  ['1.5 inches', inches(38.1)],
  ['1 1/2"', inches(38.1)],
  ['1-1/2"', inches(38.1)],
  ['1½"', inches(38.1)],
  ['1 ½ in', inches(38.1)],
  ['½"', inches(12.7)],
  ['¾in', inches(19.05)],
  ['5 1/4 in', inches(133.35)],
  ['1/4 in', inches(6.35)],
  ['1⁄4 in', inches(6.35)],
  ['-1/4 in', inches(-6.35)],
  ['1/2 mm', mm(0.5)],
  ['25.4 ±0.05', spread(25.4, 0.05, 0.05)],
  ['25.4±0,05mm', spread(25.4, 0.05, 0.05)],
  ['25.4 +/- 0.05', spread(25.4, 0.05, 0.05)],
  ['25.4 +-0.05', spread(25.4, 0.05, 0.05)],
  ['25.4 +0.1 -0.05', spread(25.4, 0.1, 0.05)],
  ['25.4 +0.1/-0.05', spread(25.4, 0.1, 0.05)],
  ['25.4 -0.05 +0.1', spread(25.4, 0.1, 0.05)],
  ['25.4 +0.021 0', spread(25.4, 0.021, 0)],
  ['25.4 +0.1', spread(25.4, 0.1, 0)],
  ['25.4 -0.05', spread(25.4, 0, 0.05)],
  ['25.4 −0,05', spread(25.4, 0, 0.05)],
  ['-3 ±0.1', spread(-3, 0.1, 0.1)],
  ['1in ±0.002', spread(25.4, 0.0508, 0.0508, 'in')],
  ['1in ±0.05mm', spread(25.4, 0.05, 0.05, 'in')],
  ['1 in ±0.002 in', spread(25.4, 0.0508, 0.0508, 'in')],
  ['25.4..25.6', spread(25.5, 0.1, 0.1)],
  ['25.4 ... 25.6', spread(25.5, 0.1, 0.1)],
  ['25.4…25.6', spread(25.5, 0.1, 0.1)],
  ['25,4 to 25,6', spread(25.5, 0.1, 0.1)],
  ['25.4–25.6 mm', spread(25.5, 0.1, 0.1)],
  ['1..1.5 in', spread(31.75, 6.35, 6.35, 'in')],
  ['-1..1', spread(0, 1, 1)],
]

describe('a length as typed', () => {
  it.each(lengths)('%s', (typed, expected) => {
    expect(read(parseLength(typed), typed)).toEqual(expected)
  })
})

const refusals: readonly (readonly [string, string])[] = [
  ['', 'missing'],
  ['   ', 'missing'],
  ['Ø', 'missing'],
  ['abc', 'not-a-number'],
  ['mm', 'not-a-number'],
  ['--5', 'not-a-number'],
  ['+-5', 'not-a-number'],
  ['5-', 'not-a-number'],
  ['25.4.1', 'not-a-number'],
  ['1,234.5', 'not-a-number'],
  ['1.234,5', 'not-a-number'],
  ['25-4', 'not-a-number'],
  ['25.4-25.6', 'not-a-number'],
  ['25.4 - 25.6', 'not-a-number'],
  ['1 5/4"', 'not-a-number'],
  ['1/0"', 'not-a-number'],
  ['1//2"', 'not-a-number'],
  ['1 -1/2"', 'not-a-number'],
  ['NaN', 'not-a-number'],
  ['Infinity', 'not-a-number'],
  ['-Infinity', 'not-a-number'],
  ['∞', 'not-a-number'],
  ['1e999', 'not-a-number'],
  ['1e3', 'not-a-number'],
  ['1E-3 mm', 'not-a-number'],
  ['0x19', 'unknown-unit'],
  ['25.4 ± -0.05', 'not-a-number'],
  ['25.4 ±', 'not-a-number'],
  ['± 0.05', 'not-a-number'],
  ['25.4 +0.1 +0.05', 'not-a-number'],
  ['25.4..', 'not-a-number'],
  ['25..26..27', 'not-a-number'],
  ['25.4 ±0.05 ±0.1', 'not-a-number'],
  ['[object Object]', 'not-a-number'],
  ['__proto__', 'not-a-number'],
  ['<b>25</b>', 'not-a-number'],
  ['25.4\u0000', 'unknown-unit'],
  ['1'.repeat(64), 'not-a-number'],
  ['9'.repeat(100_000), 'not-a-number'],
  [' '.repeat(100_000), 'not-a-number'],
  ['25.4 furlongs', 'unknown-unit'],
  ['25.4 mm mm', 'unknown-unit'],
  ["1'", 'unknown-unit'],
  ['45°', 'unknown-unit'],
  ['32 TPI', 'unknown-unit'],
  ['1 1/2', 'unknown-unit'],
  ['½', 'unknown-unit'],
  ['25.4 ±0.002in', 'unknown-unit'],
  ['25.6..25.4', 'contradiction'],
  ['999999999', 'out-of-range'],
  ['10001', 'out-of-range'],
  ['-10001', 'out-of-range'],
]

describe('what is refused, as a problem with path, value, limit and hint', () => {
  it.each(refusals)('%s: %s', (typed, code) => {
    const outcome = parseLength(typed, 'sections/body/length')
    if (outcome.ok) throw new Error(`read as ${JSON.stringify(outcome.value)}`)
    const [p] = outcome.problems
    expect(p?.code).toBe(code)
    expect(p?.path).toBe('sections/body/length')
    expect(p?.got.length).toBeLessThanOrEqual(60)
    expect(p?.limit).not.toBe('')
    expect(p?.hint).not.toBe('')
  })

  it('says what a dash between numbers may have meant', () => {
    const outcome = parseLength('25.4-25.6')
    expect(!outcome.ok && outcome.problems[0]?.hint).toContain('25.4..25.6')
  })

  it('offers two numbers as a range of these two', () => {
    for (const typed of ['30.0 30.1', '30.0-30.1', '30.0 - 30.1']) {
      const outcome = parseLength(typed)
      expect(!outcome.ok && outcome.problems[0]?.hint).toContain('30.0..30.1')
    }
  })

  it('never throws and never gives a number that is none, whatever is typed (seed 11)', () => {
    const bits = ['1', '25', '.', ',', '/', '-', '+', '±', ' ', 'in', '"', 'mm', '..', 'e9', '½', 'Ø', 'TPI', '°', '0']
    const typed = fc.oneof(
      fc.string({ unit: 'grapheme' }),
      fc.array(fc.constantFrom(...bits)).map((b) => b.join('')),
    )
    fc.assert(
      fc.property(typed, (text) => {
        for (const parse of [parseLength, parsePitch, parseAngle]) {
          const outcome = parse(text)
          if (!outcome.ok) {
            expect(outcome.problems).toHaveLength(1)
            continue
          }
          const { value, plus = 0, minus = 0 } = outcome.value
          expect([value, plus, minus].every(Number.isFinite)).toBe(true)
          expect(Math.min(plus, minus)).toBeGreaterThanOrEqual(0)
        }
      }),
      { seed: 11, numRuns: 3000 },
    )
  })

  it('takes a hostile text in time that does not grow with it', () => {
    // Longer than what is read at all; the expressions never see it.
    for (const text of [`1${' '.repeat(200_000)}1`, '1/'.repeat(100_000), '+'.repeat(200_000)]) {
      expect(parseLength(text).ok).toBe(false)
    }
  })
})

describe('round trips', () => {
  it('reads back every millimetre it could have shown, with point or comma (seed 12)', () => {
    fc.assert(
      fc.property(fc.integer({ min: -9_999_999, max: 9_999_999 }), (thousandths) => {
        const text = (thousandths / 1000).toFixed(3)
        for (const typed of [text, text.replace('.', ',')])
          expect(read(parseLength(typed), typed)).toEqual(mm(Number(text)))
      }),
      { seed: 12 },
    )
  })

  it('mixed inch fractions are whole plus fraction, in every spelling (seed 13)', () => {
    const eighths = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞']
    fc.assert(
      fc.property(fc.nat(40), fc.integer({ min: 1, max: 7 }), (whole, n) => {
        for (const typed of [`${whole} ${n}/8"`, `${whole}-${n}/8 in`, `${whole}${eighths[n]}"`]) {
          expect(read(parseLength(typed), typed).value).toBeCloseTo((whole + n / 8) * 25.4, 8)
        }
      }),
      { seed: 13 },
    )
  })
})

describe('a pitch as typed', () => {
  const pitches: readonly (readonly [string, Read])[] = [
    ['1.5', mm(1.5)],
    ['1,5 mm', mm(1.5)],
    ['20 TPI', { value: 1.27, unit: 'TPI' }],
    ['20tpi', { value: 1.27, unit: 'TPI' }],
    ['18 threads per inch', { value: 1.411111111, unit: 'TPI' }],
    ['32 TPI', { value: 0.79375, unit: 'TPI' }],
    ['1/20 in', inches(1.27)],
  ]
  it.each(pitches)('%s', (typed, expected) => {
    expect(read(parsePitch(typed), typed)).toEqual(expected)
  })
  it.each([
    ['0 TPI', 'out-of-range'],
    ['-20 TPI', 'out-of-range'],
    ['20 TPI ±1', 'not-a-number'],
  ])('%s: %s', (typed, code) => {
    const outcome = parsePitch(typed)
    expect(!outcome.ok && outcome.problems[0]?.code).toBe(code)
  })
})

describe('an angle as typed', () => {
  const angles: readonly (readonly [string, Read])[] = [
    ['45', { value: 45, unit: '°' }],
    ['45°', { value: 45, unit: '°' }],
    ['45 deg', { value: 45, unit: '°' }],
    ['-90', { value: -90, unit: '°' }],
    ['22,5 degrees', { value: 22.5, unit: '°' }],
    ['45° ±2', spread(45, 2, 2, '°')],
    ['30..60', spread(45, 15, 15, '°')],
  ]
  it.each(angles)('%s', (typed, expected) => {
    expect(read(parseAngle(typed), typed)).toEqual(expected)
  })
  it.each(["45°30'", '1 rad', '45 mm', '1e9', '99999'])('%s is refused', (typed) => {
    expect(parseAngle(typed).ok).toBe(false)
  })
})
