import { describe, expect, it } from 'vitest'
import { least, most, restsOnAssumed } from '../../../src/quantity/quantity.ts'
import {
  externalThread,
  freeBore,
  type Limits,
  limitsQuantity,
  threadReadingQuestion,
} from '../../../src/rules/thread.ts'
import { parseThread, type Thread } from '../../../src/rules/thread-designation.ts'

function thread(typed: string): Thread {
  const outcome = parseThread(typed)
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems))
  return outcome.value
}

function bore(typed: string, grade?: string): Limits {
  const t = thread(typed)
  const outcome = freeBore(t, grade ?? t.toleranceClass)
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems))
  return outcome.value
}

function male(typed: string, grade?: string) {
  const t = thread(typed)
  const outcome = externalThread(t, grade ?? t.toleranceClass)
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems))
  return outcome.value
}

const inches = (mm: number) => mm / 25.4

describe('minor diameters of ISO coarse threads (ISO 724; read in a tap maker’s catalogue, recomputed)', () => {
  it.each([
    ['M1.6', 1.221],
    ['M2', 1.567],
    ['M2.5', 2.013],
    ['M3', 2.459],
    ['M4', 3.242],
    ['M5', 4.134],
    ['M6', 4.917],
    ['M8', 6.647],
  ])('%s: %s', (typed, minor) => {
    expect(Math.abs(bore(typed).min - minor)).toBeLessThanOrEqual(0.001)
    expect(bore(typed).nominal).toBe(bore(typed).min)
  })

  it('fine threads of hilts: M33 × 1.5 is 31.376, M36 × 1 is 34.917 (computed)', () => {
    expect(bore('M33x1.5').min).toBeCloseTo(31.376, 3)
    expect(bore('M36x1').min).toBeCloseTo(34.917, 3)
  })
})

describe('tolerance of the minor diameter (ISO 965-1)', () => {
  it('6H: M3 0.135, so at most about 2.60; P 1.5: 0.306 (formulas read; reference table from memory)', () => {
    expect(bore('M3').max - bore('M3').min).toBeCloseTo(0.135, 3)
    expect(bore('M3').max).toBeCloseTo(2.594, 3)
    expect(Math.abs(bore('M33x1.5').max - bore('M33x1.5').min - 0.306)).toBeLessThan(0.001)
  })

  // Table 3 of ISO 965-1, µm, as transcribed in public code (read): grades 4 to 8 by pitch.
  const table: readonly (readonly [pitch: number, ...(number | undefined)[]])[] = [
    [0.3, 53, 67, 85, undefined, undefined],
    [0.35, 63, 80, 100, undefined, undefined],
    [0.5, 90, 112, 140, 180, undefined],
    [0.7, 112, 140, 180, 224, undefined],
    [0.75, 118, 150, 190, 236, undefined],
    [0.8, 125, 160, 200, 250, 315],
    [1, 150, 190, 236, 300, 375],
    [1.25, 170, 212, 265, 335, 425],
    [1.5, 190, 236, 300, 375, 475],
    [2, 236, 300, 375, 475, 600],
    [3, 315, 400, 500, 630, 800],
  ]
  it.each(table)('P %s: the formulas lie within 7 in 100 of the rounded table', (pitch, ...row) => {
    row.forEach((microns, i) => {
      if (microns === undefined) return
      const { min, max } = bore(`M30x${pitch}`, `${i + 4}H`)
      expect(Math.abs((1000 * (max - min)) / microns - 1)).toBeLessThan(0.07)
    })
  })

  it('grows with the pitch and with the grade, also between the two formulas', () => {
    let before = 0
    for (let p = 0.2; p <= 6; p += 0.01) {
      const { min, max } = bore(`M80x${p.toFixed(2)}`)
      expect(max - min).toBeGreaterThan(before)
      before = max - min
    }
    const widths = ['4H', '5H', '6H', '7H', '8H'].map((g) => bore('M33x1.5', g).max)
    expect(widths).toEqual(widths.toSorted((a, b) => a - b))
  })

  it('position G lifts both ends by 15 + 11 P µm (formula read): 0.032 at P 1.5 as tabulated', () => {
    const [h, g] = [bore('M33x1.5', '6H'), bore('M33x1.5', '6G')]
    expect(g.min - h.min).toBeCloseTo(0.0315, 6)
    expect(g.max - h.max).toBeCloseTo(0.0315, 6)
    expect(g.nominal).toBe(g.min)
  })

  it('of two grades the second is that of the minor diameter', () => {
    expect(bore('M33x1.5', '5H6H')).toMatchObject({ max: bore('M33x1.5', '6H').max })
    expect(bore('M33x1.5-7H').max).toBe(bore('M33x1.5', '7H').max)
  })
})

