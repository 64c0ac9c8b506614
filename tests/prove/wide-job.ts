import type { ProjectInput } from '../../src/project/schema/project.ts'
import { type PlannedJob, plannedJob, randomJob } from './random-job.ts'
import { type Rng, rngOf } from './rng.ts'
import { traits } from './wide-traits.ts'

/** Seeds from here on are wide jobs. */
export const firstWide = 100_001

/** The job of a seed: an everyday one, or, from `firstWide` on, a wide one. */
export const jobOf = (seed: number): ProjectInput => (seed < firstWide ? randomJob(seed) : wideJob(seed))

/** What a trait changes, with choices of its own. */
export interface Widened extends PlannedJob {
  readonly rng: Rng
}

/**
 * A random job with one to three traits that everyday jobs seldom have: doubts of whole millimetres and degrees, a sled
 * off its clock angle, things on the wall beside it, bores far beside the axis, short tapers, wide parts, towers.
 */
function wideJob(seed: number): ProjectInput {
  const planned = plannedJob(seed)
  const rng = rngOf(seed + 0x9e3779b1)
  const left = [...traits]
  for (let n = rng.whole(1, 3); n > 0; n--) {
    const [trait] = left.splice(rng.whole(0, left.length - 1), 1)
    trait?.({ ...planned, rng })
  }
  return planned.job
}
