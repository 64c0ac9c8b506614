import { expose } from 'comlink'
import { fetchQuickPresets } from '../presets/fetch-quick-presets.ts'
import { Bench } from './bench.ts'
import { fetchedOnce } from './fetched-once.ts'
import { LinkBench } from './link-bench.ts'
import type { WorkCalls } from './work-calls.ts'

const press = fetchedOnce(async () => {
  const [{ startPress }, { wasmUrl }] = await Promise.all([
    import('./press.ts'),
    import('../../geometry/kernel/wasm-url.ts'),
  ])
  return startPress(wasmUrl)
})
const presets = fetchedOnce(async () => (await import('../presets/presets.ts')).loadPresets())
const reader = fetchedOnce(async () => (await import('../project/read.ts')).readProject)

/** Data, not code: fetched while the rest of the worker starts. */
const quick = fetchedOnce(async () => new Bench(await fetchQuickPresets(), press))
void quick()
// The quick check waits for nothing that only a full job needs.
const job = fetchedOnce(async () => {
  const [{ JobBench }, { fetchRare }] = await Promise.all([import('./job-bench.ts'), import('../checks/rare.ts')])
  await fetchRare()
  return new JobBench({ presets, press, reader })
})
const links = new LinkBench({ codec: () => import('../job/job-link.ts'), reader })

const calls: WorkCalls = {
  check: async (...a) => (await quick()).check(...a),
  draw: async (...a) => (await quick()).draw(...a),
  solid: async (...a) => (await quick()).solid(...a),
  file: async (...a) => (await quick()).file(...a),
  judge: async (...a) => (await job()).judge(...a),
  look: async (...a) => (await job()).look(...a),
  strips: async (...a) => (await job()).strips(...a),
  cross: async (...a) => (await job()).cross(...a),
  solids: async (...a) => (await job()).solids(...a),
  ways: async (...a) => (await job()).ways(...a),
  make: async (...a) => (await job()).make(...a),
  report: async (...a) => (await job()).report(...a),
  read: async (...a) => (await job()).read(...a),
  dimensions: async (...a) => (await job()).dimensions(...a),
  compare: async (...a) => (await job()).compare(...a),
  settings: async (...a) => (await job()).settings(...a),
  choices: async () => (await job()).choices(),
  readings: async (...a) => (await job()).readings(...a),
  fixes: async (...a) => (await job()).fixes(...a),
  mend: async (...a) => (await quick()).mend(...a),
  grow: async (...a) => (await quick()).grow(...a),
  link: (...a) => links.link(...a),
  unlink: (...a) => links.unlink(...a),
}
expose(calls)
