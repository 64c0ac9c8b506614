import { beforeAll, describe, expect, it } from 'vitest'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import type { Kernel } from '../../../geometry/kernel/manifold.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import { judgeJob } from '../../prove/judge.ts'
import { jobOf } from '../../prove/wide-job.ts'

/**
 * Random jobs, each judged by the product and by the truth (computed here: solids with true rounds pushed along the
 * path, in the corners and in random draws of all that is not sure).
 */
export function provesJobs(seeds: readonly number[]): void {
  let kernel: Kernel
  beforeAll(async () => {
    kernel = await loadKernel()
  })
  describe('no verdict is false', () => {
    it.each(seeds)('random job, seed %i', (seed) => {
      const judged = judgeJob(jobOf(seed), loadPresets(), kernel)
      // A few random jobs are refused for a size nobody has; how many is counted by the controls.
      if (typeof judged === 'string') expect(judged).toMatch(/suspicious|unknown-reference|outside-hilt|contradiction/)
      else expect(judged.faults).toEqual([])
    })
  })
}

export const seedsFrom = (first: number, count: number): number[] => Array.from({ length: count }, (_, i) => first + i)