describe('Unified threads (ASME B1.1)', () => {
  // Basic = 2B minimum and 2B maximum, inches: read on a drill chart; 1/4-20 maximum from memory.
  it.each([
    ['2-56', 0.0667, 0.0737],
    ['4-40', 0.0849, 0.0939],
    ['6-32', 0.1042, 0.114],
    ['8-32', 0.1302, 0.139],
    ['10-24', 0.1449, 0.156],
    ['10-32', 0.1562, 0.164],
    ['1/4-20', 0.1959, 0.207],
  ])('%s: minor %s to %s in', (typed, min, max) => {
    expect(Math.abs(inches(bore(typed).min) - min)).toBeLessThanOrEqual(0.0001)
    expect(Math.abs(inches(bore(typed).max) - max)).toBeLessThanOrEqual(0.0006)
  })

  // Limits tables on public pages (read), maxima rounded there to three decimals in class 2B, four in 3B.
  it.each([
    ['15/16-12', '2B', 0.865],
    ['15/16-16', '2B', 0.884],
    ['15/16-20', '2B', 0.895],
    ['1 1/8-7', '2B', 0.998],
    ['1 1/4-7', '2B', 1.123],
    ['5/8-24', '2B', 0.59],
    ['15/16-12', '3B', 0.8575],
    ['15/16-16', '3B', 0.8783],
    ['15/16-20', '3B', 0.8912],
  ])('%s class %s: largest minor %s in', (typed, grade, max) => {
    expect(Math.abs(inches(bore(typed, grade).max) - max)).toBeLessThanOrEqual(0.0006)
  })

  it('1B has the minor diameter of 2B, 3B is never wider', () => {
    for (const t of ['1 1/4-20', '1.25-18', '10-24', '1 3/8-32']) {
      expect(bore(t, '1B')).toMatchObject({ min: bore(t).min, max: bore(t).max })
      expect(bore(t, '3B').max).toBeLessThanOrEqual(bore(t).max)
      expect(bore(t, '3B').max).toBeGreaterThan(bore(t).min)
    }
  })
})

describe('a male thread', () => {
  // Limits of 6g threads on public pages (read): major max and min, minor flat-form max, rounded-form min.
  it.each([
    ['M3', 2.98, 2.874, 2.439, 2.272],
    ['M5', 4.976, 4.826, 4.11, 3.869],
    ['M6', 5.974, 5.794, 4.891, 4.596],
    ['M8', 7.972, 7.76, 6.619, 6.272],
    ['M10x1.5', 9.968, 9.732, 8.344, 7.938],
    ['M10x1.25', 9.972, 9.76, 8.619, 8.272],
  ])('%s 6g: major %s to %s, minor %s to %s', (typed, majorMax, majorMin, minorMax, minorMin) => {
    const { major, minor } = male(typed)
    expect(Math.abs(major.max - majorMax)).toBeLessThanOrEqual(0.002)
    expect(Math.abs(major.min - majorMin)).toBeLessThanOrEqual(0.007)
    expect(Math.abs(minor.max - minorMax)).toBeLessThanOrEqual(0.002)
    expect(Math.abs(minor.min - minorMin)).toBeLessThanOrEqual(0.007)
  })

  it.each([
    ['M1.6', 1.171],
    ['M3', 2.387],
    ['M4', 3.141],
    ['M8', 6.466],
  ])('%s 6h: root d3 %s (ISO 898-1; read in a tap maker’s catalogue)', (typed, d3) => {
    expect(Math.abs(male(typed, '6h').minor.nominal - d3)).toBeLessThanOrEqual(0.001)
    expect(male(typed, '6h').major.max).toBe(thread(typed).major)
  })

  it('1/4-20 UNC 2A: major 0.2489 to 0.2408 in (worked example on a public page, read)', () => {
    const { major } = male('1/4-20 UNC-2A')
    expect(Math.abs(inches(major.max) - 0.2489)).toBeLessThanOrEqual(0.0001)
    expect(Math.abs(inches(major.min) - 0.2408)).toBeLessThanOrEqual(0.0002)
  })

  it('keeps its order and goes into its own internal thread', () => {
    for (const t of ['M33x1.5', 'M3', 'M36x1', '1 1/4-20', '1.25-18', '10-24', '1 3/8-32']) {
      const { major, minor } = male(t)
      expect(minor.min).toBeLessThanOrEqual(minor.nominal)
      expect(minor.nominal).toBeLessThanOrEqual(minor.max)
      expect(minor.max).toBeLessThan(major.min)
      expect(major.max).toBeLessThanOrEqual(thread(t).major)
      expect(minor.max).toBeLessThanOrEqual(bore(t).min)
    }
  })
})

