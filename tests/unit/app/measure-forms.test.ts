import { describe, expect, it } from 'vitest'
import { inShape, shapesFor } from '../../../src/app/steps/measure/feature-forms.ts'
import { newIntrusion, newJoint, newOpening, newScrew, newSleeve } from '../../../src/app/steps/measure/new-records.ts'
import { bladeEnd, newSection, withSection } from '../../../src/app/steps/measure/new-section.ts'
import { formOf, inForm } from '../../../src/app/steps/measure/step-form.ts'
import { newJob } from '../../../src/job/new-job.ts'
import { withRecord } from '../../../src/project/path.ts'
import { readProject } from '../../../src/project/read.ts'
import type { Project } from '../../../src/project/schema/project.ts'

describe('the form of a bore step', () => {
  const plain = { id: 'a', name: 'a', length: 10, diameter: 30 }
  it.each(['plain', 'taper', 'thread', 'closed'] as const)('%s is told from what it has', (form) => {
    expect(formOf(inForm(plain, form))).toBe(form)
    expect(inForm(plain, form)).toMatchObject({ id: 'a', name: 'a', length: 10 })
  })

  it('what the new form has no use for goes, what it asks for starts empty', () => {
    const thread = { ...plain, kind: 'threaded' as const, thread: 'M33x1.5', threadClass: '6H' }
    expect(inForm(thread, 'thread')).toEqual(thread)
    expect(inForm(thread, 'plain')).toEqual(plain)
    expect(inForm(thread, 'taper')).toEqual({ ...plain, diameterEnd: '' })
    expect(inForm(thread, 'closed')).toEqual({ id: 'a', name: 'a', length: 10, kind: 'solid' })
  })
})

describe('the form of a feature', () => {
  it('dimensions that both forms have stay', () => {
    expect(inShape({ form: 'pin', diameter: 3, reach: 2 }, 'block')).toEqual({
      form: 'block',
      length: '',
      width: '',
      reach: 2,
    })
    expect(inShape({ form: 'slot', length: 20, width: 4 }, 'round')).toEqual({ form: 'round', diameter: '' })
  })

  it('what sticks in has other forms than what is cut out', () => {
    const forms = (kind: Parameters<typeof shapesFor>[0]) => shapesFor(kind).map((f) => f.value)
    expect(forms('intrusion').filter((f) => forms('slot').includes(f))).toEqual([])
  })
})

it('what is added anew fits into a file, twice of each', () => {
  const add = (p: Project, list: string, record: object) => withRecord(p, list, { ...record }) as Project
  let project = newJob('Trial')
  for (let i = 0; i < 2; i++) {
    project = withSection(project, newSection(project, bladeEnd(project)), bladeEnd(project))
    project = add(project, 'features', newIntrusion(project, 'body'))
    project = add(project, 'features', newOpening(project, 'body'))
    project = add(project, 'screws', newScrew(project, 'body'))
    project = add(project, 'sleeves', newSleeve(project, 'body'))
    project = add(project, 'joints', newJoint(project, 'body', 'section'))
  }
  const read = readProject(JSON.stringify(project))
  expect(read.ok ? [] : read.problems).toEqual([])
  expect(project.features.map((f) => f.id)).toEqual(['pin', 'slot', 'pin-2', 'slot-2'])
  expect(project.sections.map((s) => s.name)).toEqual(['body', 'section 2', 'section 3'])
})

describe('one more section', () => {
  const begun = newJob('Trial')
  const body = { ...begun.sections[0], id: 'body', length: '120', material: 'brass' }
  const plug = { id: 'plug', length: '10', bore: [{ id: 'solid', kind: 'solid' as const }] }
  const ids = (p: Project) => p.sections.map((s) => s.id)
  const more = (p: Project, at = bladeEnd(p)) => withSection(p, newSection(p, at), at)

  it('goes to the blade end, but before what closes the bore there', () => {
    const open = { ...begun, sections: [body] } as Project
    expect(ids(more(open))).toEqual(['body', 'section'])
    expect(ids(more(more({ ...open, sections: [...open.sections, plug] })))).toEqual([
      'body',
      'section',
      'section-2',
      'plug',
    ])
    expect(ids(more({ ...open, sections: [plug] }))).toEqual(['plug', 'section'])
  })

  it('goes where it is asked for, in the metal of the one before it', () => {
    const two = { ...begun, sections: [plug, body, { ...plug, id: 'end' }] } as Project
    expect(more(two, 2).sections[2]).toMatchObject({ id: 'section', material: 'brass', length: '' })
    expect(more(two, 1).sections[1]).not.toHaveProperty('material')
  })
})
