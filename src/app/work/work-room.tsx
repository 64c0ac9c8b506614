import { useEffect, useState } from 'react'
import type { Desk } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { createJobStore, type JobStore } from './job-store.ts'
import WorkPage from './work-page.tsx'

/** Finds the job that the address names and puts it on the table. */
export default function WorkRoom({ desk, address }: { readonly desk: Desk<WorkCalls>; readonly address: string }) {
  const [job, setJob] = useState<JobStore>()
  useEffect(() => {
    let wanted = true
    void found(desk, address).then((store) => wanted && setJob(store))
    return () => {
      wanted = false
    }
  }, [desk, address])
  return job && <WorkPage desk={desk} job={job} />
}

async function found(desk: Desk<WorkCalls>, address: string): Promise<JobStore | undefined> {
  const { demos } = await import('../../job/demos/index.ts')
  const demo = demos.find((d) => `demo/${d.name}` === address)
  const reply = demo && (await desk.ask('read', 20_000, (calls) => calls.read(JSON.stringify(demo.project))))
  return reply?.kind === 'done' && reply.value.ok ? createJobStore(reply.value.value.project) : undefined
}
