import type { PlanItem } from '../../../geometry/plan/plan.ts'
import { most } from '../../quantity/quantity.ts'
import type { Sled } from '../../resolve/assembly.ts'
import { derived, dimension } from '../dimensions.ts'
import { beyond, cannot, drawnAt, type SledJob, setting, tooShort } from '../job.ts'
import { channelItems, widthNeeded } from './wire-channel.ts'

type ChannelInput = NonNullable<Sled['input']['channels']>[number]

/** A way for the wires where and as wide as the person says. */
export function typedChannel(job: SledJob, c: ChannelInput): PlanItem[] {
  const { sled } = job
  const path = (field: string) => `sleds/${sled.id}/channels/${c.id}/${field}`
  const width = dimension('channel width', c.width, 4, path('width'), 'common practice, no source')
  const R = Math.min(...sled.pieces.map((p) => p.radius))
  const r =
    c.r === undefined
      ? derived(
          'channel radius',
          c.open ? R - width.value / 2 : R - sled.print.leastWall - width.value / 2,
          path('r'),
          'as far out as the wall allows',
        )
      : dimension('channel radius', c.r, c.r, path('r'), '')
  // The bundle lies on the channel's floor, and inside the body; one that is closed has a wall around it.
  const bundle = widthNeeded(job.assembly, sled) - setting(job, 'wire-gap') - 2 * most(sled.print.error)
  const out = c.open && bundle > 0 ? Math.min(bundle, width.value) - width.value / 2 : width.value / 2
  if (r.value + out > R + 0.001)
    cannot(
      job,
      r.path,
      `${r.value} mm`,
      `at most ${(R - out).toFixed(2)} mm, or the wires stand out of the sled`,
      'Leave it out: the channel is then as far out as it can be.',
      r.value + out - R,
    )
  const span = {
    z0: drawnAt(sled, 'channels', c.id, 'from') ?? sled.ends.rear.nominal - beyond,
    z1: drawnAt(sled, 'channels', c.id, 'to') ?? sled.ends.blade.nominal + beyond,
  }
  if (tooShort(job, path('to'), span.z0, span.z1)) return []
  const theta = dimension('channel angle', c.theta, c.theta, path('theta'), 'typed', '°')
  return channelItems(sled, c.id, { open: c.open ?? false, theta: c.theta, r: r.value }, width.value, span, [
    width,
    theta,
    r,
  ])
}
