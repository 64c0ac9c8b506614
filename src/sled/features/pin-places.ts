import { slabsOf } from '../../../geometry/plan/cross-section.ts'
import { itemNumber } from '../../../geometry/plan/one-item.ts'
import { type Dimension, type PlanBody, type PlanItem, planSpan } from '../../../geometry/plan/plan.ts'
import { polar } from '../../../geometry/region/point.ts'
import { signedDistance } from '../../../geometry/region/signed-distance.ts'
import { remember } from '../../../geometry/remember.ts'
import { cannot, outerRadius, type SledJob } from '../job.ts'

/** Pins across a split. */
interface Pins {
  readonly z: number
  readonly gap: Dimension
  readonly diameter: Dimension
  readonly length: Dimension
}

/** Two places, far from each other, where a pin with a wall about it fits into the material on both sides of the plane. */
export function pinPlaces(job: SledJob, whole: PlanBody, c: Pins): { x: number; y: number }[] {
  const need = c.diameter.value / 2 + c.gap.value + job.sled.print.leastWall
  const [z0, z1] = [c.z - c.length.value, c.z + c.length.value + c.gap.value]
  const near = whole.items.filter(({ solid }) => planSpan(solid).z1 > z0 && planSpan(solid).z0 < z1)
  const found = freePlaces({ near, z0, z1, need, R: outerRadius(job.sled, z0, z1) })
  const [first, second] = found
  if (!first || !second || far(second, first) < 4 * need) {
    cannot(
      job,
      c.diameter.path,
      `pins of ${c.diameter.value} mm at z ${c.z}`,
      'two places with a wall about them',
      'Use thinner pins, another height, or a dovetail.',
      need,
    )
    return []
  }
  return [first, second]
}

interface PinAsk {
  readonly near: readonly PlanItem[]
  readonly z0: number
  readonly z1: number
  readonly need: number
  readonly R: number
}

/** The deepest place in the material beside the plane, and the one farthest from it that is deep enough. */
const freePlaces = remember(
  8,
  (a: PinAsk) => JSON.stringify([a.near.map(itemNumber), a.z0, a.z1, a.need, a.R]),
  ({ near, z0, z1, need, R }: PinAsk): { x: number; y: number }[] => {
    const depth = slabsOf(near, true)
      .filter((s) => s.z1 > z0 && s.z0 < z1)
      .map((s) => signedDistance(s.region))
    const free: { x: number; y: number; d: number }[] = []
    for (let r = need; r <= R - need; r += 1)
      for (let theta = 0; theta < 360; theta += 10) {
        const { x, y } = polar(r, theta)
        let d = Number.POSITIVE_INFINITY
        for (const f of depth) if (d >= need) d = Math.min(d, -f(x, y))
        if (d >= need) free.push({ x, y, d })
      }
    const [first] = [...free].sort((a, b) => b.d - a.d)
    const second = first && [...free].sort((a, b) => far(b, first) - far(a, first))[0]
    return first && second ? [first, second] : []
  },
)

const far = (a: { x: number; y: number }, b: { x: number; y: number }): number => Math.hypot(a.x - b.x, a.y - b.y)
