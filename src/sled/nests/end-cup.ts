import type { PlanItem } from '../../../geometry/plan/plan.ts'
import { least, most } from '../../quantity/quantity.ts'
import { derived, dimension } from '../dimensions.ts'
import { nestGap } from '../fit.ts'
import { axialSlack, beyond, cannot, innerRadius, type NestJob } from '../job.ts'
import { rodItem } from '../round.ts'
import { across, largestText } from './round-nest.ts'

export interface CupWords {
  readonly nest: string
  readonly what: string
  /** Room behind the step by default, mm, and why. */
  readonly behind: number
  readonly behindSource: string
}

export const speakerCup: CupWords = {
  nest: 'speaker ring',
  what: 'speaker',
  behind: 1,
  behindSource: 'back clearance of at least 1: common practice, no source',
}

export const connectorCup: CupWords = {
  nest: 'blade connector seat',
  what: 'connector',
  behind: 6,
  behindSource: 'wire bend of at least 6 behind the disc: from memory',
}

/** A gasket under the rim is squeezed to this share of its thickness (30 % squeeze: JOB rule, from memory). */
const squeezed = 0.7

/**
 * A cup in the end of the sled for a round part: open to that end, with a step the rim sits on and a smaller bore
 * behind the step. A gasket lies on the step and takes its squeezed thickness.
 */
export function endCup(job: NestJob, end: 'rear' | 'blade', words: CupWords): PlanItem[] {
  const { part, sled, typed } = job
  const gap = nestGap(job)
  const r = derived(
    'cup radius',
    most(part.extent.halfU) + gap.value,
    job.path('gap'),
    `largest ${words.what} plus gap`,
  )
  const step = dimension('step', typed?.step, 1.2, job.path('step'), 'common practice, no source')
  const behind = dimension('room behind', typed?.behind, words.behind, job.path('behind'), words.behindSource)
  const gasket = dimension('gasket', typed?.gasket, 0, job.path('gasket'), 'none')
  const c = { x: part.across.x.nominal, y: part.across.y.nominal }
  const slack = axialSlack(job) + gasket.value * squeezed
  const inner = end === 'rear' ? most(part.ends.blade) + slack : least(part.ends.rear) - slack
  const [z0, z1] = end === 'rear' ? [sled.ends.rear.nominal - beyond, inner] : [inner, sled.ends.blade.nominal + beyond]
  const R = innerRadius(sled, z0, z1)
  const room = R - sled.print.leastWall - Math.hypot(c.x, c.y)
  if (r.value > room)
    cannot(
      job,
      r.path,
      `${words.nest} ${across(r.value)} mm across`,
      `at most ${across(room)} mm in a sled ${across(R)} mm across`,
      largestText(words.what, room - gap.value),
      r.value - room,
    )
  const mostStep = r.value - 1
  if (typed?.step !== undefined && step.value > mostStep)
    cannot(
      job,
      step.path,
      `${step.value} mm`,
      `at most ${mostStep.toFixed(2)} mm behind a rim of radius ${r.value.toFixed(2)}`,
      `The nearest that works is ${mostStep.toFixed(2)}; 1.2 is usual.`,
      step.value - mostStep,
    )
  const rest = { op: 'cut' as const, by: part.id, nest: words.nest, dimensions: [gap, r, step, behind, gasket] }
  const cup = rodItem(rest, `${part.id}/cup`, c, r.value, z0, z1)
  if (behind.value <= 0 || r.value - step.value < 1) return [cup]
  const [b0, b1] = end === 'rear' ? [inner - 0.05, inner + behind.value] : [inner - behind.value, inner + 0.05]
  return [cup, rodItem(rest, `${part.id}/behind`, c, r.value - step.value, b0, b1)]
}

/** Kinds that look out of an end of the sled where they lie next to it. */
const lookingOut = ['speaker', 'connector', 'port', 'switch']

/** The end of the sled a part looks out of: a round one of such a kind with no other part between; else undefined. */
export function ownEnd(job: NestJob): 'rear' | 'blade' | undefined {
  if (!lookingOut.includes(job.part.kind) || !job.part.extent.round) return undefined
  const others = job.parts.filter((p) => p.id !== job.part.id && p.contact === undefined)
  const { rear, blade } = job.part.ends
  if (others.length === 0) return undefined
  if (others.every((p) => p.ends.rear.nominal >= blade.nominal - 0.01)) return 'rear'
  return others.every((p) => p.ends.blade.nominal <= rear.nominal + 0.01) ? 'blade' : undefined
}
