import type { PlanItem } from '../../../geometry/plan/plan.ts'
import { least, most } from '../../quantity/quantity.ts'
import { derived, dimension } from '../dimensions.ts'
import { nestGap } from '../fit.ts'
import { axialSlack, beyond, cannot, type NestJob, outerRadius } from '../job.ts'
import { blockFacing, rodItem, seenFacing } from '../round.ts'
import { openSide } from './round-nest.ts'

/** A charge port or kill switch looks out of an end through a panel: its thickness and hole, mm; common practice, no source. */
const usualPanel = 2
const holeLess = 2
/** Nothing looks out of a smaller hole, mm. */
const leastHole = 1

/**
 * A service face: at the sled's end a panel stays with a hole for the port's thread or the switch's lever; behind it
 * the body has its own room, open to the side it is put in by.
 */
export function serviceFace(job: NestJob, end: 'rear' | 'blade'): PlanItem[] {
  const { part, sled, typed } = job
  const gap = nestGap(job)
  const source = 'common practice, no source'
  const panel = dimension('panel', typed?.panel, usualPanel, job.path('panel'), source)
  const room = derived('room radius', most(part.extent.halfU) + gap.value, job.path('gap'), 'largest body plus gap')
  const hole = dimension('hole', typed?.hole, 2 * most(part.extent.halfU) - holeLess, job.path('hole'), source)
  const slack = axialSlack(job)
  const face = end === 'rear' ? sled.ends.rear.nominal + panel.value : sled.ends.blade.nominal - panel.value
  const [z0, z1] = end === 'rear' ? [face, most(part.ends.blade) + slack] : [least(part.ends.rear) - slack, face]
  if (panel.value < sled.print.leastWall)
    cannot(
      job,
      panel.path,
      `${panel.value} mm`,
      `at least the least wall, ${sled.print.leastWall} mm`,
      `The nearest that prints is ${sled.print.leastWall}.`,
      sled.print.leastWall - panel.value,
    )
  // A round body stands flush with the panel at the most: as measured, for its room takes what it may be longer.
  const past = end === 'rear' ? face - part.ends.rear.nominal : part.ends.blade.nominal - face
  if (past > 0.01)
    cannot(
      job,
      panel.path,
      `${panel.value} mm`,
      `at most ${(panel.value - past).toFixed(2)} mm, where ${part.name} begins`,
      `Move ${part.name} ${past.toFixed(2)} mm away from the end, or let the sled reach farther.`,
      past,
    )
  if (hole.value >= 2 * room.value)
    cannot(
      job,
      hole.path,
      `${hole.value} mm`,
      `less than the body's room, ${(2 * room.value).toFixed(2)} mm`,
      'The panel must stop the body.',
      hole.value - 2 * room.value,
    )
  if (hole.value < leastHole)
    cannot(
      job,
      hole.path,
      `${hole.value} mm`,
      `at least ${leastHole} mm`,
      `Type the width of the thread or lever that looks out; the nearest that works is ${leastHole}.`,
      leastHole - hole.value,
    )
  const rest = { op: 'cut' as const, by: part.id, nest: 'service face', dimensions: [gap, room, panel, hole] }
  const c = { x: part.across.x.nominal, y: part.across.y.nominal }
  const opening = typed?.opening ?? openSide(job)
  const { v, aside } = seenFacing(c, opening)
  const top = outerRadius(sled, z0, z1) + beyond
  const through =
    end === 'rear' ? [sled.ends.rear.nominal - beyond, face + 0.05] : [face - 0.05, sled.ends.blade.nominal + beyond]
  return [
    rodItem(rest, `${part.id}/room`, c, room.value, z0, z1),
    {
      ...rest,
      id: `${part.id}/opening`,
      solid: blockFacing(opening, aside, v, Math.max(top, v + 1), 2 * room.value, z0, z1),
    },
    rodItem(rest, `${part.id}/hole`, c, hole.value / 2, through[0] as number, through[1] as number),
  ]
}
