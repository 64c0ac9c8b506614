import type { PlanItem } from '../../../geometry/plan/plan.ts'
import type { Point } from '../../../geometry/region/point.ts'
import { most } from '../../quantity/quantity.ts'
import { dimension } from '../dimensions.ts'
import { beyond, cannot, drawnAt, type NestJob, outerRadius } from '../job.ts'
import { rare } from '../rare.ts'
import { blockFacing, rodItem, seenFacing } from '../round.ts'
import { isNotched, roundNest } from './round-nest.ts'

/**
 * Whether nothing leads into a closed pocket: no split across it, no end it breaks through, no side it breaks through
 * so far that the part passes, no window as large as the part, no bay above it.
 */
function shutIn(job: NestJob, c: Point, r: number, z0: number, z1: number): boolean {
  const { sled } = job
  const { construction, splits = [] } = sled.input
  if (construction !== undefined && construction !== 'full-cage') return false
  const across = splits.some((s) => {
    const z = drawnAt(sled, 'splits', s.id, 'z')
    return z !== undefined && z > z0 && z < z1
  })
  const inside = z0 > sled.ends.rear.nominal && z1 < sled.ends.blade.nominal
  if (across || !inside) return false
  const own = most(job.part.extent.halfU)
  const windows = sled.input.windows?.length ? rare().windowItems(job) : []
  return !passesSide(c, r, own, outerRadius(sled, z0, z1)) && !windows.some((w) => passesWindow(job, w, c, own))
}

/** Whether a pocket breaks through the outside so far that its part goes out sideways: where two circles cross. */
function passesSide(c: Point, r: number, own: number, outside: number): boolean {
  const e = Math.hypot(c.x, c.y)
  if (e + r <= outside) return false
  const x = (e * e + outside * outside - r * r) / (2 * e)
  return x <= e || Math.sqrt(Math.max(0, outside * outside - x * x)) >= own
}

/** Whether a window is as wide and long as the part and reaches down to the middle of it. */
function passesWindow({ part }: NestJob, { solid: s }: PlanItem, c: Point, own: number): boolean {
  if (s.shape !== 'box') return false
  const { v, aside } = seenFacing(c, s.facing)
  const at = seenFacing(s, s.facing)
  const long = s.z0 <= part.ends.rear.nominal && s.z1 >= part.ends.blade.nominal
  return long && Math.abs(at.aside - aside) + own <= s.width / 2 && at.v - s.height / 2 <= v
}

/**
 * A round pocket along the axis, open to one side so that the part can be laid in. It reaches to the faces the
 * contacts stand on; without a contact it leaves the axial gap at that end. A typed opening width of 0 closes it.
 */
export function roundPocket(job: NestJob, nest: string): PlanItem[] {
  const { part, typed, sled } = job
  const { c, z0, z1, gap, radius, opening } = roundNest(job)
  const wide = 'as wide as the pocket: the part drops in'
  const width = dimension('opening width', typed?.openingWidth, 2 * radius.value, job.path('openingWidth'), wide)
  const rest = { op: 'cut' as const, by: part.id, nest, dimensions: [gap, radius, width, opening] }
  const pocket = rodItem(rest, `${part.id}/pocket`, c, radius.value, z0, z1)
  const notch = isNotched(job) ? rare().ejectionNotch(job, { c, z0, z1, gap, radius, opening }) : []
  if (width.value <= 0) {
    if (shutIn(job, c, radius.value, z0, z1))
      cannot(
        job,
        width.path,
        '0 mm, closed all round',
        'an opening, a split across the pocket, or a window the part goes in by',
        `As wide as the pocket, ${(2 * radius.value).toFixed(2)}, lets the part in.`,
        2 * radius.value,
      )
    return [pocket, ...notch]
  }
  const widest = 2 * radius.value
  if (width.value > widest + 0.001)
    cannot(
      job,
      width.path,
      `${width.value} mm`,
      `at most the pocket's own width, ${widest.toFixed(2)} mm`,
      `The nearest that works is ${widest.toFixed(2)}; left out, it is that wide.`,
      width.value - widest,
    )
  const { v, aside } = seenFacing(c, opening.value)
  const top = outerRadius(sled, z0, z1) + beyond
  const w = Math.min(width.value, widest)
  const mouth: PlanItem = {
    ...rest,
    id: `${part.id}/opening`,
    solid: blockFacing(opening.value, aside, v, Math.max(top, v + 1), w, z0, z1),
  }
  return [pocket, mouth, ...notch]
}
