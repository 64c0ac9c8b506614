import type { PlanItem } from '../../../geometry/plan/plan.ts'
import type { Box } from '../../body/body.ts'
import { combine, least, most, type Quantity } from '../../quantity/quantity.ts'
import { derived, dimension } from '../dimensions.ts'
import { nestGap } from '../fit.ts'
import { axialSlack, beyond, type NestJob, outerRadius } from '../job.ts'

/**
 * A shelf for a flat part: cut from its lowest board face outwards along the way it faces, so that it is laid in from
 * outside. Under the board's edges a rail stays; what stands on the underside gets its own room between the rails.
 */
export function boardShelf(job: NestJob, nest = 'board shelf'): PlanItem[] {
  const { part, sled, typed } = job
  const gap = nestGap(job)
  const rail = dimension('rail', typed?.lip, 1.2, job.path('lip'), 'common practice, no source')
  const slack = axialSlack(job)
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
  return [...items, ...roomBeyondRails(job, gap.value, Math.max(0, under / 2), floor.plate, base)]
}

/** What stands on the underside where a rail would be takes its place: a recess as large as it may be, plus gap. */
function roomBeyondRails(
  job: NestJob,
  gap: number,
  under: number,
  plate: number,
  base: Pick<PlanItem, 'by' | 'nest' | 'op' | 'dimensions'>,
): PlanItem[] {
  const { facing } = job.part.across
  const [c, s] = [Math.cos((facing * Math.PI) / 180), Math.sin((facing * Math.PI) / 180)]
  const slack = axialSlack(job)
  const middle = acrossOf(job)
  return job.part.bodies.flatMap(({ id, shape }): PlanItem[] => {
    if (shape.kind !== 'box') return []
    const left = least(along(shape, -s, c, shape.halfWidth, -1)) - gap
    const right = most(along(shape, -s, c, shape.halfWidth, 1)) + gap
    const bottom = least(along(shape, c, s, shape.halfHeight, -1)) - gap
    if (bottom > plate - 1e-6 || (left > middle - under && right < middle + under)) return []
    const [u, v, top] = [(left + right) / 2, (bottom + plate + 0.05) / 2, plate + 0.05]
    return [
      {
        ...base,
        id: `${id}/room`,
        solid: {
          shape: 'box',
          x: v * c - u * s,
          y: v * s + u * c,
          z0: least(shape.z0) - slack,
          z1: most(shape.z1) + slack,
          width: right - left,
          height: top - bottom,
          facing,
        },
      },
    ]
  })
}

/** Where a face of a box lies along a direction of the cross-section. */
function along(b: Box, u: number, v: number, half: Quantity, side: 1 | -1): Quantity {
  return combine([
    [b.x, u],
    [b.y, v],
    [half, side],
  ])
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
  const bottoms = part.bodies.flatMap(({ shape }) =>
    shape.kind === 'box' ? [least(along(shape, Math.cos(a), Math.sin(a), shape.halfHeight, -1))] : [],
  )
  const gap = nestGap(job).value
  const plate = (bottoms[0] ?? 0) - gap
  return { plate, lowest: Math.min(plate, ...bottoms.map((v) => v - gap)) }
}
