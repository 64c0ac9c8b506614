import { differencesOf } from '../../papers/compare.ts'
import type { Project } from '../../project/schema/project.ts'

/** The job as it was some steps ago, with what was changed next. */
export interface StepBack {
  readonly project: Project
  readonly changed: string
}

/** So many are offered. */
const most = 12

/** Earlier states of a job, the newest first; each step of the history holds only the lists that it changed. */
export function stepsBack(now: Project, past: readonly Partial<Project>[]): readonly StepBack[] {
  const found: StepBack[] = []
  let later = now
  for (const step of past.slice(-most).toReversed()) {
    const earlier: Project = { ...later, ...step }
    const [first, ...more] = differencesOf(earlier, later)
    const also = more.length === 0 ? '' : ` and ${more.length} more`
    found.push({ project: earlier, changed: first ? `${first.what}${also}` : 'nothing' })
    later = earlier
  }
  return found
}
