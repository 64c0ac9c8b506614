import type { Dimension, PlanItem } from '../../../geometry/plan/plan.ts'
import type { Box } from '../../body/body.ts'
import { combine, least, most, type Quantity } from '../../quantity/quantity.ts'
import { derived, dimension } from '../dimensions.ts'
import { nestGap } from '../fit.ts'
import { axialSlack, beyond, cannot, type NestJob, outerRadius } from '../job.ts'
import { rare } from '../rare.ts'
import { blockFacing, seenFacing } from '../round.ts'

const source = 'common practice, no source'
/** mm. A ledge under its edges and the room between two of them; the lift notch's length. */
const usual = { rail: 1.2, relief: 1, liftLength: 3 }

/**
 * A shelf for a flat part, cut from the board's underside outwards, so that it is laid in from outside. It lies on the
 * floor, or on rails under its long edges with room between them where one is typed; what stands on the underside gets
 * its own room; lips over the edges of a bare board keep it in, and a notch at its end lets a fingernail under the
 * board, not under a component.
 */
export function boardShelf(job: NestJob, nest = 'board shelf'): PlanItem[] {
  const { part, sled, typed } = job
  const gap = nestGap(job)
  const lip = dimension('lip', typed?.lip, 0, job.path('lip'), '0.4 to 0.6 where typed: from memory')
  const lift = dimension('lift notch', typed?.liftNotch, 0, job.path('liftNotch'), 'none')
  const slack = axialSlack(job)
  const [z0, z1] = [least(part.ends.rear) - slack, most(part.ends.blade) + slack]
  const width = derived(
    'shelf width',
    2 * (most(part.extent.halfU) + gap.value),
    job.path('gap'),
    'largest part plus gap on both sides',
  )
  const plate = plateOf(job, gap)
  const [rail, relief] = railsOf(job, width)
  const liftLength = dimension('lift notch length', typed?.liftLength, usual.liftLength, job.path('liftLength'), source)
  const rest = { op: 'cut' as const, by: part.id, nest, dimensions: [gap, width, rail, relief, lip, lift, liftLength] }
  const top = Math.max(outerRadius(sled, z0, z1) + beyond, plate.top + 1)
  const cut = (id: string, v0: number, v1: number, w: number, a: number, b: number, aside = plate.aside): PlanItem => ({
    ...rest,
    id: `${part.id}/${id}`,
    solid: blockFacing(plate.facing, aside, v0, v1, w, a, b),
  })
  const items = [cut('shelf', plate.bottom, top, width.value, z0, z1), ...keepOuts(job, gap, plate, cut)]
  if (relief.value > 0)
    items.push(cut('relief', plate.bottom - relief.value, plate.bottom + 0.05, width.value - 2 * rail.value, z0, z1))
  if (lip.value > 0) items.push(...rare().boardLips(job, { lip, width, thick: lipHeight(job), plate, z0, z1, rest }))
  if (lift.value > 0) {
    if (lift.value > width.value + 0.001)
      cannot(
        job,
        lift.path,
        `${lift.value} mm`,
        `at most as wide as the shelf, ${width.value.toFixed(2)} mm`,
        `The nearest that works is ${width.value.toFixed(2)}; 8 takes a fingernail.`,
        lift.value - width.value,
      )
    const room = { a: z1 - 0.05, b: z1 + Math.max(0.1, liftLength.value) }
    items.push(cut('lift-notch', plate.bottom - 1, top, Math.min(lift.value, width.value), room.a, room.b))
  }
  return items
}

/** The ledges under both long edges, and how deep the room between them is: none where neither is typed. */
function railsOf(job: NestJob, width: Dimension): [Dimension, Dimension] {
  const { typed } = job
  const asked = (typed?.rail ?? typed?.relief) !== undefined
  const rail = asked
    ? dimension('rail', typed?.rail, usual.rail, job.path('rail'), source)
    : dimension('rail', undefined, width.value / 2, job.path('rail'), 'the whole floor carries the board')
  const relief = asked
    ? dimension('relief', typed?.relief, usual.relief, job.path('relief'), source)
    : dimension('relief', undefined, 0, job.path('relief'), 'none')
  const [least, most] = [job.sled.print.bead ?? job.sled.print.leastWall, width.value / 2 - 0.5]
  if (!asked || (rail.value >= least - 1e-6 && rail.value <= most + 1e-6)) return [rail, relief]
  const nearest = rail.value < least ? least : most
  const limit = `${least} to ${most.toFixed(2)} mm, from one bead to half the shelf`
  const hint = `The nearest that works is ${nearest.toFixed(2)}; ${usual.rail} is usual.`
  cannot(job, rail.path, `${rail.value} mm`, limit, hint, rail.value - nearest)
  return [rail, { ...relief, value: 0 }]
}

/** Height along its facing up to which a shelf needs its sides: above the lips, where it has them. */
export function shelfTop(job: NestJob): number {
  const lip = job.typed?.lip ?? 0
  return lip > 0 ? plateOf(job, nestGap(job)).top + lipHeight(job).value : Number.NEGATIVE_INFINITY
}

const lipHeight = (job: NestJob): Dimension =>
  dimension('lip height', job.typed?.lipHeight, job.sled.print.leastWall, job.path('lipHeight'), 'least wall')

export interface Plate {
  readonly facing: number
  readonly aside: number
  /** Underside of the board, less the gap; upper side, plus the gap. */
  readonly bottom: number
  readonly top: number
}

function plateOf(job: NestJob, gap: Dimension): Plate {
  const { part } = job
  const facing = part.across.facing
  const { v, aside } = seenFacing({ x: part.across.x.nominal, y: part.across.y.nominal }, facing)
  const first = part.bodies[0]?.shape
  if (first?.kind !== 'box') {
    const half = most(part.extent.halfV) + gap.value
    return { facing, aside, bottom: v - half, top: v + half }
  }
  const [bottom, top] = [face(first, facing, first.halfHeight, -1), face(first, facing, first.halfHeight, 1)]
  return { facing, aside, bottom: least(bottom) - gap.value, top: most(top) + gap.value }
}

type Cut = (id: string, v0: number, v1: number, w: number, a: number, b: number, aside?: number) => PlanItem

/** Room for each thing that stands on the underside, as large as it may be, in the rails too where it must. */
function keepOuts(job: NestJob, gap: Dimension, plate: Plate, cut: Cut): PlanItem[] {
  const slack = axialSlack(job)
  return job.part.bodies.slice(1).flatMap((b, i): PlanItem[] => {
    if (b.shape.kind !== 'box') return []
    const s: Box = b.shape
    const lowest = least(face(s, plate.facing, s.halfHeight, -1)) - gap.value
    if (lowest >= plate.bottom - 0.01) return []
    const left = least(face(s, plate.facing + 90, s.halfWidth, -1)) - gap.value
    const right = most(face(s, plate.facing + 90, s.halfWidth, 1)) + gap.value
    const [z0, z1] = [least(s.z0) - slack, most(s.z1) + slack]
    return [cut(`keep-out-${i + 1}`, lowest, plate.bottom + 0.05, right - left, z0, z1, (left + right) / 2)]
  })
}

/** How far a face of a box lies out along a clock angle, with all that is not known of it. */
export function face(b: Box, theta: number, half: Quantity, side: 1 | -1): Quantity {
  const [c, s] = [Math.cos((theta * Math.PI) / 180), Math.sin((theta * Math.PI) / 180)]
  return combine([
    [b.x, c],
    [b.y, s],
    [half, side],
  ])
}
