import type { PlanBody, PlanItem } from '../../geometry/plan/plan.ts'
import { carve, join } from '../../geometry/region/carve.ts'
import type { Region } from '../../geometry/region/region.ts'
import { planSolidAt } from './nominal.ts'
import { type Outline, outlinesOf } from './outline.ts'

/** Added material, and what is cut out of it, in this order. */
export interface SledLayer {
  readonly adds: readonly Outline[]
  readonly cuts: readonly Outline[]
}

/** The sled's material at one height: each printed body as layers one after the other, and the edges that are left. */
export interface SledCross {
  readonly bodies: readonly (readonly SledLayer[])[]
  readonly edges: readonly Outline[]
}

/** The material of each body that there is at this height. */
export function sledRegionsAt(bodies: readonly PlanBody[], z: number): Region[] {
  return bodies.flatMap((b) => {
    const first = built(undefined, b.items, 1, z)
    const whole = built(first, b.items, 2, z)
    return whole && whole.edges.length > 0 ? [whole] : []
  })
}

function built(before: Region | undefined, items: readonly PlanItem[], stage: 1 | 2, z: number): Region | undefined {
  const adds = [...(before ? [before] : []), ...regions(items, 'add', stage, z)]
  return adds.length === 0 ? undefined : carve(join(adds), regions(items, 'cut', stage, z))
}

export function sledCross(bodies: readonly PlanBody[], z: number): SledCross {
  const here = bodies.filter((b) => sledRegionsAt([b], z).length > 0)
  return {
    bodies: here.map(({ items }) =>
      ([1, 2] as const)
        .map((stage) => ({
          adds: regions(items, 'add', stage, z).flatMap(outlinesOf),
          cuts: regions(items, 'cut', stage, z).flatMap(outlinesOf),
        }))
        .filter((l) => l.adds.length > 0 || l.cuts.length > 0),
    ),
    edges: sledRegionsAt(here, z).flatMap(outlinesOf),
  }
}

/** Of discs about one centre only the widest counts: pieces of the body reach a little into each other. */
function regions(items: readonly PlanItem[], op: PlanItem['op'], stage: 1 | 2, z: number): Region[] {
  const all = items.flatMap((i) => {
    const region = i.op === op && (i.stage ?? 1) === stage ? planSolidAt(i.solid, z) : undefined
    return region ? [region] : []
  })
  return all.filter((a, i) => !all.some((b, j) => j !== i && swallows(b, a, j < i)))
}

function swallows(b: Region, a: Region, first: boolean): boolean {
  if (a.form.kind !== 'disc' || b.form.kind !== 'disc') return false
  const same = Math.hypot(a.form.c.x - b.form.c.x, a.form.c.y - b.form.c.y) < 1e-9
  return same && (b.form.r > a.form.r || (b.form.r === a.form.r && first))
}
