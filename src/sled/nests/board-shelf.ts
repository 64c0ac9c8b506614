import type { Dimension, PlanItem } from '../../../geometry/plan/plan.ts'
import type { Box } from '../../body/body.ts'
import { combine, least, most, type Quantity } from '../../quantity/quantity.ts'
import { derived, dimension } from '../dimensions.ts'
import { nestGap } from '../fit.ts'
import { axialSlack, beyond, cannot, type NestJob, outerRadius } from '../job.ts'
import { blockFacing, seenFacing } from '../round.ts'

const source = 'common practice, no source'
/** How long the lips are at each end of the board, mm, and how wide the notch to lift it by. */
const lipLength = 6

/**
 * A shelf for a flat part, cut from the board's underside outwards, so that it is laid in from outside. Rails stay
 * under its edges; what stands on the underside gets its own room; lips over the edges of a bare board keep it in, and
 * a notch at its end lets a fingernail under the board, not under a component.
 */
export function boardShelf(job: NestJob, nest = 'board shelf'): PlanItem[] {
  const { part, sled, typed } = job
  const gap = nestGap(job)
  const rail = dimension('rail', typed?.rail, 1.2, job.path('rail'), source)
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
  const rest = { op: 'cut' as const, by: part.id, nest, dimensions: [gap, width, rail, lip, lift] }
  const top = Math.max(outerRadius(sled, z0, z1) + beyond, plate.top + 1)
  const cut = (id: string, v0: number, v1: number, w: number, a: number, b: number, aside = plate.aside): PlanItem => ({
    ...rest,
    id: `${part.id}/${id}`,
    solid: blockFacing(plate.facing, aside, v0, v1, w, a, b),
  })
  const items = [cut('shelf', plate.bottom, top, width.value, z0, z1), ...keepOuts(job, gap, plate, cut)]
  if (lip.value > 0) items.push(...lips(job, { lip, gap, rail, width, plate, z0, z1, rest }))
  if (lift.value > 0) {
    const room = { a: z1 - 0.05, b: z1 + 3 }
    items.push(cut('lift-notch', plate.bottom - 1, top, Math.min(lift.value, width.value), room.a, room.b))
  }
  return items
}

/** Height along its facing up to which a shelf needs its sides: above the lips, where it has them. */
export function shelfTop(job: NestJob): number {
  const lip = job.typed?.lip ?? 0
  return lip > 0 ? plateOf(job, nestGap(job)).top + job.sled.print.leastWall : Number.NEGATIVE_INFINITY
}

interface Plate {
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
function face(b: Box, theta: number, half: Quantity, side: 1 | -1): Quantity {
  const [c, s] = [Math.cos((theta * Math.PI) / 180), Math.sin((theta * Math.PI) / 180)]
  return combine([
    [b.x, c],
    [b.y, s],
    [half, side],
  ])
}

interface LipAsk {
  readonly lip: Dimension
  readonly gap: Dimension
  readonly rail: Dimension
  readonly width: Dimension
  readonly plate: Plate
  readonly z0: number
  readonly z1: number
  readonly rest: Omit<PlanItem, 'id' | 'solid'>
}

/** Short lips over both long edges at both ends: they stand where the shelf was cut, so they come in the second stage. */
function lips(job: NestJob, a: LipAsk): PlanItem[] {
  const most = a.width.value / 2 - 2
  if (a.lip.value > Math.min(1.5, most)) {
    cannot(
      job,
      a.lip.path,
      `${a.lip.value} mm`,
      `at most ${Math.min(1.5, most).toFixed(2)} mm`,
      '0.4 to 0.6 holds a board and lets it snap in.',
      a.lip.value - Math.min(1.5, most),
    )
    return []
  }
  const thick = job.sled.print.leastWall
  const half = a.width.value / 2
  return [a.z0, a.z1 - lipLength].flatMap((z, i) =>
    [-1, 1].map(
      (side): PlanItem => ({
        ...a.rest,
        id: `${job.part.id}/lip-${i + 1}${side < 0 ? 'a' : 'b'}`,
        op: 'add',
        stage: 2,
        nest: 'board lip',
        solid: blockFacing(
          a.plate.facing,
          a.plate.aside + side * (half - a.lip.value / 2 + 0.3),
          a.plate.top,
          a.plate.top + thick,
          a.lip.value + 0.6,
          z,
          z + lipLength,
        ),
      }),
    ),
  )
}
