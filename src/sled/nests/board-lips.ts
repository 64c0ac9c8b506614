import type { Dimension, PlanItem } from '../../../geometry/plan/plan.ts'
import { least, most } from '../../quantity/quantity.ts'
import { dimension } from '../dimensions.ts'
import { cannot, type NestJob } from '../job.ts'
import { blockFacing } from '../round.ts'
import { face, type Plate } from './board-shelf.ts'

const source = 'common practice, no source'
/** Length of a lip, mm. */
const usualLength = 6

interface LipAsk {
  readonly lip: Dimension
  readonly thick: Dimension
  readonly width: Dimension
  readonly plate: Plate
  readonly z0: number
  readonly z1: number
  readonly rest: Omit<PlanItem, 'id' | 'solid'>
}

/** Short lips over both long edges at both ends: they stand where the shelf was cut, so they come in the second stage. */
export function boardLips(job: NestJob, a: LipAsk): PlanItem[] {
  const most = a.width.value / 2 - 2
  if (a.lip.value > Math.min(1.5, most)) {
    cannot(
      job,
      a.lip.path,
      `${a.lip.value} mm`,
      `at most ${Math.min(1.5, most).toFixed(2)} mm`,
      '0.4 to 0.6 holds a board and lets it snap in.',
      a.lip.value - Math.min(1.5, most),
    )
    return []
  }
  const { thick } = a
  const longest = (a.z1 - a.z0) / 2
  const own = Math.min(usualLength, longest)
  const lipLength = dimension('lip length', job.typed?.lipLength, own, job.path('lipLength'), source)
  if (lipLength.value > longest || lipLength.value < 1) {
    const nearest = Math.max(1, Math.min(longest, lipLength.value)).toFixed(2)
    cannot(
      job,
      lipLength.path,
      `${lipLength.value} mm`,
      `1 to ${longest.toFixed(2)} mm, half the shelf`,
      `The nearest that works is ${nearest}.`,
      Math.max(lipLength.value - longest, 1 - lipLength.value),
    )
    return []
  }
  if (thick.value < job.sled.print.leastWall) {
    const least = job.sled.print.leastWall
    const hint = `The nearest that prints is ${least}.`
    cannot(job, thick.path, `${thick.value} mm`, `at least the least wall, ${least} mm`, hint, least - thick.value)
  }
  const half = a.width.value / 2
  underLip(job, a, half - a.lip.value, lipLength.value)
  return [a.z0, a.z1 - lipLength.value].flatMap((z, i) =>
    [-1, 1].map(
      (side): PlanItem => ({
        ...a.rest,
        id: `${job.part.id}/lip-${i + 1}${side < 0 ? 'a' : 'b'}`,
        op: 'add',
        stage: 2,
        nest: 'board lip',
        dimensions: [...a.rest.dimensions, lipLength, thick],
        solid: blockFacing(
          a.plate.facing,
          a.plate.aside + side * (half - a.lip.value / 2 + 0.3),
          a.plate.top,
          a.plate.top + thick.value,
          a.lip.value + 0.6,
          z,
          z + lipLength.value,
        ),
      }),
    ),
  )
}

/** The edges under the lips are bare: what stands on the board there can be laid in past none of them. */
function underLip(job: NestJob, { lip, plate, z0, z1 }: LipAsk, free: number, length: number): void {
  for (const { name, shape } of job.part.bodies.slice(1)) {
    if (shape.kind !== 'box' || most(face(shape, plate.facing, shape.halfHeight, 1)) <= plate.top) continue
    if (least(shape.z0) >= z0 + length && most(shape.z1) <= z1 - length) continue
    const left = plate.aside - least(face(shape, plate.facing + 90, shape.halfWidth, -1))
    const right = most(face(shape, plate.facing + 90, shape.halfWidth, 1)) - plate.aside
    const under = Math.max(left, right) - free
    if (under > 0)
      cannot(
        job,
        lip.path,
        `${lip.value} mm`,
        `at most ${Math.max(0, lip.value - under).toFixed(2)} mm beside ${name}`,
        'Let the lips be smaller or shorter, or leave them out.',
        under,
      )
  }
}
