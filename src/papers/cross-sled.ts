import type { PlanItem } from '../../geometry/plan/plan.ts'
import { carve, join } from '../../geometry/region/carve.ts'
import type { Region } from '../../geometry/region/region.ts'
import { planSolidAt } from './nominal.ts'
import { type Outline, outlinesOf } from './outline.ts'

/**
 * The sled's material at one height, to be painted in this order: what is added, what is cut out of it, then the
 * edges that are left.
 */
export interface SledCross {
  readonly adds: readonly Outline[]
  readonly cuts: readonly Outline[]
  readonly edges: readonly Outline[]
}

/** The sled's material as one region; undefined where there is none at this height. */
export function sledRegionAt(items: readonly PlanItem[], z: number): Region | undefined {
  const adds = regions(items, 'add', z)
  return adds.length === 0 ? undefined : carve(join(adds), regions(items, 'cut', z))
}

export function sledCross(items: readonly PlanItem[], z: number): SledCross {
  const material = sledRegionAt(items, z)
  if (!material) return { adds: [], cuts: [], edges: [] }
  return {
    adds: regions(items, 'add', z).flatMap(outlinesOf),
    cuts: regions(items, 'cut', z).flatMap(outlinesOf),
    edges: outlinesOf(material),
  }
}

/** Of discs about one centre only the widest counts: pieces of the body reach a little into each other. */
function regions(items: readonly PlanItem[], op: PlanItem['op'], z: number): Region[] {
  const all = items.flatMap((i) => {
    const region = i.op === op ? planSolidAt(i.solid, z) : undefined
    return region ? [region] : []
  })
  return all.filter((a, i) => !all.some((b, j) => j !== i && swallows(b, a, j < i)))
}

function swallows(b: Region, a: Region, first: boolean): boolean {
  if (a.form.kind !== 'disc' || b.form.kind !== 'disc') return false
  const same = Math.hypot(a.form.c.x - b.form.c.x, a.form.c.y - b.form.c.y) < 1e-9
  return same && (b.form.r > a.form.r || (b.form.r === a.form.r && first))
}
