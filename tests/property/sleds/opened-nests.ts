import type { Manifold } from 'manifold-3d'
import type { Kernel } from '../../../geometry/kernel/manifold.ts'
import { makeSolid, type Own } from '../../../geometry/kernel/manifold-solid.ts'
import { scoped } from '../../../geometry/kernel/scope.ts'
import type { Plan, PlanItem } from '../../../geometry/plan/plan.ts'
import { gap } from '../../../geometry/solid/gap.ts'
import { realise } from '../../../src/body/realise.ts'
import type { Assembly, Part, Sled } from '../../../src/resolve/assembly.ts'

/** Room that a nest may take beside its part, mm: the gap of its fit at both sides and the slack at its ends. */
const roomy = 1.2

/**
 * Nests that open into the nest of another part although a wall fits between: the two parts lie as far apart as two
 * nests with the process's least wall between them ask for. A contact is meant to look into the pocket it presses in.
 */
export function openedNests(kernel: Kernel, assembly: Assembly, sled: Sled, plan: Plan): string[] {
  const items = [...new Map(plan.bodies.flatMap((b) => b.items).map((x) => [x.id, x])).values()]
  const nests = assembly.parts.flatMap((part) => {
    const own = items.filter((x) => x.op === 'cut' && x.by === part.id && closed(x))
    return own.length > 0 && !part.contact ? [{ part, own }] : []
  })
  const pairs = nests.flatMap((a, i) => nests.slice(i + 1).map((b) => [a, b] as const))
  return pairs.flatMap(([a, b]) => {
    const apart = distanceOf(a.part, b.part)
    if (apart < sled.print.leastWall + roomy) return []
    const common = commonVolume(kernel, a.own, b.own)
    return common > 1e-3
      ? [
          `${a.part.id} and ${b.part.id}, ${apart.toFixed(2)} mm apart, have ${common.toFixed(2)} mm³ of their nests in common`,
        ]
      : []
  })
}

/** What is cut so that a part can be laid in or taken out reaches outwards, and may meet another such way. */
const closed = (x: PlanItem): boolean => /(pocket|shelf|cup|recess|keep-out)/.test(x.id) && !x.id.endsWith('/tongue')

function distanceOf(a: Part, b: Part): number {
  const solids = (p: Part) => p.bodies.map((body) => realise(body, (q) => q.nominal))
  return Math.min(...solids(a).flatMap((s) => solids(b).map((t) => gap(s, t).lo)))
}

function commonVolume(kernel: Kernel, a: readonly PlanItem[], b: readonly PlanItem[]): number {
  return scoped((own) => {
    const both = [a, b].map((list) => union(kernel, own, list)) as [Manifold, Manifold]
    return own(both[0].intersect(both[1])).volume()
  })
}

function union(kernel: Kernel, own: Own, items: readonly PlanItem[]): Manifold {
  return own(kernel.Manifold.union(items.map((x) => makeSolid(kernel, own, x, 48))))
}
