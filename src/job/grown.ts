import type { Presets } from '../presets/presets.ts'
import type { SectionInput } from '../project/schema/hilt.ts'
import type { Project } from '../project/schema/project.ts'
import type { QuickInput } from './quick.ts'
import { quickName } from './quick-name.ts'

/**
 * A quick check's project as a whole job to go on with. What stops a sled at the typed depth has to be metal of some
 * length; nobody typed one, so it is told as assumed.
 */
export function grown(project: Project, input: QuickInput, presets: Presets): Project {
  return {
    ...project,
    job: [{ id: 'job', name: quickName(input, presets) }],
    sections: project.sections.map((s) => (s.id === 'end' ? closedEnd(s) : s)),
  }
}

const closedEnd = (section: SectionInput): SectionInput => ({
  ...section,
  name: 'closed end, assumed',
  length: { value: Number(section.length), source: 'assumed' },
})
