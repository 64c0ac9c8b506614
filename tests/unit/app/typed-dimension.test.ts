import { describe, expect, it } from 'vitest'
import { stepsBack } from '../../../src/app/compare/steps-back.ts'
import { keptValue, typedText } from '../../../src/app/dimensions/typed-text.ts'
import { createJobStore } from '../../../src/app/work/job-store.ts'
import { featureKinds, newFeature } from '../../../src/papers/sled-words.ts'
import { withRecord, withValue } from '../../../src/project/path.ts'
import { checkProject } from '../../../src/project/read.ts'
import { demo, projectOf } from '../job/demo-answer.ts'

describe('a dimension as it is typed', () => {
  it('reads as it was typed, or as its size with its spread', () => {
    expect(typedText('1 1/2 in')).toBe('1 1/2 in')
    expect(typedText(29.5)).toBe('29.5')
    expect(typedText({ value: 0, plus: 0.1, minus: 0.1 })).toBe('0 ±0.1')
    expect(typedText({ min: 18.2, max: 18.6 })).toBe('18.2..18.6')
    expect(typedText(undefined)).toBe('')
  })

  it('what it reads as is read back as the same size', () => {
    for (const value of [29.5, '1 1/2 in', '33.1..33.4'])
      expect(keptValue(typedText(value), 'mm', 'text')).toEqual({ ok: true, value })
  })

  it('is a number where a number is drawn, with its unit understood', () => {
    expect(keptValue('0,4', 'mm', 'number')).toEqual({ ok: true, value: 0.4 })
    expect(keptValue('1/2 in', 'mm', 'number')).toEqual({ ok: true, value: 12.7 })
    expect(keptValue('45°', '°', 'number')).toEqual({ ok: true, value: 45 })
    expect(keptValue('0.4 ±0.1', 'mm', 'number')).toMatchObject({ ok: false })
    expect(keptValue('wide', 'mm', 'number')).toMatchObject({ ok: false })
  })

  it('emptied gives way to the default', () => {
    expect(keptValue('  ', 'mm', 'number')).toEqual({ ok: true, value: undefined })
  })
})

describe('what is put on a sled', () => {
  for (const { list, word } of featureKinds.filter((k) => k.list !== 'seats'))
    it(`a ${word} is one that a job can hold`, () => {
      const made = newFeature(list, { rear: 47, blade: 188, diameter: 29.3 })
      const project = withRecord(projectOf(demo('pier-lantern')), `sleds/main/${list}`, made)
      expect(checkProject(project)).toMatchObject({ ok: true })
    })
})

describe('the job some steps back', () => {
  it('is what it was, with what was changed next', () => {
    const job = createJobStore(projectOf(demo('landing-lantern')))
    const first = job.get()
    job.edit((p) => withValue(p, 'sleds/main/diameter', 29.3))
    job.edit((p) => withValue(p, 'sleds/main/chamfer', 0.6))
    const steps = stepsBack(job.get(), job.history.getState().pastStates)
    expect(steps.map((s) => s.changed)).toEqual(['chamfer of the sled', 'diameter of the sled'])
    expect(steps[1]?.project).toEqual(first)
    expect(steps[0]?.project.sleds[0]).toMatchObject({ diameter: 29.3 })
  })
})
