import { runsAlong, type Slab, slabsOf } from '../../geometry/plan/cross-section.ts'
import { itemNumber } from '../../geometry/plan/one-item.ts'
import type { Plan, PlanItem } from '../../geometry/plan/plan.ts'
import { remember } from '../../geometry/remember.ts'
import type { Body } from '../body/body.ts'
import { exact } from '../quantity/quantity.ts'
import type { Sled } from '../resolve/assembly.ts'

const slabs = remember(
  32,
  (items: readonly PlanItem[]) =>
    items
      .filter((x) => runsAlong(x.solid))
      .map(itemNumber)
      .join(),
  slabsOf,
)

/**
 * The sled's outside as bodies for the checks: its plan cut into stretches of one cross-section. The print error
 * swells every face.
 */
export function sledBodies(sled: Sled, plan: Plan): Body[] {
  const of = `sleds/${sled.id}`
  return plan.bodies.flatMap((body) =>
    withWideEnds(slabs(body.items)).map((slab, i): Body => {
      const form = slab.region.form
      const place = { z0: exact(slab.z0), z1: exact(slab.z1) }
      const name = `${sled.name} at z ${slab.z0.toFixed(1)}–${slab.z1.toFixed(1)}`
      const shape: Body['shape'] =
        form.kind === 'disc'
          ? {
              kind: 'round',
              x: exact(form.c.x),
              y: exact(form.c.y),
              r0: exact(slab.taper?.r0 ?? form.r),
              r1: exact(slab.taper?.r1 ?? form.r),
              ...place,
            }
          : { kind: 'outline', region: slab.region, ...place, ...(slab.taper ? { taper: slab.taper } : {}) }
      return { id: `${of}/${body.id}-${i}`, of, name, shape, swell: sled.print.error }
    }),
  )
}

/** A cone ends short of its wide face once it is swollen; where no disc goes on there, the face is a body of its own. */
function withWideEnds(list: readonly Slab[]): Slab[] {
  return list.flatMap((slab, i) => {
    if (!slab.taper || slab.region.form.kind !== 'disc') return [slab]
    const rising = slab.taper.r0 < slab.taper.r1
    const [z, beside] = rising ? [slab.z1, list[i + 1]] : [slab.z0, list[i - 1]]
    const goesOn = beside?.region.form.kind === 'disc' && (rising ? beside.z0 : beside.z1) === z
    const face: Slab = { z0: z, z1: z, region: slab.region, items: slab.items }
    return goesOn ? [slab] : rising ? [slab, face] : [face, slab]
  })
}
