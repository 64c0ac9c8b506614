import type { PlanItem } from '../../../geometry/plan/plan.ts'
import { dimension } from '../dimensions.ts'
import { beyond, cannot, type NestJob, outerRadius } from '../job.ts'
import { blockFacing, seenFacing } from '../round.ts'
import type { RoundNest } from './round-nest.ts'

/** Least width along the axis for a tool, mm, and depth below the equator as a share of the radius (JOB rule, from memory). */
const leastWidth = 6
const leastDepth = 0.5
/** The tool must not bridge the positive end and the can: the notch stays this far from both ends, mm. */
const fromEnds = 8

/**
 * A notch in one side wall of a cell's nest, through which a non-metal tool reaches under the can and lifts it. It
 * lies on the can's body, never across its positive rim. For nests of which `isNotched` holds.
 */
export function ejectionNotch(job: NestJob, nest: RoundNest): PlanItem[] {
  const { part, typed, sled } = job
  const width = dimension(
    'notch width',
    typed?.notchWidth,
    8,
    job.path('notchWidth'),
    `at least ${leastWidth}: from memory`,
  )
  const half = nest.radius.value * leastDepth
  const depth = dimension(
    'notch depth',
    typed?.notchDepth,
    half,
    job.path('notchDepth'),
    'half the radius: from memory',
  )
  const [rear, blade] = [part.ends.rear.nominal, part.ends.blade.nominal]
  const at = dimension('notch place', typed?.notchAt, (rear + blade) / 2, job.path('notchAt'), 'middle of the can')
  if (width.value < leastWidth)
    cannot(
      job,
      width.path,
      `${width.value} mm`,
      `at least ${leastWidth} mm`,
      `A tool needs ${leastWidth} mm.`,
      leastWidth - width.value,
    )
  if (depth.value < half - 0.01)
    cannot(
      job,
      depth.path,
      `${depth.value} mm`,
      `at least ${half.toFixed(2)} mm`,
      `Half the radius, ${half.toFixed(2)}, lifts the cell.`,
      half - depth.value,
    )
  const [lo, hi] = [rear + fromEnds + width.value / 2, blade - fromEnds - width.value / 2]
  if (at.value < lo || at.value > hi)
    cannot(
      job,
      at.path,
      `z ${at.value.toFixed(1)}`,
      `z ${lo.toFixed(1)} to ${hi.toFixed(1)}, on the can's body`,
      'Keep it off the positive rim.',
      Math.max(lo - at.value, at.value - hi),
    )
  const { v, aside } = seenFacing(nest.c, nest.opening.value)
  const top = outerRadius(sled, nest.z0, nest.z1) + beyond
  const reach = top + Math.abs(aside)
  const solid = blockFacing(
    nest.opening.value,
    aside + reach / 2,
    v - depth.value,
    top,
    reach,
    at.value - width.value / 2,
    at.value + width.value / 2,
  )
  return [
    { id: `${part.id}/notch`, op: 'cut', by: part.id, nest: 'ejection notch', dimensions: [width, depth, at], solid },
  ]
}
