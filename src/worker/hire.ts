import { wrap } from 'comlink'
import type { Bench } from './bench.ts'
import type { Far, Hand } from './desk.ts'

/** A new worker at the bench. */
export function hireBench(): Hand<Bench> {
  const worker = new Worker(new URL('./bench.worker.ts', import.meta.url), { type: 'module' })
  return {
    // comlink's own type takes the unions of an outcome apart.
    calls: wrap(worker) as unknown as Far<Bench>,
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
