import type { PlanItem } from '../../../geometry/plan/plan.ts'
import type { Sector } from '../../body/body.ts'
import { least, most } from '../../quantity/quantity.ts'
import { derived } from '../dimensions.ts'
import { nestGap } from '../fit.ts'
import { axialSlack, beyond, type NestJob, outerRadius } from '../job.ts'

/** A recess for a ring sector, such as a switch tower: cut about the axis and open to the outside, where it is laid in. */
export function sectorRecess(job: NestJob, s: Sector): PlanItem[] {
  const { part, sled } = job
  const gap = nestGap(job)
  const slack = axialSlack(job)
  const [z0, z1] = [least(part.ends.rear) - slack, most(part.ends.blade) + slack]
  const floor = derived('floor', Math.max(0, least(s.rIn) - gap.value), job.path('gap'), 'innermost part less gap')
  // The gap to the sides is least at the floor.
  const aside = (Math.asin(Math.min(1, gap.value / Math.max(least(s.rIn), gap.value))) * 180) / Math.PI
  const half = derived('half angle', most(s.half) + aside, job.path('gap'), 'widest part plus gap on both sides', '°')
  return [
    {
      id: `${part.id}/recess`,
      op: 'cut',
      by: part.id,
      nest: `${part.kind} recess`,
      dimensions: [gap, floor, half],
      solid: {
        shape: 'ring-sector',
        z0,
        z1,
        rIn: floor.value,
        rOut: outerRadius(sled, z0, z1) + beyond,
        theta: s.theta,
        half: Math.min(180, half.value),
      },
    },
  ]
}
