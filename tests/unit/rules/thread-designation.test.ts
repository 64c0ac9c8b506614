import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseThread, type Thread } from '../../../src/rules/thread-designation.ts'

function thread(typed: string): Thread {
  const outcome = parseThread(typed, 'p')
  if (!outcome.ok) throw new Error(`${typed}: ${JSON.stringify(outcome.problems)}`)
  expect(outcome.value.text).toBe(typed)
  return outcome.value
}

const understood: readonly (readonly [typed: string, name: string, major: number, pitch: number, grade?: string])[] = [
  ['M33x1.5', 'M33 × 1.5', 33, 1.5],
  ['M33 × 1.5', 'M33 × 1.5', 33, 1.5],
  ['m33X1,5', 'M33 × 1.5', 33, 1.5],
  ['M33*1.5', 'M33 × 1.5', 33, 1.5],
  ['M33-1.5', 'M33 × 1.5', 33, 1.5],
  ['M33 x 1.5 mm', 'M33 × 1.5', 33, 1.5],
  ['33x1.5', 'M33 × 1.5', 33, 1.5],
  ['33 mm - 1.5 mm', 'M33 × 1.5', 33, 1.5],
  ['M33x1.5-6H', 'M33 × 1.5', 33, 1.5, '6H'],
  ['M33x1.5 5H6H', 'M33 × 1.5', 33, 1.5, '5H6H'],
  ['M33x1.5-6g LH', 'M33 × 1.5', 33, 1.5, '6g'],
  ['M3', 'M3 × 0.5', 3, 0.5],
  ['M1,6', 'M1.6 × 0.35', 1.6, 0.35],
  ['M8-1.25', 'M8 × 1.25', 8, 1.25],
  ['1 1/4-20', '1.25 in - 20 TPI', 31.75, 1.27],
  ['1-1/4-20', '1.25 in - 20 TPI', 31.75, 1.27],
  ['1¼-20', '1.25 in - 20 TPI', 31.75, 1.27],
  ['1 1/4" - 20 TPI', '1.25 in - 20 TPI', 31.75, 1.27],
  ['1.25-18 UN', '1.25 in - 18 TPI', 31.75, 25.4 / 18],
  ['1.25-18UN-2B', '1.25 in - 18 TPI', 31.75, 25.4 / 18, '2B'],
  ['1,25-18 UNS 2b', '1.25 in - 18 TPI', 31.75, 25.4 / 18, '2B'],
  ['1.25 x 18 TPI', '1.25 in - 18 TPI', 31.75, 25.4 / 18],
  ['1 1/8-16 UN LH', '1.125 in - 16 TPI', 28.575, 25.4 / 16],
  ['1/4-20', '0.25 in - 20 TPI', 6.35, 1.27],
  ['1/4-20 UNC-2A', '0.25 in - 20 TPI', 6.35, 1.27, '2A'],
  ['1-20', '1 in - 20 TPI', 25.4, 1.27],
  ['1"-20', '1 in - 20 TPI', 25.4, 1.27],
  ['1-32', '1 in - 32 TPI', 25.4, 0.79375],
  ['10-24', '#10 (0.19 in) - 24 TPI', 4.826, 25.4 / 24],
  ['#10-24', '#10 (0.19 in) - 24 TPI', 4.826, 25.4 / 24],
  ['No. 6-32', '#6 (0.138 in) - 32 TPI', 3.5052, 0.79375],
  ['4-40', '#4 (0.112 in) - 40 TPI', 2.8448, 0.635],
  ['0-80', '#0 (0.06 in) - 80 TPI', 1.524, 0.3175],
  ['1-64', '#1 (0.073 in) - 64 TPI', 1.8542, 25.4 / 64],
  ['33mm-20', '33 mm - 20 TPI', 33, 1.27],
  ['33 mm x 20 TPI', '33 mm - 20 TPI', 33, 1.27],
]

