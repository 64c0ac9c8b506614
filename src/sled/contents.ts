import type { Region } from '../../geometry/region/region.ts'
import { realise } from '../body/realise.ts'
import { at } from '../quantity/level.ts'
import { nestJob, type SledJob } from './job.ts'
import { ownEnd } from './nests/end-cup.ts'

/** The cross-sections of everything on the sled, at its largest, whatever its height; what looks out of an end left out. */
export function contentRegions(job: SledJob): Region[] {
  return job.parts
    .filter((p) => ownEnd(nestJob(job, p)) === undefined)
    .flatMap((p) => p.bodies.map((b) => realise(b, (q, tight) => (tight === 0 ? q.nominal : at(q, tight, 'worst')))))
    .flatMap((s) => (s.kind === 'prism' ? [s.region] : []))
}
