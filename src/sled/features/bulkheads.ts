import type { PlanItem } from '../../../geometry/plan/plan.ts'
import { dimension } from '../dimensions.ts'
import { cannot, drawnAt, innerRadius, type SledJob } from '../job.ts'

const usualThickness = 2.4

/** Typed cross walls, where the construction leaves none. The wires' way is cut through them afterwards. */
export function bulkheadItems(job: SledJob): PlanItem[] {
  const { sled, parts } = job
  return (sled.input.bulkheads ?? []).flatMap((b): PlanItem[] => {
    const path = `sleds/${sled.id}/bulkheads/${b.id}`
    const z0 = drawnAt(sled, 'bulkheads', b.id, 'z')
    if (z0 === undefined) return []
    const thickness = dimension(
      'bulkhead thickness',
      b.thickness,
      usualThickness,
      `${path}/thickness`,
      'common practice, no source',
    )
    const z1 = z0 + thickness.value
    if (thickness.value < sled.print.leastWall)
      cannot(
        job,
        thickness.path,
        `${thickness.value} mm`,
        `at least ${sled.print.leastWall} mm`,
        `The nearest that prints is ${sled.print.leastWall}.`,
        sled.print.leastWall - thickness.value,
      )
    const crossed = parts.find((p) => p.ends.rear.nominal < z1 - 0.01 && p.ends.blade.nominal > z0 + 0.01)
    if (crossed)
      cannot(
        job,
        `${path}/z`,
        `z ${z0.toFixed(2)} to ${z1.toFixed(2)}, through ${crossed.name}`,
        'a height between two parts',
        `Behind it: z ${crossed.ends.blade.nominal.toFixed(1)}.`,
        crossed.ends.blade.nominal - z0,
      )
    const [rear, blade] = [sled.ends.rear.nominal, sled.ends.blade.nominal]
    if (z0 < rear - 0.01 || z1 > blade + 0.01) {
      const nearest = z0 < rear ? rear : blade - thickness.value
      cannot(
        job,
        `${path}/z`,
        `z ${z0.toFixed(2)} to ${z1.toFixed(2)}`,
        `inside the sled, z ${rear.toFixed(2)} to ${blade.toFixed(2)}`,
        `The nearest is z ${nearest.toFixed(1)}.`,
        nearest - z0,
      )
    }
    const R = innerRadius(sled, z0, z1)
    return [
      {
        id: path,
        op: 'add',
        stage: 2,
        by: `sleds/${sled.id}`,
        nest: 'bulkhead',
        dimensions: [thickness],
        solid: { shape: 'cylinder', x: 0, y: 0, z0, z1, r0: R, r1: R },
      },
    ]
  })
}
