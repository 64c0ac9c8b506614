import { expose } from 'comlink'
import { quickPresets } from '../presets/quick-presets.ts'
import { Bench } from './bench.ts'
import { fetchedOnce } from './fetched-once.ts'
import { JobBench } from './job-bench.ts'
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

const quick = new Bench(quickPresets(), press)
const job = new JobBench({ presets, press, reader })
const links = new LinkBench({ codec: () => import('../job/job-link.ts'), reader })

const calls: WorkCalls = {
  check: (...a) => quick.check(...a),
  draw: (...a) => quick.draw(...a),
  solid: (...a) => quick.solid(...a),
  file: (...a) => quick.file(...a),
  judge: (...a) => job.judge(...a),
  look: (...a) => job.look(...a),
  build: (...a) => job.build(...a),
  solids: (...a) => job.solids(...a),
  ways: (...a) => job.ways(...a),
  make: (...a) => job.make(...a),
  read: (...a) => job.read(...a),
  dimensions: (...a) => job.dimensions(...a),
  compare: (...a) => job.compare(...a),
  settings: (...a) => job.settings(...a),
  choices: () => job.choices(),
  grow: (...a) => quick.grow(...a),
  link: (...a) => links.link(...a),
  unlink: (...a) => links.unlink(...a),
}
expose(calls)
