import { useEffect, useState } from 'react'
import type { Outcome } from '../../problem/problem.ts'
import type { Reply } from '../../worker/desk.ts'
import type { JobCross, JobStrips } from '../../worker/job-bench.ts'
import { useProject, useView, useWork } from '../work/work-context.ts'

/** Longer than any drawing takes, ms. */
const patience = 20_000

/** A worker that is ended takes drawings with it that were not to blame: they are asked for anew, so many times. */
const attempts = 3

/** What was drawn; undefined where there is nothing to draw, something newer is wanted, or no attempt came through. */
async function untilDrawn<T>(ask: () => Promise<Reply<Outcome<T>>>, wanted: () => boolean): Promise<T | undefined> {
  for (let tried = 0; tried < attempts && wanted(); tried += 1) {
    const reply = await ask()
    if (reply.kind === 'overtaken') return undefined
    if (reply.kind === 'done') return reply.value.ok ? reply.value.value : undefined
  }
  return undefined
}

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
    const ask = () => desk.ask('strips', patience, (calls) => calls.strips(project, state))
    void untilDrawn(ask, () => wanted).then((drawn) => wanted && drawn && setStrips(drawn))
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
  // Before anything is judged nobody knows which height to look at.
  const known = judged.stand !== 'wrong' && judged.views !== undefined
  useEffect(() => {
    if (!known) return
    let wanted = true
    const ask = () => desk.ask('cross', patience, (calls) => calls.cross(project, z, state))
    void untilDrawn(ask, () => wanted).then((drawn) => wanted && drawn && setCross(drawn))
    return () => {
      wanted = false
    }
  }, [desk, project, z, state, known])
  return cross
}
