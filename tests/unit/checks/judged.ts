import type { Finding } from '../../../src/checks/finding.ts'
import { judgeAssembly } from '../../../src/checks/judge-assembly.ts'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { assemblyOf } from '../resolve/project-of.ts'

/** Findings of a project by id; throws where the project itself is wrong. */
export function findingsOf(project: ProjectInput, state?: string): Map<string, Finding> {
  return new Map(judgeAssembly(assemblyOf(project), state).findings.map((f) => [f.id, f]))
}

export function findingOf(project: ProjectInput, id: string, state?: string): Finding {
  const all = findingsOf(project, state)
  const found = all.get(id)
  if (!found) throw new Error(`no finding ${id} among ${[...all.keys()].join(', ')}`)
  return found
}

/** A dimension known without any doubt. */
export const sure = (value: number) => ({ value, plus: 0, minus: 0 })
/** One that lies within ± half and that measuring settles. */
export const about = (value: number, half: number) => ({ value, plus: half, minus: half })
/** A printer without error, so that hand calculations stay short. */
export const perfect = [{ id: 'perfect', error: sure(0) }]
