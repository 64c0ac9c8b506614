import type { PlanItem } from '../../../geometry/plan/plan.ts'
import type { SledJob } from '../job.ts'
import { nestOf } from '../nests/nest-of.ts'
import { outsideItems } from '../outside.ts'

/**
 * The full cage: a solid body that follows the sled's pieces, out of which each part's nest is cut. What is left
 * between two nests is the bulkhead.
 */
export function fullCage(job: SledJob): PlanItem[] {
  return [...outsideItems(job), ...job.parts.flatMap((p) => nestOf(job, p))]
}
