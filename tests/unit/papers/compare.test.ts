import { describe, expect, it } from 'vitest'
import { compare, differencesOf } from '../../../src/papers/compare.ts'
import { valueWords } from '../../../src/papers/value-words.ts'
import { applyFix } from '../../../src/project/apply-fix.ts'
import { withRecord, withValue } from '../../../src/project/path.ts'
import type { Project } from '../../../src/project/schema/project.ts'
import { answerTo, demo, projectOf } from '../job/demo-answer.ts'

const landing = projectOf(demo('landing-lantern'))
const changed = (path: string, value: unknown, of = landing) => withValue(of, path, value) as Project

describe('what two jobs have differently', () => {
  it('is nothing of one and the same', () => {
    expect(differencesOf(landing, structuredClone(landing))).toEqual([])
  })

  it('is a number in words, then and now', () => {
    expect(differencesOf(landing, changed('sleds/main/diameter', 29.3))).toEqual([
      { path: 'sleds/main/diameter', what: 'diameter of the sled', before: '29.5', after: '29.3' },
    ])
  })

  it('tells of what was not typed before, and of a nest by what was typed', () => {
    expect(differencesOf(landing, changed('sleds/main/nests/parts/cell/gap', 0.3))).toEqual([
      {
        path: 'sleds/main/nests/parts/cell/gap',
        what: 'gap of the nest of the 18650 cell',
        before: 'not typed',
        after: '0.3',
      },
    ])
    expect(differencesOf(landing, changed('thresholds/clearance/value', 0.2))).toMatchObject([
      { what: 'setting "clearance"', after: '0.2' },
    ])
  })

  it('tells once of a name that job and hilt share', () => {
    const named = changed('hilts/hilt/name', 'Mole lantern', changed('job/job/name', 'Mole lantern'))
    const names = differencesOf(landing, named).filter((d) => d.after === 'Mole lantern')
    expect(names.map((d) => d.path)).toEqual(['job/job/name'])
  })

  it('tells of a record that came or went, not of all its fields', () => {
    const more = withRecord(landing, 'sleds/main/bulkheads', { id: 'wall', z: 132 }) as Project
    const came = { path: 'sleds/main/bulkheads/wall', before: 'not there', after: 'there' }
    expect(differencesOf(landing, more)).toMatchObject([came])
    expect(differencesOf(more, landing)).toMatchObject([{ ...came, before: 'there', after: 'not there' }])
  })

  it('follows records by their names, whatever their order', () => {
    const turned = { ...landing, parts: landing.parts.toReversed() }
    expect(differencesOf(landing, turned)).toEqual([])
  })

  it('says choices, references and presets as the fields of the forms do', () => {
    const told = (path: string, value: unknown) =>
      differencesOf(landing, changed(path, value), (id) => (id === 'speaker-24' ? '24 mm speaker' : undefined))
    expect(told('sleds/main/construction', 'open-cradle')).toMatchObject([
      { what: 'construction of the sled', before: 'full cage', after: 'open cradle' },
    ])
    expect(told('sleds/main/nests/parts/cell/fit', 'snug')).toMatchObject([{ before: 'as usual', after: 'snug fit' }])
    expect(told('parts/speaker/on', 'sections/body')).toMatchObject([
      { what: expect.stringMatching(/^carrier of the /), before: 'not typed', after: 'body' },
    ])
    expect(told('parts/speaker/preset', 'speaker-24')).toMatchObject([{ after: '24 mm speaker' }])
    expect(told('parts/speaker/goesIn', 'after')).toMatchObject([{ after: 'after the sled' }])
    expect(told('parts/cell/at/face', 'blade')).toMatchObject([{ after: 'blade end' }])
    expect(valueWords(landing, 'sections/body/bore/0', 'sleds/main/seats/a/against')).not.toContain('/')
    expect(valueWords(landing, 'main', 'wires/led/sled')).toBe('sled')
    expect(valueWords(landing, 'and/or', 'sleds/main/marks/a/text')).toBe('and/or')
  })

  it('reads every form of a size', () => {
    const say = (value: unknown) => valueWords(landing, value)
    expect(say({ value: 29.3, plus: 0.1, minus: 0.1 })).toBe('29.3 ±0.1')
    expect(say({ value: 29.3, plus: 0.2, minus: 0 })).toBe('29.3 +0.2 −0')
    expect(say({ min: 18.2, max: 18.6 })).toBe('18.2 to 18.6')
    expect(say({ readings: [{ value: 31.02, theta: 0 }, { value: '31' }] })).toBe('2 readings: 31.02, 31')
    expect(say({ of: 'sections/body', end: 'blade', by: -2 })).toBe('−2 from the blade end of body')
    expect(say('25.4 ±0.05')).toBe('25.4 ±0.05')
    expect(say(true)).toBe('yes')
    expect(say(undefined)).toBe('not typed')
  })
})

describe('what came of it', () => {
  it('a fix that works turns the verdict, and the checks it touches say from what to what', () => {
    const before = answerTo(landing)
    const fix = before.findings.flatMap((f) => f.fix).find((f) => f.value !== undefined)
    const project = fix && applyFix(landing, fix)
    expect(project).toBeDefined()
    const after = answerTo(project)
    const told = compare({ ...before, project: landing }, { ...after, project: project as Project }, () => undefined)
    expect(told.differences).toMatchObject([{ path: 'sleds/main/diameter' }])
    const place = told.findings.find((f) => f.title === 'sled in place: main bore')
    expect(place).toMatchObject({ before: { status: 'unsure' }, after: { status: 'clear' }, unit: 'mm' })
    expect(place?.after?.worst).toBeGreaterThan(place?.before?.worst ?? 0)
    expect(told.same).toBeGreaterThan(5)
    expect(told.findings.length + told.same).toBeGreaterThanOrEqual(after.findings.length)
  })

  it('checks that only one of them has are told with nothing on the other side', () => {
    const [before, after] = [answerTo(landing), answerTo(demo('pier-lantern'))]
    const fewer = { ...after, findings: after.findings.slice(1) }
    const told = compare({ ...after, project: landing }, { ...fewer, project: landing }, () => undefined)
    expect(told.findings).toMatchObject([{ id: after.findings[0]?.id, after: undefined }])
    expect(compare({ ...before, project: landing }, { ...before, project: landing }, () => undefined).findings).toEqual(
      [],
    )
  })
})
