import { useEffect, useState } from 'react'
import type { FileLayout } from '../../../job/lay-out.ts'
import type { SledReport } from '../../../job/sled-report.ts'
import type { Problem } from '../../../problem/problem.ts'
import type { Project } from '../../../project/schema/project.ts'
import { useProject, useWork } from '../../work/work-context.ts'

/** The kernel is fetched at the first call, ms. */
const patience = 60_000

const none: readonly Problem[] = []

export interface ToldBodies {
  readonly report: SledReport | undefined
  /** What in the job is in its way. */
  readonly problems: readonly Problem[]
  /** Why there is none besides, in words. */
  readonly trouble: string | undefined
  readonly busy: boolean
}

/** What was told of which job, laid out in which way. */
interface Told extends Omit<ToldBodies, 'busy'> {
  readonly of: Project
  readonly layout: FileLayout
}

/** What the printed bodies are, built anew when the job has changed. */
export function useSledReport(layout: FileLayout): ToldBodies {
  const { desk } = useWork()
  const project = useProject((p) => p)
  const [told, setTold] = useState<Told>()
  useEffect(() => {
    let wanted = true
    void desk
      .ask('sled-report', patience, (calls) => calls.report(project, layout))
      .then((reply) => {
        if (!wanted || reply.kind === 'overtaken') return
        const tell = (more: Partial<Told>) =>
          setTold({ report: undefined, problems: [], trouble: undefined, of: project, layout, ...more })
        if (reply.kind === 'stuck') return tell({ trouble: 'Building took too long and was stopped.' })
        if (reply.kind === 'broken') return tell({ trouble: reply.message })
        tell(reply.value.ok ? { report: reply.value.value } : { problems: reply.value.problems })
      })
    return () => {
      wanted = false
    }
  }, [desk, project, layout])
  const { report, problems = none, trouble } = told ?? {}
  return { report, problems, trouble, busy: told?.of !== project || told.layout !== layout }
}
