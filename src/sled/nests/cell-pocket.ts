import type { PlanItem } from '../../../geometry/plan/plan.ts'
import type { Point } from '../../../geometry/region/point.ts'
import { dimension } from '../dimensions.ts'
import { beyond, cannot, drawnAt, innerRadius, type NestJob, outerRadius } from '../job.ts'
import { rare } from '../rare.ts'
import { blockFacing, rodItem, seenFacing } from '../round.ts'
import { isNotched, roundNest } from './round-nest.ts'

/** Whether nothing leads into a closed pocket: no split across it, no end or side it breaks through, no bay above it. */
function shutIn({ sled }: NestJob, c: Point, r: number, z0: number, z1: number): boolean {
  const { construction, splits = [] } = sled.input
  if (construction !== undefined && construction !== 'full-cage') return false
  const across = splits.some((s) => {
    const z = drawnAt(sled, 'splits', s.id, 'z')
    return z !== undefined && z > z0 && z < z1
  })
  const inside = z0 > sled.ends.rear.nominal && z1 < sled.ends.blade.nominal
  return !across && inside && Math.hypot(c.x, c.y) + r < innerRadius(sled, z0, z1)
}

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
  const notch = isNotched(job) ? rare().ejectionNotch(job, { c, z0, z1, gap, radius, opening }) : []
  if (width.value <= 0) {
    if (shutIn(job, c, radius.value, z0, z1))
      cannot(
        job,
        width.path,
        '0 mm, closed all round',
        'an opening, or a split across the pocket',
        `As wide as the pocket, ${(2 * radius.value).toFixed(2)}, lets the part in.`,
        2 * radius.value,
      )
    return [pocket, ...notch]
  }
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
