import { useEffect, useRef, useState } from 'react'
import { type Outcome, problemText } from '../../problem/problem.ts'
import type { Project } from '../../project/schema/project.ts'
import type { Far, Reply } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { useProject, useWork } from './work-context.ts'

/** What the worker said of the job, for views that may lag behind the typing. */
export interface Asked<T> {
  /** The newest answer there is. */
  readonly value: T | undefined
  /** Why there is none of the job as it stands. */
  readonly trouble: string | undefined
  /** Whether a newer one is on its way. */
  readonly working: boolean
}

interface Got<T> {
  readonly of: Project | undefined
  readonly value: T | undefined
  readonly trouble: string | undefined
}

/** Hands rest so long before something dear is asked, ms: a verdict must not wait for it. */
const rest = 350
/** The kernel is fetched at the first call, perhaps over a slow line, ms. */
const patience = 60_000

/**
 * Asks the worker something dear about the job, whenever it has changed and then rested; nothing while `wanted` is
 * false. `call` must be the same function as long as it asks the same.
 */
export function useAsked<T>(
  lane: string,
  wanted: boolean,
  call: (calls: Far<WorkCalls>, project: Project) => Promise<Outcome<T>>,
): Asked<T> {
  const { desk } = useWork()
  const project = useProject((p) => p)
  const [got, setGot] = useState<Got<T>>({ of: undefined, value: undefined, trouble: undefined })
  const before = useRef(false)
  useEffect(() => {
    if (!wanted) return
    let current = true
    const ask = () => {
      before.current = true
      void desk
        .ask(lane, patience, (calls) => call(calls, project))
        .then((reply) => current && reply.kind !== 'overtaken' && setGot((old) => after(old, project, reply)))
    }
    const timer = setTimeout(ask, before.current ? rest : 0)
    return () => {
      current = false
      clearTimeout(timer)
    }
  }, [desk, lane, wanted, call, project])
  return { value: got.value, trouble: got.trouble, working: wanted && got.of !== project }
}

function after<T>(old: Got<T>, of: Project, reply: Reply<Outcome<T>>): Got<T> {
  if (reply.kind === 'stuck') return { ...old, of, trouble: 'It took too long.' }
  if (reply.kind === 'broken') return { ...old, of, trouble: `It could not be made (${reply.message}).` }
  if (reply.kind === 'overtaken') return old
  const { value } = reply
  return value.ok
    ? { of, value: value.value, trouble: undefined }
    : { ...old, of, trouble: value.problems.map(problemText).join(' ') }
}
