import { useEffect, useMemo, useRef, useState } from 'react'
import type { QuickInput } from '../../job/quick.ts'
import type { Problem } from '../../problem/problem.ts'
import type { Bench, Drawings, Look, QuickReport } from '../../worker/bench.ts'
import type { Desk, Reply } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { withFixes } from '../findings/with-fixes.ts'
import type { Lacking, Reading } from './read-form.ts'

/** How the check of the form stands. */
export type Check =
  | Lacking
  | { readonly kind: 'working' }
  | { readonly kind: 'wrong'; readonly problems: readonly Problem[] }
  | { readonly kind: 'answered'; readonly report: QuickReport }
  | { readonly kind: 'stopped'; readonly text: string }

export interface QuickCheck {
  readonly check: Check
  /** The last answer there was: still on the sheet while newer numbers are not complete, and marked as old then. */
  readonly report: QuickReport | undefined
  readonly drawings: Drawings | undefined
  /** Whether what might help is still being tried. */
  readonly trying: boolean
  readonly retry: () => void
}

/** A check is not worth waiting for longer, ms; a usual one takes some 30, the first on a busy machine far more. */
const patience = 20_000

interface Answered {
  readonly key: string
  readonly check: Check
}

/** Asks the worker at every change; the latest request wins. */
export function useQuickCheck(desk: Desk<WorkCalls>, reading: Reading, look: Look): QuickCheck {
  const input = reading.kind === 'ready' ? reading.input : undefined
  const key = input ? JSON.stringify(input) : undefined
  const [answered, setAnswered] = useState<Answered>()
  const [report, setReport] = useState<QuickReport>()
  const [drawings, setDrawings] = useState<Drawings>()
  const [tries, setTries] = useState(0)
  /** The numbers for which it is being tried what helps. */
  const [trying, setTrying] = useState<string>()
  const newest = useRef(look)
  useEffect(() => {
    newest.current = look
  }, [look])

  useEffect(() => {
    if (key === undefined) return
    let wanted = true
    const asked: QuickInput = JSON.parse(key)
    void desk
      .ask('check', patience, (bench) => bench.check(asked, newest.current))
      .then((reply) => {
        const check = wanted ? checkOf(reply) : undefined
        if (!check) return
        setAnswered({ key, check })
        if (check.kind !== 'answered') return
        setReport(check.report)
        setDrawings(check.report)
        setTrying(undefined)
        if (check.report.findings.every((f) => f.status === 'clear' || f.status === 'advice')) return
        setTrying(key)
        void desk
          .ask('mend', patience, (bench) => bench.mend(asked))
          .then((mended) => {
            const fixes = wanted && mended.kind === 'done' ? mended.value : undefined
            if (wanted && mended.kind !== 'overtaken') setTrying(undefined)
            if (!fixes) return
            const report = { ...check.report, findings: withFixes(check.report.findings, fixes) }
            setAnswered({ key, check: { ...check, report } })
            setReport(report)
          })
      })
    return () => {
      wanted = false
    }
  }, [desk, key, tries])

  // A change of the numbers brings its drawings with it; here only the eye has moved.
  const { theta, z } = look
  const drawn = useRef(look)
  const current = useRef(key)
  useEffect(() => {
    current.current = key
  }, [key])
  useEffect(() => {
    const before = drawn.current
    drawn.current = { theta, ...(z === undefined ? {} : { z }) }
    if (current.current === undefined || (before.theta === theta && before.z === z)) return
    let wanted = true
    const asked: QuickInput = JSON.parse(current.current)
    void desk
      .ask('draw', patience, (bench) => bench.draw(asked, drawn.current))
      .then((reply) => {
        if (wanted && reply.kind === 'done' && reply.value.ok) setDrawings(reply.value.value)
      })
    return () => {
      wanted = false
    }
  }, [desk, theta, z])

  const check = useMemo((): Check => {
    if (reading.kind === 'lacking') return reading
    return answered && answered.key === key ? answered.check : { kind: 'working' }
  }, [reading, answered, key])
  return {
    check,
    report,
    drawings,
    trying: trying !== undefined && trying === key,
    retry: () => setTries((n) => n + 1),
  }
}

function checkOf(reply: Reply<Awaited<ReturnType<Bench['check']>>>): Check | undefined {
  if (reply.kind === 'overtaken') return undefined
  if (reply.kind === 'stuck')
    return { kind: 'stopped', text: `The check took longer than ${reply.afterMs / 1000} s and was stopped.` }
  if (reply.kind === 'broken') return { kind: 'stopped', text: `The check could not be made (${reply.message}).` }
  return reply.value.ok
    ? { kind: 'answered', report: reply.value.value }
    : { kind: 'wrong', problems: reply.value.problems }
}
