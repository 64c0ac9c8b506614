import type { PlanItem } from '../../../geometry/plan/plan.ts'
import { dimension } from '../dimensions.ts'
import { beyond, cannot, type NestJob, outerRadius } from '../job.ts'
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
  const notch = ejectionNotch(job, { c, z0, z1, gap, radius, opening })
  if (width.value <= 0) return [pocket, ...notch]
  const widest = 2 * radius.value
  if (width.value > widest + 0.001)
    cannot(
      job,
      width.path,
      `${width.value} mm`,
      `at most the pocket's own width, ${widest.toFixed(2)} mm`,
      `The nearest that works is ${widest.toFixed(2)}; left out, it is that wide.`,
      width.value - widest,
    )
  const { v, aside } = seenFacing(c, opening.value)
  const top = outerRadius(sled, z0, z1) + beyond
  const w = Math.min(width.value, widest)
  const mouth: PlanItem = {
    ...rest,
    id: `${part.id}/opening`,
    solid: blockFacing(opening.value, aside, v, Math.max(top, v + 1), w, z0, z1),
  }
  return [pocket, mouth, ...notch]
}
