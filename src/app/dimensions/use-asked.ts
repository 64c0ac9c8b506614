import { useEffect, useState } from 'react'
import type { Outcome } from '../../problem/problem.ts'
import type { Project } from '../../project/schema/project.ts'
import type { Far } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { askedAgain } from '../work/asked-again.ts'
import { useProject, useWork } from '../work/work-context.ts'

/** As long as a check may take, ms; each try may take twice as long as the one before. */
const patiences = [8000, 16_000, 32_000]

/**
 * What the worker says of the job as it stands, asked anew at every change of it. The last good answer stays while
 * numbers are wrong. Where the worker was ended, perhaps for another's request, it is asked again. `call` must be the
 * same function at every drawing.
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
    void askedAgain(
      (patience) => desk.ask(lane, patience, (calls) => call(calls, project)),
      patiences,
      () => wanted,
    ).then((reply) => reply?.kind === 'done' && reply.value.ok && setFound(reply.value.value))
    return () => {
      wanted = false
    }
  }, [desk, project, lane, call])
  return found
}
