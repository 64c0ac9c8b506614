import { freshId } from '../../../project/path.ts'
import type { SectionInput } from '../../../project/schema/hilt.ts'
import type { Project } from '../../../project/schema/project.ts'

/** Without any bore: a plug, or what a bore is taken to end at. */
export const isClosed = ({ bore }: SectionInput): boolean =>
  bore.length > 0 && bore.every((step) => step.kind === 'solid')

/** The place in the list for one more at the blade end: where a closed section ends the bore, before that. */
export const bladeEnd = ({ sections }: Project): number =>
  sections.length - (sections.length > 1 && isClosed(sections.at(-1) as SectionInput) ? 1 : 0)

/** A section with nothing measured yet, of the hilt and the metal of the one before it. */
export function newSection({ sections }: Project, at: number): SectionInput {
  const before = sections[at - 1]
  return {
    id: freshId(sections, 'section'),
    name: `section ${sections.length + 1}`,
    ...(before?.hilt === undefined ? {} : { hilt: before.hilt }),
    ...(before?.material === undefined ? {} : { material: before.material }),
    length: '',
    bore: [{ id: 'bore', name: 'bore' }],
  }
}

/** The job with a section put in at a place of the list, which is its place along the hilt. */
export const withSection = (project: Project, section: SectionInput, at: number): Project => ({
  ...project,
  sections: project.sections.toSpliced(at, 0, section),
})
