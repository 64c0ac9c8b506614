import { useEffect, useState } from 'react'
import type { FileLayout } from '../../../job/lay-out.ts'
import type { SledReport } from '../../../job/sled-report.ts'
import { problemWords } from '../../../papers/problem-words.ts'
import type { Project } from '../../../project/schema/project.ts'
import { useProject, useWork } from '../../work/work-context.ts'

/** The kernel is fetched at the first call, ms. */
const patience = 60_000

export interface ToldBodies {
  readonly report: SledReport | undefined
  /** Why there is none, in words. */
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
        const trouble = (text: string) => setTold({ report: undefined, trouble: text, of: project, layout })
        if (reply.kind === 'stuck') return trouble('Building took too long and was stopped.')
        if (reply.kind === 'broken') return trouble(reply.message)
        if (!reply.value.ok) return trouble(reply.value.problems.map((p) => problemWords(project, p)).join(' '))
        setTold({ report: reply.value.value, trouble: undefined, of: project, layout })
      })
    return () => {
      wanted = false
    }
  }, [desk, project, layout])
  return { report: told?.report, trouble: told?.trouble, busy: told?.of !== project || told.layout !== layout }
}
