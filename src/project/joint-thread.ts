import type { JointInput } from './schema/hilt.ts'
import type { Project } from './schema/project.ts'

/** The thread cut into the bore where two sections meet, and the step that says it. */
export interface BoreThread {
  readonly thread: string
  /** `sections/body/mouth`. */
  readonly step: string
}

/** What the bore of either section says of a joint's thread: it is the same thread, measured once. */
export function boreThreadOf({ sections }: Pick<Project, 'sections'>, joint: JointInput): BoreThread | undefined {
  const stepOf = (id: string, at: 0 | -1): BoreThread | undefined => {
    const bore = sections.find((s) => s.id === id)?.bore
    const step = bore?.at(at)
    if (!bore || !step?.thread) return undefined
    return { thread: step.thread, step: `sections/${id}/${step.id ?? bore.indexOf(step)}` }
  }
  return stepOf(joint.blade, 0) ?? stepOf(joint.rear, -1)
}
