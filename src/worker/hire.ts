import { wrap } from 'comlink'
import type { Far, Hand } from './desk.ts'
import type { WorkCalls } from './work-calls.ts'

/** A new worker at the bench. */
export function hireBench(): Hand<WorkCalls> {
  const worker = new Worker(new URL('./bench.worker.ts', import.meta.url), { type: 'module' })
  return {
    // comlink's own type takes the unions of an outcome apart.
    calls: wrap(worker) as unknown as Far<WorkCalls>,
    end: () => worker.terminate(),
    onFailure: (tell) => {
      worker.addEventListener('error', (event) => {
        event.preventDefault()
        tell(event.message || 'the worker could not be started')
      })
      worker.addEventListener('messageerror', () => tell('a message of the worker could not be read'))
    },
  }
}
