import type { PlanItem } from '../../../geometry/plan/plan.ts'
import { most } from '../../quantity/quantity.ts'
import type { Part } from '../../resolve/assembly.ts'
import { derived, dimension } from '../dimensions.ts'
import { nestGap } from '../fit.ts'
import { beyond, cannot, type NestJob, nestJob, outerRadius } from '../job.ts'
import { blockFacing, rodItem, seenFacing } from '../round.ts'
import { openSide } from './round-nest.ts'
import { seatDepth } from './seat-depth.ts'

/** A leaf's slot takes its sheet and this much play, mm: common practice, no source. */
const leafPlay = 0.2
const usualLeaf = 0.5

/** A leaf slides into a slot in the wall behind it; a round spring stands in a seat. */
export function contactNest(job: NestJob): PlanItem[] {
  const { part } = job
  return part.extent.round ? springSeat(job) : leafSlot(job)
}

function springSeat(job: NestJob): PlanItem[] {
  const { part } = job
  const contact = part.contact as NonNullable<Part['contact']>
  const depth = seatDepth(job, part)
  if (depth <= 0) return []
  const gap = nestGap(job)
  const seat = dimension(
    'seat depth',
    job.typed?.seat,
    depth,
    job.path('seat'),
    'half of the solid length, at most 1.2: common practice, no source',
  )
  if (contact.solid && seat.value > contact.solid.nominal - 0.2)
    cannot(
      job,
      seat.path,
      `${seat.value} mm`,
      `less than its solid length, ${contact.solid.nominal} mm`,
      `The cell must reach it: at most ${(contact.solid.nominal - 0.2).toFixed(2)}.`,
      seat.value - contact.solid.nominal + 0.2,
    )
  const r = derived('seat radius', most(part.extent.halfU) + gap.value, job.path('gap'), 'largest spring plus gap')
  const base = contact.base.nominal
  const rest = { op: 'cut' as const, by: part.id, nest: 'spring seat', dimensions: [gap, r, seat] }
  const c = { x: part.across.x.nominal, y: part.across.y.nominal }
  const [z0, z1] = contact.end === 'rear' ? [base, base + depth + 0.05] : [base - depth - 0.05, base]
  return [rodItem(rest, `${part.id}/seat`, c, r.value, z0, z1)]
}

/** From the base into the wall by the leaf's thickness, and outwards to the side its cell goes in by. */
function leafSlot(job: NestJob): PlanItem[] {
  const { part, parts, sled } = job
  const contact = part.contact as NonNullable<Part['contact']>
  const cell = parts.find((p) => p.id === contact.presses)
  if (!cell) return []
  const gap = nestGap(job)
  const thickness = dimension(
    'slot',
    job.typed?.slot,
    usualLeaf + leafPlay,
    job.path('slot'),
    'leaf 0.3 to 0.5 plus play: from memory',
  )
  const opening = nestJob(job, cell).typed?.opening ?? openSide(nestJob(job, cell))
  const c = { x: part.across.x.nominal, y: part.across.y.nominal }
  const { v, aside } = seenFacing(c, opening)
  const base = contact.base.nominal
  const [z0, z1] =
    contact.end === 'rear' ? [base - thickness.value, base + 0.05] : [base - 0.05, base + thickness.value]
  const width = 2 * (most(part.extent.halfU) + gap.value)
  const top = outerRadius(sled, z0, z1) + beyond
  const solid = blockFacing(
    opening,
    aside,
    v - most(part.extent.halfV) - gap.value,
    Math.max(top, v + 1),
    width,
    z0,
    z1,
  )
  return [{ id: `${part.id}/slot`, op: 'cut', by: part.id, nest: 'contact slot', dimensions: [gap, thickness], solid }]
}
