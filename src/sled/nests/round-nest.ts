import type { Dimension } from '../../../geometry/plan/plan.ts'
import { least, most } from '../../quantity/quantity.ts'
import { openSide as side } from '../../resolve/open-side.ts'
import { derived, dimension } from '../dimensions.ts'
import { nestGap } from '../fit.ts'
import { axialSlack, cannot, innerRadius, type NestJob } from '../job.ts'
import { seatDepth } from './seat-depth.ts'

/** What pocket and cradle share: where the round part lies, how wide its pocket is, and to which side it opens. */
export interface RoundNest {
  readonly c: { readonly x: number; readonly y: number }
  readonly z0: number
  readonly z1: number
  readonly gap: Dimension
  readonly radius: Dimension
  readonly opening: Dimension
}

export function roundNest(job: NestJob): RoundNest {
  const { part, typed } = job
  const gap = nestGap(job)
  const own = most(part.extent.halfU) + gap.value
  const radius =
    typed?.pocketRadius === undefined
      ? derived('pocket radius', own, job.path('gap'), 'largest part plus gap')
      : dimension('pocket radius', typed.pocketRadius, own, job.path('pocketRadius'), 'typed')
  const where = 'the side the part lies nearest to, or away from the boards'
  const opening = dimension('opening', typed?.opening, openSide(job), job.path('opening'), where, '°')
  const c = { x: part.across.x.nominal, y: part.across.y.nominal }
  const span = pocketSpan(job)
  tooLarge(job, { radius, gap, c, span })
  return { c, ...span, gap, radius, opening }
}

/** Whether a cell is given a notch to be lifted out by: any of its three sizes is typed. */
export function isNotched({ part, typed }: NestJob): boolean {
  return part.kind === 'cell' && [typed?.notchWidth, typed?.notchDepth, typed?.notchAt].some((n) => n !== undefined)
}

/** A nest larger than the body leaves nothing to hold the part with. */
function tooLarge(
  job: NestJob,
  { radius, gap, c, span }: Pick<RoundNest, 'radius' | 'gap' | 'c'> & { readonly span: Span },
): void {
  const R = innerRadius(job.sled, span.z0, span.z1)
  const e = Math.hypot(c.x, c.y)
  // The back of the pocket, away from the open side, must lie inside the body by a wall.
  const works = R - job.sled.print.leastWall + e
  const limit = Math.min(works, R)
  if (radius.value <= limit) return
  const own = job.typed?.pocketRadius
  if (own === undefined) {
    const what = job.part.kind === 'other' ? 'part' : job.part.kind
    const most = `at most ${across(limit)} mm in a sled ${across(R)} mm across`
    const hint = largestText(what, limit - gap.value)
    cannot(job, radius.path, `a pocket ${across(radius.value)} mm across`, most, hint, radius.value - limit)
  } else {
    const most = `at most ${limit.toFixed(2)} mm in a body of radius ${R.toFixed(2)}`
    const hint = `The nearest that works is ${limit.toFixed(2)}; or widen the sled.`
    cannot(job, radius.path, `pocket radius ${own.toFixed(2)} mm`, most, hint, radius.value - limit)
  }
}

/** Nests are told by their diameter, as the parts in them are. */
export const across = (radius: number): string => (2 * radius).toFixed(2)

/** What would go into a nest that is as large as the sled around it allows. */
export const largestText = (what: string, radius: number): string =>
  `It works for a ${what} nowhere wider than ${(Math.floor(radius * 200) / 100).toFixed(2)} mm, or in a wider sled.`

interface Span {
  readonly z0: number
  readonly z1: number
}

/** From base to base where contacts press on its ends (their seats left out), else with half the axial gap at that end. */
export function pocketSpan(job: NestJob): Span {
  const { part, assembly } = job
  const slack = axialSlack(job)
  const at = (end: 'rear' | 'blade'): number | undefined => {
    const contact = assembly.parts.find((p) => p.contact?.presses === part.id && p.contact.end === end)
    if (!contact?.contact) return undefined
    const seat = seatDepth(job, contact)
    return contact.contact.base.nominal + (end === 'rear' ? seat : -seat)
  }
  return { z0: at('rear') ?? least(part.ends.rear) - slack, z1: at('blade') ?? most(part.ends.blade) + slack }
}

/** The clock angle the nest of a part opens to where none is typed. */
export const openSide = ({ part, parts }: NestJob): number =>
  side(part.across, parts.find((p) => p.kind === 'board')?.across)
