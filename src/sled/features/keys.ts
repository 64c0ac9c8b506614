import type { PlanItem } from '../../../geometry/plan/plan.ts'
import { dimension } from '../dimensions.ts'
import { beyond, cannot, drawnAt, innerRadius, outerRadius, type SledJob, tooShort } from '../job.ts'
import { blockFacing } from '../round.ts'

/** Common practice, no source: a key is 3 to 5 wide (from memory). */
const usual = { width: 4, height: 1.5 }
/** A key is rooted this deep in the body, mm. */
const rooted = 1.5

/** Keys stand out of the body and ride in a slot of the hilt; keyways are grooves that take a pin of it. */
export function keyItems(job: SledJob): PlanItem[] {
  const { sled } = job
  return (sled.input.keys ?? []).flatMap((k): PlanItem[] => {
    const path = (field: string) => `sleds/${sled.id}/keys/${k.id}/${field}`
    const source = '3 to 5 wide: from memory'
    const width = dimension('key width', k.width, usual.width, path('width'), source)
    const height = dimension('key height', k.height, usual.height, path('height'), 'common practice, no source')
    const z0 = drawnAt(sled, 'keys', k.id, 'from') ?? sled.ends.rear.nominal
    const z1 = drawnAt(sled, 'keys', k.id, 'to') ?? sled.ends.blade.nominal
    if (tooShort(job, path('to'), z0, z1)) return []
    const [inner, outer] = [innerRadius(sled, z0, z1), outerRadius(sled, z0, z1)]
    const rest = { id: `sleds/${sled.id}/keys/${k.id}`, by: `sleds/${sled.id}`, dimensions: [width, height] }
    if (width.value > inner)
      cannot(
        job,
        width.path,
        `${width.value} mm`,
        `at most ${inner.toFixed(1)} mm`,
        `${usual.width} is usual.`,
        width.value - inner,
      )
    const least = sled.print.leastWall
    if (k.kind !== 'keyway' && width.value < least)
      cannot(
        job,
        width.path,
        `${width.value} mm`,
        `at least the least wall, ${least} mm`,
        `The nearest that prints is ${least}.`,
        least - width.value,
      )
    if (k.kind === 'keyway' && height.value > inner - least)
      cannot(
        job,
        height.path,
        `${height.value} mm`,
        `at most ${(inner - least).toFixed(1)} mm, short of the axis`,
        `${usual.height} is usual.`,
        height.value - inner + least,
      )
    if (k.kind === 'keyway')
      return [
        {
          ...rest,
          op: 'cut',
          nest: 'keyway',
          solid: blockFacing(k.theta, 0, inner - height.value, outer + beyond, width.value, z0 - beyond, z1 + beyond),
        },
      ]
    return [
      {
        ...rest,
        op: 'add',
        nest: 'key',
        solid: blockFacing(k.theta, 0, inner - rooted, outer + height.value, width.value, z0, z1),
      },
    ]
  })
}
