import { loadKernel } from '../../geometry/kernel/load.ts'
import { fetchRare } from '../../src/checks/rare.ts'
import { loadPresets } from '../../src/presets/presets.ts'
import { judgeJob } from './judge.ts'
import type { Record } from './record.ts'
import { jobOf } from './wide-job.ts'

/** One of the processes that judge jobs: a seed comes in, a record goes out. */
await fetchRare()
const kernel = await loadKernel()
const presets = loadPresets()

process.on('message', (seed: number) => process.send?.(recordOf(seed)))
process.send?.('ready')

function recordOf(seed: number): Record {
  try {
    const judged = judgeJob(jobOf(seed), presets, kernel)
    if (typeof judged === 'string') return { seed, verdict: 'refused', why: judged }
    const { verdict, demands, faults, cautions, remarks } = judged
    return { seed, verdict, demands, faults, cautions: cautions.length, remarks }
  } catch (thrown) {
    return {
      seed,
      verdict: 'crashed',
      why: thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown),
    }
  }
}
