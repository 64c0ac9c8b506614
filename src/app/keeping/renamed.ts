import type { Project } from '../../project/schema/project.ts'
import { withName } from './kept-job.ts'

/** The job renamed by hand: its only hilt goes by the same name until it is given one of its own. */
export function renamed(project: Project, name: string): Project {
  const [hilt, ...others] = project.hilts
  const shared = hilt && others.length === 0 && (hilt.name ?? '') === (project.job[0]?.name ?? '')
  const next = withName(project, name)
  return shared ? { ...next, hilts: [{ ...hilt, name }] } : next
}
