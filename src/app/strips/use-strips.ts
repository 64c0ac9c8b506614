import { useEffect, useState } from 'react'
import type { JobCross, JobStrips } from '../../worker/job-bench.ts'
import { useProject, useView, useWork } from '../work/work-context.ts'

/** Longer than any drawing takes, ms. */
const patience = 8000

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
    void desk
      .ask('strips', patience, (calls) => calls.strips(project, state))
      .then((reply) => {
        if (wanted && reply.kind === 'done' && reply.value.ok) setStrips(reply.value.value)
      })
    return () => {
      wanted = false
    }
  }, [desk, job, report, state])
  return strips
}

/** The cross-section at a height, as the job now stands. */
export function useCross(z: number): JobCross | undefined {
  const { desk, judged } = useWork()
  const project = useProject((p) => p)
  const state = useView((v) => v.state)
  const [cross, setCross] = useState<JobCross>()
  const known = judged.stand !== 'wrong'
  useEffect(() => {
    if (!known) return
    let wanted = true
    void desk
      .ask('cross', patience, (calls) => calls.cross(project, z, state))
      .then((reply) => {
        if (wanted && reply.kind === 'done' && reply.value.ok) setCross(reply.value.value)
      })
    return () => {
      wanted = false
    }
  }, [desk, project, z, state, known])
  return cross
}
