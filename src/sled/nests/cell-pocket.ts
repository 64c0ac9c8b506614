import type { PlanItem } from '../../../geometry/plan/plan.ts'
import { clock } from '../../../geometry/region/point.ts'
import { least, most } from '../../quantity/quantity.ts'
import { derived, dimension } from '../dimensions.ts'
import { nestGap } from '../fit.ts'
import { axialSlack, beyond, type NestJob, outerRadius } from '../job.ts'

/**
 * A round pocket along the axis, open to one side so that the part can be laid in. It reaches to the faces the
 * contacts stand on; without a contact it leaves the axial gap at that end. A typed opening width of 0 closes it.
 */
export function roundPocket(job: NestJob, nest: string): PlanItem[] {
  const { part, typed, sled } = job
  const gap = nestGap(job)
  const r = derived('pocket radius', most(part.extent.halfU) + gap.value, job.path('gap'), 'largest part plus gap')
  const [x, y] = [part.across.x.nominal, part.across.y.nominal]
  const { z0, z1 } = pocketSpan(job)
  const width = dimension(
    'opening width',
    typed?.openingWidth,
    2 * r.value,
    job.path('openingWidth'),
    'as wide as the pocket: the part drops in',
  )
  const theta = dimension(
    'opening',
    typed?.opening,
    openSide(job),
    job.path('opening'),
    'the side the part lies nearest to',
    '°',
  )
  const dimensions = [gap, r, width, theta]
  const base = { by: part.id, nest, dimensions }
  const pocket: PlanItem = {
    ...base,
    id: `${part.id}/pocket`,
    op: 'cut',
    solid: { shape: 'cylinder', x, y, z0, z1, r0: r.value, r1: r.value },
  }
  if (width.value <= 0) return [pocket]
  const reach = outerRadius(sled, z0, z1) + Math.hypot(x, y) + beyond
  const [c, s] = [Math.cos((theta.value * Math.PI) / 180), Math.sin((theta.value * Math.PI) / 180)]
  const mouth: PlanItem = {
    ...base,
    id: `${part.id}/opening`,
    op: 'cut',
    solid: {
      shape: 'box',
      x: x + (c * reach) / 2,
      y: y + (s * reach) / 2,
      z0,
      z1,
      width: Math.min(width.value, 2 * r.value),
      height: reach,
      facing: theta.value,
    },
  }
  return [pocket, mouth]
}

/** From base to base where contacts press on its ends, else with half the axial gap at that end. */
export function pocketSpan(job: NestJob): { z0: number; z1: number } {
  const { part, assembly } = job
  const slack = axialSlack(job)
  const base = (end: 'rear' | 'blade') =>
    assembly.parts.find((p) => p.contact?.presses === part.id && p.contact.end === end)?.contact?.base.nominal
  return { z0: base('rear') ?? least(part.ends.rear) - slack, z1: base('blade') ?? most(part.ends.blade) + slack }
}

/** The clock angle the pocket opens to: where the part lies nearest to the outside, away from the boards for one on the axis. */
export function openSide(job: NestJob): number {
  const { part, assembly } = job
  const at = { x: part.across.x.nominal, y: part.across.y.nominal }
  if (Math.hypot(at.x, at.y) > 0.2) return Number(clock(at).toFixed(3))
  const board = assembly.parts.find((p) => p.sled === job.sled.id && p.kind === 'board')
  return board ? (board.across.facing + 180) % 360 : 180
}
