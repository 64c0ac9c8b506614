import type { PlanItem } from '../../../geometry/plan/plan.ts'
import { dimension } from '../dimensions.ts'
import { beyond, type NestJob, outerRadius } from '../job.ts'
import { blockFacing, rodItem, seenFacing } from '../round.ts'
import { ejectionNotch } from './ejection-notch.ts'
import { roundNest } from './round-nest.ts'

/**
 * A round pocket along the axis, open to one side so that the part can be laid in. It reaches to the faces the
 * contacts stand on; without a contact it leaves the axial gap at that end. A typed opening width of 0 closes it.
 */
export function roundPocket(job: NestJob, nest: string): PlanItem[] {
  const { part, typed, sled } = job
  const { c, z0, z1, gap, radius, opening } = roundNest(job)
  const wide = 'as wide as the pocket: the part drops in'
  const width = dimension('opening width', typed?.openingWidth, 2 * radius.value, job.path('openingWidth'), wide)
  const rest = { op: 'cut' as const, by: part.id, nest, dimensions: [gap, radius, width, opening] }
  const pocket = rodItem(rest, `${part.id}/pocket`, c, radius.value, z0, z1)
  if (width.value <= 0) return [pocket]
  const { v, aside } = seenFacing(c, opening.value)
  const top = outerRadius(sled, z0, z1) + beyond
  const w = Math.min(width.value, 2 * radius.value)
  const mouth: PlanItem = {
    ...rest,
    id: `${part.id}/opening`,
    solid: blockFacing(opening.value, aside, v, Math.max(top, v + 1), w, z0, z1),
  }
  return [pocket, mouth, ...ejectionNotch(job, { c, z0, z1, gap, radius, opening })]
}
