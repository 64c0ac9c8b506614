import { expose } from 'comlink'
import boards from '../../presets/boards.json?url'
import cells from '../../presets/cells.json?url'
import contacts from '../../presets/contacts.json?url'
import processes from '../../presets/processes.json?url'
import speakers from '../../presets/speakers.json?url'
import wires from '../../presets/wires.json?url'
import { presetsOf } from '../presets/registry.ts'
import { toolsFile } from '../presets/tools-file.ts'
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
const quick = fetchedOnce(async () => {
  const files = await Promise.all([boards, cells, contacts, processes, speakers, wires].map(fetched))
  return new Bench(presetsOf([...files, toolsFile]), press)
})
void quick()
// The quick check waits for nothing that only a full job needs.
const job = fetchedOnce(async () => {
  const [{ JobBench }, { fetchRare }] = await Promise.all([import('./job-bench.ts'), import('../sled/rare.ts')])
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

async function fetched(url: string): Promise<{ readonly entries: readonly unknown[] }> {
  const response = await fetch(url)
  if (!response.ok) throw new Error(`${url}: ${response.status}`)
  return (await response.json()) as { readonly entries: readonly unknown[] }
}
