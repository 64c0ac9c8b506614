import { useEffect, useRef, useState } from 'react'
import type { Finding } from '../../checks/finding.ts'
import type { Outcome, Problem } from '../../problem/problem.ts'
import type { Project } from '../../project/schema/project.ts'
import type { Desk, Reply } from '../../worker/desk.ts'
import type { JobLook, JobReport, JobViews } from '../../worker/job-bench.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { withFixes } from '../findings/with-fixes.ts'
import type { JobStore } from './job-store.ts'
import type { View, ViewStore } from './view-store.ts'

/** How the job stands. What was last known stays on the table while newer numbers are wrong, and is marked as old. */
export interface Judged {
  readonly stand: 'working' | 'answered' | 'wrong' | 'stopped'
  readonly report: JobReport | undefined
  /** The drawings of the newest answer, as the eye has them now. */
  readonly views: JobViews | undefined
  /** What is wrong with the numbers. */
  readonly problems: readonly Problem[]
  /** Why there was no answer at all. */
  readonly trouble: string | undefined
}

const fails = (f: Finding): boolean => f.status === 'clash' || f.status === 'unsure'

/** No check is worth waiting for longer, ms; a usual one takes some 10, the first on a busy machine far more. */
const patience = 20_000
const nothing: Judged = { stand: 'working', report: undefined, views: undefined, problems: [], trouble: undefined }

/** Asks the worker at every change of the job, and for the drawings alone where only the eye has moved. */
export function useJudged(
  desk: Desk<WorkCalls>,
  job: JobStore,
  view: ViewStore,
): Judged & { readonly retry: () => void } {
  const [judged, setJudged] = useState(nothing)
  const [tries, setTries] = useState(0)
  const look = useRef<JobLook>(lookOf(view.getState()))

  useEffect(() => {
    let wanted = true
    const judge = () => {
      const project = job.get()
      void desk
        .ask('judge', patience, (calls) => calls.judge(project, look.current))
        .then((reply) => {
          if (!wanted || project !== job.get()) return
          setJudged((before) => after(before, reply))
          if (reply.kind === 'done' && reply.value.ok && reply.value.value.findings.some(fails)) mend(project)
        })
    }
    /** Which numbers help is tried after the verdict is out. */
    const mend = (project: Project) => {
      void desk
        .ask('fixes', patience, (calls) => calls.fixes(project))
        .then((reply) => {
          const fixes = reply.kind === 'done' ? reply.value : undefined
          if (!fixes || !wanted || project !== job.get()) return
          setJudged((before) =>
            before.report
              ? { ...before, report: { ...before.report, findings: withFixes(before.report.findings, fixes) } }
              : before,
          )
        })
    }
    judge()
    const stop = job.subscribe(judge)
    return () => {
      wanted = false
      stop()
    }
  }, [desk, job, tries])

  useEffect(() => {
    let wanted = true
    const stop = view.subscribe((now) => {
      const next = lookOf(now)
      if (same(next, look.current)) return
      look.current = next
      const project = job.get()
      void desk
        .ask('look', patience, (calls) => calls.look(project, next))
        .then((reply) => {
          if (!wanted || reply.kind !== 'done' || !reply.value.ok || project !== job.get()) return
          const views = reply.value.value
          setJudged((before) => ({ ...before, views }))
        })
    })
    return () => {
      wanted = false
      stop()
    }
  }, [desk, job, view])

  return { ...judged, retry: () => setTries((n) => n + 1) }
}

const lookOf = ({ theta, state }: View): JobLook => ({ theta, ...(state !== undefined && { state }) })

const same = (a: JobLook, b: JobLook): boolean => a.theta === b.theta && a.state === b.state

function after(before: Judged, reply: Reply<Outcome<JobReport>>): Judged {
  if (reply.kind === 'overtaken') return before
  if (reply.kind === 'stuck')
    return {
      ...before,
      stand: 'stopped',
      trouble: `The check took longer than ${reply.afterMs / 1000} s and was stopped.`,
    }
  if (reply.kind === 'broken')
    return { ...before, stand: 'stopped', trouble: `The check could not be made (${reply.message}).` }
  const { value } = reply
  return value.ok
    ? { stand: 'answered', report: value.value, views: value.value.views, problems: [], trouble: undefined }
    : { ...before, stand: 'wrong', problems: value.problems, trouble: undefined }
}
