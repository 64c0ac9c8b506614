import type { PlanItem } from '../../../geometry/plan/plan.ts'
import { dimension } from '../dimensions.ts'
import { cannot, drawnAt, innerRadius, type SledJob, tooShort } from '../job.ts'

/** Half-angle of a switch tower, degrees, and how deep it is rooted in the body, mm: common practice, no source. */
const usualHalf = 20
const rooted = 2

/** Ring sectors that stand up from the body and carry a switch close under the wall. */
export function towerItems(job: SledJob): PlanItem[] {
  const { sled } = job
  return (sled.input.towers ?? []).flatMap((t): PlanItem[] => {
    const path = (field: string) => `sleds/${sled.id}/towers/${t.id}/${field}`
    const [z0, z1] = [drawnAt(sled, 'towers', t.id, 'from'), drawnAt(sled, 'towers', t.id, 'to')]
    if (z0 === undefined || z1 === undefined) return []
    if (tooShort(job, path('to'), z0, z1)) return []
    const R = innerRadius(sled, z0, z1)
    const least = sled.print.leastWall
    const half = dimension('tower half-angle', t.half, usualHalf, path('half'), 'common practice, no source', '°')
    const outer = dimension('tower radius', t.outer, t.outer, path('outer'), 'typed')
    const inner = dimension('tower root', t.inner, R - rooted, path('inner'), 'rooted in the body')
    if (outer.value <= R)
      cannot(
        job,
        outer.path,
        `${outer.value} mm`,
        `more than the body's radius, ${R.toFixed(2)} mm`,
        `A tower stands out of the body: ${(R + 1).toFixed(1)}, for example.`,
        R - outer.value,
      )
    if (half.value <= 0 || half.value > 90)
      cannot(
        job,
        half.path,
        `${half.value}°`,
        'above 0 and at most 90°',
        `${usualHalf} is usual.`,
        half.value <= 0 ? half.value : half.value - 90,
      )
    if (inner.value > R - least)
      cannot(
        job,
        inner.path,
        `${inner.value} mm`,
        `at most ${(R - least).toFixed(2)} mm, or it stands loose`,
        `The nearest that holds is ${(R - least).toFixed(2)}; ${(R - rooted).toFixed(2)} is usual.`,
        inner.value - R + least,
      )
    return [
      {
        id: `sleds/${sled.id}/towers/${t.id}`,
        op: 'add',
        by: `sleds/${sled.id}`,
        nest: 'switch tower',
        dimensions: [half, outer, inner],
        solid: { shape: 'ring-sector', z0, z1, rIn: inner.value, rOut: outer.value, theta: t.theta, half: half.value },
      },
    ]
  })
}
