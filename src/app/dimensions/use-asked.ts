import { useEffect, useState } from 'react'
import type { Outcome } from '../../problem/problem.ts'
import type { Project } from '../../project/schema/project.ts'
import type { Far, Reply } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { useProject, useWork } from '../work/work-context.ts'

/** As long as a check may take, ms. */
const patience = 8000

/**
 * What the worker says of the job as it stands, asked anew at every change of it. The last good answer stays while
 * numbers are wrong. `call` must be the same function at every drawing.
 */
export function useAsked<T>(
  lane: string,
  call: (calls: Far<WorkCalls>, project: Project) => Promise<Outcome<T>>,
): T | undefined {
  const { desk } = useWork()
  const project = useProject((p) => p)
  const [found, setFound] = useState<T>()
  useEffect(() => {
    let wanted = true
    const take = (reply: Reply<Outcome<T>>) => {
      if (wanted && reply.kind === 'done' && reply.value.ok) setFound(reply.value.value)
    }
    void desk.ask(lane, patience, (calls) => call(calls, project)).then(take)
    return () => {
      wanted = false
    }
  }, [desk, project, lane, call])
  return found
}
