import type { PlanItem } from '../../../geometry/plan/plan.ts'
import type { Part } from '../../resolve/assembly.ts'
import { derived } from '../dimensions.ts'
import { beyond, nestJob, outerRadius, type SledJob } from '../job.ts'
import { shelfTop } from '../nests/board-shelf.ts'
import { ownEnd } from '../nests/end-cup.ts'
import { nestOf } from '../nests/nest-of.ts'
import { openSide, pocketSpan } from '../nests/round-nest.ts'
import { outsideItems } from '../outside.ts'
import { blockFacing, seenFacing } from '../round.ts'

/**
 * The open cradle: a back that carries everything, with a wall between bays and at the ends. Beside each part the
 * body is gone above the part's middle; a cell in a cradle brings its own bay and arms.
 */
export function openCradle(job: SledJob): PlanItem[] {
  const nests = job.parts.flatMap((p) => nestOf(job, p))
  const bays = job.parts.flatMap((p) => bay(job, p))
  return [...outsideItems(job), ...nests, ...bays]
}

/** The bay of a part that lies in the body: everything on its open side above its middle, over its own length. */
function bay(sled: SledJob, part: Part): PlanItem[] {
  const job = nestJob(sled, part)
  if (part.contact || ownEnd(job) !== undefined || job.typed?.style === 'cradle') return []
  const facing = part.extent.round ? (job.typed?.opening ?? openSide(job)) : part.across.facing
  const { z0, z1 } = pocketSpan(job)
  const { v, aside } = seenFacing({ x: part.across.x.nominal, y: part.across.y.nominal }, facing)
  const top = outerRadius(sled.sled, z0, z1) + beyond
  // A shelf keeps its sides up to its lips; anything else lies in the body to its middle.
  const height = part.extent.round ? v : Math.max(v, shelfTop(job))
  const plane = derived('bay plane', height, `${part.id}/at/across`, 'middle of the part, or above its lips')
  return [
    {
      id: `${part.id}/bay`,
      op: 'cut',
      by: part.id,
      nest: 'bay',
      dimensions: [plane],
      solid: blockFacing(facing, aside, height, Math.max(top, height + 1), 4 * top, z0, z1),
    },
  ]
}
