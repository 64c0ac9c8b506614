import { useEffect, useRef, useState } from 'react'
import type { Finding } from '../../checks/finding.ts'
import type { Outcome, Problem } from '../../problem/problem.ts'
import type { Project } from '../../project/schema/project.ts'
import type { Desk, Reply } from '../../worker/desk.ts'
import type { JobLook, JobReport, JobViews } from '../../worker/job-bench.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { withFixes } from '../findings/with-fixes.ts'
import { askedAgain } from './asked-again.ts'
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
  /** Whether what might help is still being tried. */
  readonly trying: boolean
}

const fails = (f: Finding): boolean => f.status === 'clash' || f.status === 'unsure'

/** No check is worth waiting for longer, ms; a usual one takes some 10, the first on a busy machine far more. */
const patience = 20_000
/** All fixes take longer than a check on a busy machine: a second try has twice the time, ms. */
const fixPatiences = [patience, 2 * patience]
/** The drawings alone are quick; what is lost is lost with a worker that another request ended, ms. */
const lookPatiences = [patience, patience, patience]
const nothing: Judged = {
  stand: 'working',
  report: undefined,
  views: undefined,
  problems: [],
  trouble: undefined,
  trying: false,
}

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
          const mending = reply.kind === 'done' && reply.value.ok && reply.value.value.findings.some(fails)
          setJudged((before) => ({ ...after(before, reply), trying: mending }))
          if (mending) mend(project)
        })
    }
    /** Which numbers help is tried after the verdict is out. */
    const mend = (project: Project) => {
      const current = () => wanted && project === job.get()
      void askedAgain((ms) => desk.ask('fixes', ms, (calls) => calls.fixes(project)), fixPatiences, current).then(
        (reply) => {
          // Where the job has changed, or is judged anew, whoever comes after says what is being tried.
          if (!reply || reply.kind === 'overtaken') return
          // Another request had the worker judge another job meanwhile.
          if (reply.kind === 'done' && !reply.value) return mend(project)
          const fixes = (reply.kind === 'done' ? reply.value : undefined) ?? {}
          setJudged(({ report, ...before }) => ({
            ...before,
            trying: false,
            report: report && { ...report, findings: withFixes(report.findings, fixes) },
          }))
        },
      )
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
      const current = () => wanted && project === job.get() && look.current === next
      void askedAgain((ms) => desk.ask('look', ms, (calls) => calls.look(project, next)), lookPatiences, current).then(
        (reply) => {
          if (reply?.kind !== 'done' || !reply.value.ok) return
          const views = reply.value.value
          setJudged((before) => ({ ...before, views }))
        },
      )
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
    ? { ...nothing, stand: 'answered', report: value.value, views: value.value.views }
    : { ...before, stand: 'wrong', problems: value.problems, trouble: undefined }
}
