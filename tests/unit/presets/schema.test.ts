import { describe, expect, it } from 'vitest'
import { presetFiles } from '../../../src/presets/files.ts'
import { presetProblems } from '../../../src/presets/validate.ts'

const sound = presetFiles.cells.entries[0]
const faults = (...entries: unknown[]) => presetProblems({ trial: { title: 'Trial', unit: 'mm', entries } })
const withDiameter = (diameter: unknown) => ({
  body: { shape: 'cylinder', diameter, length: { min: 64.5, max: 65.5 } },
})

describe('the preset files', () => {
  it('obey their schemas, with ids of their own and every number\'s "how"', () => {
    expect(presetProblems()).toEqual([])
  })

  it('are plain trade names: no registered or trade marks, and no web addresses', () => {
    expect(JSON.stringify(presetFiles)).not.toMatch(/[®™]|https?:|www\./)
  })
})

describe('a fault in an entry is found and named', () => {
  it('passes the sound entry the cases below are made from', () => {
    expect(faults(sound)).toEqual([])
  })

  it.each([
    ['a least above its most', withDiameter({ min: 19, max: 18 })],
    ['a nominal outside its ends', withDiameter({ min: 18, max: 19, nominal: 20 })],
    ['a negative spread', withDiameter({ value: 18, plus: -0.1, minus: 0.1 })],
    ['a size without spread', withDiameter(18)],
    ['a size that is no number', withDiameter({ min: Number.NaN, max: 18 })],
    ['a size that is too large to be one', withDiameter({ min: 18, max: Number.POSITIVE_INFINITY })],
    ['a missing source', { source: undefined }],
    ['a way of knowing that is not on the list', { how: 'rumour' }],
    ['an unknown field', { colour: 'blue' }],
    ['an unknown kind', { kind: 'gear' }],
    ['an id with capitals', { id: 'Cell' }],
  ])('%s', (_, change) => {
    const problems = faults({ ...sound, ...change })
    expect(problems.length).toBeGreaterThan(0)
    expect(problems[0]?.code).toBe('wrong-type')
    expect(problems[0]?.path).toMatch(/^trial\/entries\//)
  })

  it('an id that two entries have', () => {
    expect(faults(sound, sound).map((p) => p.code)).toEqual(['duplicate-id'])
  })

  it('a number nobody says how it is known', () => {
    const problems = faults({ ...sound, how: { body: 'read', nominal: 'read', capacity: 'read', current: 'read' } })
    expect(problems.map((p) => [p.code, p.limit])).toEqual([
      ['missing', 'how mass.min is known'],
      ['missing', 'how mass.max is known'],
    ])
  })

  it('a saying about a field that is not there', () => {
    const problems = faults({ ...sound, how: { ...sound?.how, weight: 'read' } })
    expect(problems.map((p) => [p.code, p.got])).toEqual([['unknown-reference', '"weight"']])
  })

  it('a file that is no file of presets', () => {
    expect(presetProblems({ trial: { title: 'Trial' } }).length).toBeGreaterThan(0)
    expect(presetProblems({ trial: null }).length).toBeGreaterThan(0)
  })
})
