import type { PlanItem } from '../../../geometry/plan/plan.ts'
import { least, most } from '../../quantity/quantity.ts'
import { derived, dimension } from '../dimensions.ts'
import { nestGap } from '../fit.ts'
import { axialSlack, beyond, type NestJob } from '../job.ts'
import { roundPocket } from './cell-pocket.ts'

/**
 * A ring that holds a speaker by its rim. At an end of the sled it is a cup, open to that end, with a step behind the
 * rim and a smaller bore behind the step for the magnet's air; anywhere else the speaker drops in from the side.
 */
export function speakerRing(job: NestJob): PlanItem[] {
  const end = ownEnd(job)
  if (!end) return roundPocket(job, 'speaker ring')
  const { part, sled, typed } = job
  const gap = nestGap(job)
  const r = derived('ring radius', most(part.extent.halfU) + gap.value, job.path('gap'), 'largest speaker plus gap')
  const step = dimension('step', typed?.lip, 1.2, job.path('lip'), 'common practice, no source')
  const air = dimension(
    'air behind',
    typed?.depth,
    1,
    job.path('depth'),
    'back clearance of at least 1: common practice, no source',
  )
  const [x, y] = [part.across.x.nominal, part.across.y.nominal]
  const slack = axialSlack(job)
  const inner = end === 'rear' ? most(part.ends.blade) + slack : least(part.ends.rear) - slack
  const [z0, z1] = end === 'rear' ? [sled.ends.rear.nominal - beyond, inner] : [inner, sled.ends.blade.nominal + beyond]
  const dimensions = [gap, r, step, air]
  const base = { by: part.id, nest: 'speaker ring', op: 'cut' as const, dimensions }
  const cup: PlanItem = {
    ...base,
    id: `${part.id}/ring`,
    solid: { shape: 'cylinder', x, y, z0, z1, r0: r.value, r1: r.value },
  }
  if (air.value <= 0 || r.value - step.value < 1) return [cup]
  const [b0, b1] = end === 'rear' ? [inner - 0.05, inner + air.value] : [inner - air.value, inner + 0.05]
  return [
    cup,
    {
      ...base,
      id: `${part.id}/air`,
      solid: { shape: 'cylinder', x, y, z0: b0, z1: b1, r0: r.value - step.value, r1: r.value - step.value },
    },
  ]
}

/** The end of the sled a speaker is next to, no other part between; undefined for any other part or place. */
export function ownEnd(job: NestJob): 'rear' | 'blade' | undefined {
  if (job.part.kind !== 'speaker' || !job.part.extent.round) return undefined
  const others = job.assembly.parts.filter(
    (p) => p.sled === job.sled.id && p.id !== job.part.id && p.goesIn === 'with-sled',
  )
  const { rear, blade } = job.part.ends
  if (others.every((p) => p.ends.rear.nominal >= blade.nominal - 0.01)) return 'rear'
  return others.every((p) => p.ends.blade.nominal <= rear.nominal + 0.01) ? 'blade' : undefined
}
