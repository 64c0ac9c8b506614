import type { PlanItem } from '../../../geometry/plan/plan.ts'
import { least, most } from '../../quantity/quantity.ts'
import { derived, dimension } from '../dimensions.ts'
import { nestGap } from '../fit.ts'
import { beyond, type NestJob, outerRadius, setting } from '../job.ts'

/**
 * A shelf for a flat part: cut from its lowest board face outwards along the way it faces, so that it is laid in from
 * outside. Under the board's edges a rail stays; what stands on the underside gets its own room between the rails.
 */
export function boardShelf(job: NestJob, nest = 'board shelf'): PlanItem[] {
  const { part, sled, typed } = job
  const gap = nestGap(job)
  const rail = dimension('rail', typed?.lip, 1.2, job.path('lip'), 'common practice, no source')
  const slack = setting(job, 'axial-gap') / 2
  const [z0, z1] = [least(part.ends.rear) - slack, most(part.ends.blade) + slack]
  const facing = part.across.facing
  const half = most(part.extent.halfU) + gap.value
  const floor = undersides(job)
  const top = outerRadius(sled, z0, z1) + beyond
  const width = derived('shelf width', 2 * half, job.path('gap'), 'largest part plus gap on both sides')
  const dimensions = [gap, width, rail]
  const base = { by: part.id, nest, op: 'cut' as const, dimensions }
  const across = acrossOf(job)
  const slab = (id: string, from: number, to: number, w: number): PlanItem => {
    const v = (from + to) / 2
    const [c, s] = [Math.cos((facing * Math.PI) / 180), Math.sin((facing * Math.PI) / 180)]
    return {
      ...base,
      id,
      solid: {
        shape: 'box',
        x: v * c - across * s,
        y: v * s + across * c,
        z0,
        z1,
        width: w,
        height: to - from,
        facing,
      },
    }
  }
  const items = [slab(`${part.id}/shelf`, floor.plate, top, 2 * half)]
  const under = 2 * (half - gap.value - rail.value)
  if (floor.lowest < floor.plate - 0.05 && under > 0.5)
    items.push(slab(`${part.id}/under`, floor.lowest, floor.plate + 0.05, under))
  return items
}

/** Distance of the part's middle from the plane through the axis along its facing, mm. */
function acrossOf(job: NestJob): number {
  const { across } = job.part
  const a = (across.facing * Math.PI) / 180
  return -across.x.nominal * Math.sin(a) + across.y.nominal * Math.cos(a)
}

/** Heights along the facing: where the board itself begins, and the lowest thing under it. Gap below both. */
function undersides(job: NestJob): { plate: number; lowest: number } {
  const { part } = job
  const a = (part.across.facing * Math.PI) / 180
  const bottoms = part.bodies.flatMap((b) =>
    b.shape.kind === 'box'
      ? [b.shape.x.nominal * Math.cos(a) + b.shape.y.nominal * Math.sin(a) - most(b.shape.halfHeight)]
      : [],
  )
  const gap = nestGap(job).value
  const plate = (bottoms[0] ?? 0) - gap
  return { plate, lowest: Math.min(plate, ...bottoms.map((v) => v - gap)) }
}
