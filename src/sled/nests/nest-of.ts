import type { PlanItem } from '../../../geometry/plan/plan.ts'
import type { Part } from '../../resolve/assembly.ts'
import { type NestJob, nestJob, type SledJob } from '../job.ts'
import { rare } from '../rare.ts'
import { boardShelf } from './board-shelf.ts'
import { roundPocket } from './cell-pocket.ts'
import { contactNest } from './contact-nest.ts'
import { connectorCup, endCup, ownEnd, speakerCup } from './end-cup.ts'

/** Whether a part lies in a round pocket or cradle, whose radius may be typed. */
export function isPocket(job: NestJob): boolean {
  const { part } = job
  const sector = part.bodies[0]?.shape.kind === 'sector'
  return !part.contact && !sector && part.extent.round && ownEnd(job) === undefined
}

/** Each part brings its own nest: by its kind, its shape, where it lies, and what was typed for it. */
export function nestOf(sled: SledJob, part: Part): PlanItem[] {
  const job = nestJob(sled, part)
  if (part.contact) return contactNest(job)
  const [main] = part.bodies
  if (main?.shape.kind === 'sector') return rare().sectorRecess(job, main.shape)
  if (!part.extent.round) return boardShelf(job, part.kind === 'board' ? 'board shelf' : `${part.kind} pocket`)
  const end = ownEnd(job)
  if (part.kind === 'speaker' && end) return endCup(job, end, speakerCup)
  if (part.kind === 'connector' && end) return endCup(job, end, connectorCup)
  if (end) return rare().serviceFace(job, end)
  if (job.typed?.style === 'cradle') return rare().cellCradle(job)
  return roundPocket(job, part.kind === 'cell' ? 'cell pocket' : `${part.kind} pocket`)
}