describe('classes not known are a problem, not a guess', () => {
  it.each([
    ['M33x1.5', '2B'],
    ['M33x1.5', '6g'],
    ['M33x1.5', '9H'],
    ['M33x1.5', 'H6'],
    ['M33x1.5', ''],
    ['1/4-20', '6H'],
    ['1/4-20', '4B'],
    ['1/4-20', '2A'],
  ])('%s %s as an internal thread', (typed, grade) => {
    const outcome = freeBore(thread(typed), grade, 'sections/a/class')
    expect(!outcome.ok && outcome.problems[0]).toMatchObject({ code: 'unknown-value', path: 'sections/a/class' })
  })
  it.each([
    ['M33x1.5', '6H'],
    ['M33x1.5', '4h'],
    ['M33x1.5', '8g'],
    ['1/4-20', '2B'],
    ['1/4-20', '6g'],
  ])('%s %s as an external thread', (typed, grade) => {
    expect(externalThread(thread(typed), grade).ok).toBe(false)
  })
})

describe('as a quantity', () => {
  it('is unknown until measured, computed from the designation, with the class as its spread', () => {
    const q = limitsQuantity(bore('M33x1.5'), thread('M33x1.5'), 'sections/a/bore/0/thread')
    expect(least(q)).toBeCloseTo(31.376, 3)
    expect(most(q)).toBeCloseTo(31.682, 3)
    const spread = q.terms[0]?.spread
    expect(spread).toMatchObject({ kind: 'unknown', source: 'computed', minus: 0, path: 'sections/a/bore/0/thread' })
    expect(spread?.from).toContain('ISO 965-1')
  })

  it('rests on an assumption where the coarse pitch of a large thread was not given', () => {
    const quantityOf = (typed: string) => limitsQuantity(bore(typed), thread(typed), 'p')
    expect(restsOnAssumed(quantityOf('M33'))).toBe(true)
    expect(restsOnAssumed(quantityOf('M33x3.5'))).toBe(false)
    expect(restsOnAssumed(quantityOf('M4'))).toBe(false)
  })
})

describe('a reading at a threaded mouth: crest or root?', () => {
  const t = thread('M33x1.5')
  it.each([
    [33, true],
    [32.8, true],
    [32.25, true],
    [33.2, true],
    [32.1, true],
    [31.69, true],
    [31.67, false],
    [31.4, false],
    [31.376, false],
    [30, false],
    [33.76, false],
    [36, false],
  ])('%s in M33 × 1.5 (crests 31.376 to 31.682, roots 33): asked %s', (reading, asked) => {
    const p = threadReadingQuestion(reading, t, bore('M33x1.5'), 'sections/a/bore/0/diameter')
    expect(p !== undefined).toBe(asked)
    if (p) expect(p).toMatchObject({ code: 'suspicious', path: 'sections/a/bore/0/diameter', got: String(reading) })
    if (p) expect(`${p.limit} ${p.hint}`).toMatch(/31\.376.*Crest or root\?/s)
  })

  it('is about readings wider than the crests can be, whatever the thread', () => {
    for (const typed of ['M36x1', '1 1/4-20', '1.25-18 UN', 'M3']) {
      const crests = bore(typed)
      expect(threadReadingQuestion(crests.max - 0.01, thread(typed), crests, 'p')).toBeUndefined()
      expect(threadReadingQuestion(crests.max + 0.01, thread(typed), crests, 'p')).toBeDefined()
    }
  })
})