describe('a thread as typed', () => {
  for (const [typed, name, major, pitch, grade] of understood) {
    it(`${typed}: ${name}`, () => {
      const t = thread(typed)
      expect(t.name).toBe(name)
      expect(t.major).toBeCloseTo(major, 9)
      expect(t.pitch).toBeCloseTo(pitch, 9)
      expect(t.toleranceClass).toBe(grade)
    })
  }

  it('every standard number thread is understood as one (sizes of ASME B1.1, from memory)', () => {
    const series =
      '0-80 1-64 1-72 2-56 2-64 3-48 3-56 4-40 4-48 5-40 5-44 6-32 6-40 8-32 8-36 10-24 10-32 12-24 12-28 12-32'
    for (const name of series.split(' ')) {
      const [n, tpi] = name.split('-').map(Number) as [number, number]
      expect(thread(name).major).toBeCloseTo((0.06 + 0.013 * n) * 25.4, 9)
      expect(thread(name).pitch).toBeCloseTo(25.4 / tpi, 9)
    }
  })

  it('any D × P of a plausible depth, with point or comma (seed 71)', () => {
    const d = fc.integer({ min: 30, max: 900 }).map((v) => v / 10)
    const p = fc.integer({ min: 20, max: 90 }).map((v) => v / 100)
    fc.assert(
      fc.property(d, p, (major, pitch) => {
        for (const typed of [`M${major}x${pitch}`, `${major} × ${String(pitch).replace('.', ',')}`]) {
          expect(thread(typed)).toMatchObject({ system: 'metric', major, pitch, pitchAssumed: false })
        }
      }),
      { seed: 71 },
    )
  })

  it('any D - TPI, in inches or millimetres (seed 72)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 500, max: 2000 }), fc.integer({ min: 8, max: 48 }), (thousandths, tpi) => {
        const inches = thousandths / 1000
        expect(thread(`${inches}in-${tpi}`).major).toBeCloseTo(inches * 25.4, 9)
        expect(thread(`${inches}" - ${tpi} TPI`).pitch).toBeCloseTo(25.4 / tpi, 9)
        expect(thread(`${thousandths / 20}mm-${tpi}`)).toMatchObject({ system: 'inch', major: thousandths / 20 })
      }),
      { seed: 72 },
    )
  })

  it('a coarse pitch taken for a large thread counts as assumed, for a small screw as said', () => {
    expect(thread('M33')).toMatchObject({ pitch: 3.5, pitchAssumed: true })
    expect(thread('M10').pitchAssumed).toBe(true)
    expect(thread('M8').pitchAssumed).toBe(false)
  })
})

describe('what is refused, as a problem with path, value, limit and hint', () => {
  it.each([
    ['', 'missing', ''],
    ['M11', 'missing', 'M11x1'],
    ['1/4 UNC', 'missing', 'threads per inch'],
    ['33', 'missing', 'pitch'],
    ['33-20', 'unknown-unit', '33mm-20'],
    ['M33-20', 'out-of-range', '33mm-20'],
    ['M33x0', 'out-of-range', ''],
    ['M33x12', 'out-of-range', ''],
    ['M3x1.5', 'out-of-range', '0.9'],
    ['M500x6', 'out-of-range', ''],
    ['M0x1', 'out-of-range', ''],
    ['1/4-4', 'out-of-range', ''],
    ['1-1000', 'out-of-range', ''],
    ['#13-24', 'out-of-range', '12'],
    ['1.25in x 1.5', 'unknown-value', '1.25-18'],
    ['M33x-1', 'unknown-value', ''],
    ['MJ6x1', 'unknown-value', '60°'],
    ['G 1/2', 'unknown-value', '60°'],
    ['Rp 1/2', 'unknown-value', '60°'],
    ['1/2-14 NPT', 'unknown-value', '60°'],
    ['Tr 30x6', 'unknown-value', '60°'],
    ['1/4-20 UNJC', 'unknown-value', '60°'],
    ['1/0-20', 'unknown-value', ''],
    ['1-1e9', 'unknown-value', ''],
    ['M1e9', 'unknown-value', ''],
    ['MNaNx1', 'unknown-value', ''],
    ['Infinity-20', 'unknown-value', ''],
    ['--5', 'unknown-value', ''],
    ['hello', 'unknown-value', ''],
    ['M33x1.5'.repeat(10_000), 'unknown-value', ''],
  ])('%s: %s', (typed, code, hint) => {
    const outcome = parseThread(typed, 'sections/a/thread')
    if (outcome.ok) throw new Error(JSON.stringify(outcome.value))
    expect(outcome.problems[0]).toMatchObject({ code, path: 'sections/a/thread' })
    expect(outcome.problems[0]?.hint).toContain(hint)
    expect(outcome.problems[0]?.got.length).toBeLessThanOrEqual(60)
  })

  it('never throws, whatever is typed, and what it gives is a possible thread (seed 73)', () => {
    const bits = [
      'M',
      '33',
      '1.5',
      'x',
      '-',
      ' ',
      '/',
      '1',
      '4',
      '20',
      'UN',
      '2B',
      '#',
      '"',
      'mm',
      'TPI',
      '6H',
      ',',
      '½',
    ]
    const typed = fc.oneof(
      fc.string(),
      fc.array(fc.constantFrom(...bits), { maxLength: 8 }).map((b) => b.join('')),
    )
    fc.assert(
      fc.property(typed, (text) => {
        const outcome = parseThread(text)
        if (!outcome.ok) return
        const { major, pitch } = outcome.value
        expect(pitch).toBeGreaterThan(0)
        expect(major - 1.22687 * pitch).toBeGreaterThan(major / 2)
      }),
      { seed: 73, numRuns: 5000 },
    )
  })
})
