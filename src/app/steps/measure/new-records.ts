import { freshId } from '../../../project/path.ts'
import type { BoreStepInput, FeatureInput, JointInput, ScrewInput, SectionInput } from '../../../project/schema/hilt.ts'
import type { Project } from '../../../project/schema/project.ts'

/** What a new record starts with. Sizes start empty: nobody has measured them. */

/** A step at the blade end, as long as what the others leave of the section. */
export function newStep(section: SectionInput): BoreStepInput {
  const id = freshId(section.bore, 'step')
  return { id, name: `step ${section.bore.length + 1}` }
}

export const newJoint = (project: Project, rear: string, blade: string): JointInput => ({
  id: freshId(project.joints, `${rear}-${blade}`),
  kind: 'threaded',
  rear,
  blade,
  opens: true,
})

const placed = (section: string) => ({ z: { of: `sections/${section}`, end: 'rear' as const, by: '' }, theta: '0' })

export function newIntrusion(project: Project, section: string): FeatureInput {
  return {
    id: freshId(project.features, 'pin'),
    name: named(project.features, 'pin'),
    kind: 'intrusion',
    on: `sections/${section}`,
    at: placed(section),
    shape: { form: 'pin', diameter: '' },
    fitted: 'before',
  }
}

export function newOpening(project: Project, section: string): FeatureInput {
  return {
    id: freshId(project.features, 'slot'),
    name: named(project.features, 'slot'),
    kind: 'slot',
    on: `sections/${section}`,
    at: placed(section),
    shape: { form: 'slot', length: '', width: '' },
  }
}

export function newScrew(project: Project, section: string): ScrewInput {
  return {
    id: freshId(project.screws, 'screw'),
    name: named(project.screws, 'screw'),
    on: `sections/${section}`,
    at: placed(section),
    thread: 'M4',
    fitted: 'after',
  }
}

export function newSleeve(project: Project, section: string): Project['sleeves'][number] {
  return {
    id: freshId(project.sleeves, 'sleeve'),
    name: named(project.sleeves, 'grip sleeve'),
    kind: 'grip-sleeve',
    on: `sections/${section}`,
    z: placed(section).z,
    length: '',
  }
}

/** "pin", then "pin 2": like the ids, so that no two read the same. */
function named(list: readonly { readonly name?: string | undefined }[], word: string): string {
  const taken = new Set(list.map((r) => r.name))
  for (let n = 1; ; n++) {
    const name = n === 1 ? word : `${word} ${n}`
    if (!taken.has(name)) return name
  }
}
