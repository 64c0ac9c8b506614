import { useEffect, useState } from 'react'
import type { PushedTo } from '../../papers/pushed-cross.ts'
import type { JobCross, JobStrips } from '../../worker/job-bench.ts'
import { askedAgain } from '../work/asked-again.ts'
import { useProject, useView, useWork } from '../work/work-context.ts'

/** Longer than any drawing takes, ms; each try. */
const patiences = [20_000, 20_000, 20_000]

/** Gap strip and map follow the verdict: they are asked for when it has come, and the latest counts. */
export function useStrips(): JobStrips | undefined {
  const { desk, job, judged } = useWork()
  const state = useView((v) => v.state)
  const [strips, setStrips] = useState<JobStrips>()
  const { report } = judged
  useEffect(() => {
    if (!report) return
    let wanted = true
    const project = job.get()
    void askedAgain(
      (patience) => desk.ask('strips', patience, (calls) => calls.strips(project, state)),
      patiences,
      () => wanted,
    ).then((reply) => reply?.kind === 'done' && reply.value.ok && setStrips(reply.value.value))
    return () => {
      wanted = false
    }
  }, [desk, job, report, state])
  return strips
}

/** The cross-section at a height, as the job now stands; of what is pushed in, where it has got to. */
export function useCross(z: number, pushed: PushedTo | undefined): JobCross | undefined {
  const { desk, judged } = useWork()
  const project = useProject((p) => p)
  const state = useView((v) => v.state)
  const [cross, setCross] = useState<JobCross>()
  // Before anything is judged nobody knows which height to look at.
  const known = judged.stand !== 'wrong' && judged.views !== undefined
  useEffect(() => {
    if (!known) return
    let wanted = true
    void askedAgain(
      (patience) => desk.ask('cross', patience, (calls) => calls.cross(project, z, state, pushed)),
      patiences,
      () => wanted,
    ).then((reply) => reply?.kind === 'done' && reply.value.ok && setCross(reply.value.value))
    return () => {
      wanted = false
    }
  }, [desk, project, z, state, pushed, known])
  return cross
}
