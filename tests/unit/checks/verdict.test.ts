import { describe, expect, it } from 'vitest'
import { finding } from '../../../src/checks/finding.ts'
import { judge, overall, type Status, type Verdict } from '../../../src/checks/verdict.ts'
import { contributionsOf, marginsOf } from '../../../src/quantity/margins.ts'
import { exact, known, type Quantity, type Spread, sub } from '../../../src/quantity/quantity.ts'

const spread = (path: string, kind: Spread['kind'], half: number, source: Spread['source'] = 'measured'): Spread => ({
  path,
  kind,
  minus: half,
  plus: half,
  distribution: 'rectangular',
  source,
  from: 'test',
})
const unknown = (n: number, half: number) => known(n, spread('u', 'unknown', half))
const varies = (n: number, half: number) => known(n, spread('v', 'varies', half))
const gap = (bore: Quantity, part: Quantity) => sub(sub(bore, part), exact(0.1))

/** Design, section 2.5: every row is one sentence of it. */
const truths: readonly [string, Quantity, Parameters<typeof judge>[1], Status][] = [
  ['holds everywhere', gap(unknown(10, 0.1), varies(9, 0.1)), {}, 'clear'],
  ['holds with nothing to spare', gap(unknown(10, 0.2), exact(9.7)), {}, 'clear'],
  ['depends on an unknown', gap(unknown(10, 0.2), exact(9.8)), {}, 'unsure'],
  ['fails for every value of the unknown', gap(unknown(10, 0.2), exact(10.2)), {}, 'clash'],
  [
    'a variation fails though the nominal holds: no measurement can mend it',
    gap(exact(10), varies(9.8, 0.2)),
    {},
    'clash',
  ],
  ['a variation fails only for some values of the unknown', gap(unknown(10, 0.3), varies(9.8, 0.2)), {}, 'unsure'],
  ['a variation fails for every value of the unknown', gap(unknown(10, 0.05), varies(9.8, 0.2)), {}, 'clash'],
  ['must hold at the worst case and does', gap(unknown(10, 0.1), exact(9.7)), { mustHold: true }, 'clear'],
  [
    'must hold at the worst case, but depends on an unknown',
    gap(unknown(10, 0.2), exact(9.8)),
    { mustHold: true },
    'clash',
  ],
  ['holds, but rests on an assumption', gap(unknown(10, 0.1), exact(9)), { assumed: true }, 'unsure'],
  ['fails, and rests on an assumption', gap(unknown(10, 0.1), exact(11)), { assumed: true }, 'clash'],
  ['advice never counts', gap(unknown(10, 0.1), exact(11)), { advice: true }, 'advice'],
]

describe('verdict of a finding', () => {
  it.each(truths)('%s', (_, margin, terms, status) => {
    expect(judge(marginsOf(margin), terms)).toBe(status)
  })

  it('an assumed contributor alone keeps a finding from being clear', () => {
    const margin = gap(known(10, spread('a', 'unknown', 0, 'assumed')), exact(9))
    expect(finding({ ...blank, margins: marginsOf(margin), contributions: contributionsOf(margin) }).status).toBe(
      'unsure',
    )
  })

  it('what is shared by both sides cancels before it is judged', () => {
    const shelf = unknown(0, 5)
    const margin = sub(sub({ ...shelf, nominal: 10 }, { ...shelf, nominal: 9.5 }), exact(0.1))
    expect(judge(marginsOf(margin))).toBe('clear')
  })

  it('a margin that is not a number is a bug, not a verdict', () => {
    expect(() => judge({ worst: Number.NaN, nominal: 0, settled: 0, best: 0 })).toThrow(RangeError)
  })

  it('an unsure finding says how likely it is to hold', () => {
    // Bore 9.9 ± 0.2 rectangular, needs 9.8 or more: (10.1 − 9.8) / 0.4 = 75 %, computed.
    const margin = gap(unknown(9.9, 0.2), exact(9.7))
    const f = finding({ ...blank, margins: marginsOf(margin), contributions: contributionsOf(margin) })
    expect(f.probability).toBeCloseTo(0.75, 2)
  })

  it('what may hold is never told as without a chance, nor as certain', () => {
    const margins = { worst: -1, nominal: -0.5, settled: 0, best: 0 }
    const few = contributionsOf(known(0, spread('p', 'unknown', 0.4)))
    const many = contributionsOf(known(0, spread('p', 'unknown', 1e6)))
    expect(finding({ ...blank, margins, contributions: few }).probability).toBe(0.001)
    expect(finding({ ...blank, margins: { ...margins, worst: -1e-6 }, contributions: many }).probability).toBe(0.999)
  })

  it('and what holds, but rests on an assumption, is told without one', () => {
    const margins = { worst: 0.1, nominal: 0.2, settled: 0.2, best: 0.3 }
    const f = finding({ ...blank, margins, contributions: [], terms: { assumed: true } })
    expect([f.status, f.probability]).toEqual(['unsure', undefined])
  })

  it('two equal rectangular unknowns make a triangle: 7/8 above minus half', () => {
    // Sum of two uniform on ±1 is ≥ −1 with probability 1 − 1/8, computed.
    const margin = sub(known(1, spread('p', 'unknown', 1)), known(0, spread('q', 'unknown', 1)))
    const f = finding({ ...blank, margins: marginsOf(margin), contributions: contributionsOf(margin) })
    expect(f.probability).toBeCloseTo(7 / 8, 2)
  })

  it('names the biggest contributor first, with shares t²/Σt²', () => {
    const margin = sub(known(1, spread('p', 'unknown', 0.3)), known(0, spread('q', 'varies', 0.1)))
    const f = finding({ ...blank, margins: marginsOf(margin), contributions: contributionsOf(margin) })
    expect(f.contributors.map((c) => [c.path, c.kind])).toEqual([
      ['p', 'unknown'],
      ['q', 'varies'],
    ])
    expect(f.contributors[0]?.share).toBeCloseTo(0.9, 12)
  })
})

const jobs: readonly [string, Status[], Verdict][] = [
  ['nothing was checked', [], 'unsure'],
  ['only advice was given', ['advice'], 'unsure'],
  ['all clear', ['clear', 'clear', 'advice'], 'clear'],
  ['one check was left out', ['clear', 'not-checked'], 'unsure'],
  ['one depends', ['clear', 'unsure'], 'unsure'],
  ['one clashes', ['clear', 'unsure', 'not-checked', 'clash'], 'clash'],
]

describe('verdict of a job', () => {
  it.each(jobs)('%s', (_, statuses, verdict) => {
    expect(overall(statuses)).toBe(verdict)
  })
})

const blank = {
  id: 'x',
  check: 'x',
  title: 'x',
  value: 0,
  limit: 0,
  unit: 'mm',
  at: undefined,
  parts: [],
  state: 'closed',
  why: '',
  source: '',
  fix: [],
} as const
