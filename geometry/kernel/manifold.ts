import type { Manifold, ManifoldToplevel } from 'manifold-3d'
import type { Mesh } from '../mesh/mesh.ts'
import { weld } from '../mesh/weld.ts'
import { checkPlan } from '../plan/check-plan.ts'
import { leastFacets } from '../plan/facets.ts'
import { idleItems } from '../plan/idle.ts'
import type { PlanBody, PlanItem } from '../plan/plan.ts'
import { makeSolid, type Own } from './manifold-solid.ts'
import { scoped } from './scope.ts'

export type Kernel = ManifoldToplevel

/** What is left between two cutters that all but meet, far below what any process prints, mm³: left out. */
const crumb = 1e-3

/** Why no solid came of a plan. */
export interface SolidFault {
  readonly item: string
  readonly what: string
}

export type BuildResult =
  | { readonly ok: true; readonly mesh: Mesh; readonly pieces: number }
  | { readonly ok: false; readonly faults: readonly SolidFault[] }

/**
 * One printed body of a plan as a closed mesh. All that is added is joined, then all that is cut goes in one
 * difference (a chain of cuts would be quadratic). Every number is checked before the kernel and the result after it.
 */
export function buildBody(kernel: Kernel, body: PlanBody, facets = leastFacets): BuildResult {
  const wrong = checkPlan(body)
  if (wrong.length > 0)
    return {
      ok: false,
      faults: wrong.map((w) => ({ item: w.item, what: `${w.field} is ${w.got}; it must be ${w.limit}` })),
    }
  return scoped((own) => {
    const ids = new Map<number, number>()
    const make = (item: PlanItem, i: number): Manifold => {
      const marked = own(makeSolid(kernel, own, item, facets).asOriginal())
      ids.set(marked.originalID(), i)
      return marked
    }
    const idle = idleItems(body.items)
    const indexed = body.items.flatMap((item, i) => (idle.has(i) ? [] : [{ item, solid: make(item, i) }]))
    const empty = indexed.filter((x) => x.solid.isEmpty() || x.solid.status() !== 'NoError')
    if (empty.length > 0)
      return { ok: false, faults: empty.map((x) => ({ item: x.item.id, what: `no solid (${x.solid.status()})` })) }
    if (!indexed.some((x) => x.item.op === 'add' && x.item.stage !== 2)) return nothingLeft(body)
    const result = combine(kernel, own, indexed)
    if (result.isEmpty()) return nothingLeft(body)
    if (result.status() !== 'NoError' || !(result.volume() > 0))
      return { ok: false, faults: [{ item: body.id, what: `the kernel says ${result.status()}` }] }
    const parts = result.decompose()
    for (const p of parts) own(p)
    const whole = parts.filter((p) => Math.abs(p.volume()) > crumb)
    const kept = whole.length < parts.length && whole.length > 0 ? own(kernel.Manifold.compose(whole)) : result
    return { ok: true, mesh: meshOf(kept, ids), pieces: whole.length }
  })
}

const nothingLeft = (body: PlanBody): BuildResult => ({
  ok: false,
  faults: [{ item: body.id, what: 'nothing is left of the body' }],
})

function combine(kernel: Kernel, own: Own, items: readonly { item: PlanItem; solid: Manifold }[]): Manifold {
  const of = (op: PlanItem['op'], stage: 1 | 2) =>
    items.filter((x) => x.item.op === op && (x.item.stage ?? 1) === stage).map((x) => x.solid)
  const joined = (list: Manifold[]): Manifold =>
    list.length === 1 ? (list[0] as Manifold) : own(kernel.Manifold.union(list))
  const less = (base: Manifold, cuts: Manifold[]): Manifold =>
    cuts.length === 0 ? base : own(kernel.Manifold.difference([base, ...cuts]))
  const first = less(joined(of('add', 1)), of('cut', 1))
  return less(joined([first, ...of('add', 2)]), of('cut', 2))
}

function meshOf(solid: Manifold, ids: ReadonlyMap<number, number>): Mesh {
  const m = solid.getMesh()
  const made = new Uint16Array(m.triVerts.length / 3)
  for (const [run, original] of Array.from(m.runOriginalID).entries()) {
    const [from, to] = [m.runIndex[run] as number, m.runIndex[run + 1] as number]
    made.fill(ids.get(original) ?? 0, from / 3, to / 3)
  }
  const vertices =
    m.numProp === 3
      ? m.vertProperties
      : Float32Array.from(
          { length: m.numVert * 3 },
          (_, i) => m.vertProperties[Math.floor(i / 3) * m.numProp + (i % 3)] as number,
        )
  return weld({ vertices, triangles: m.triVerts, made })
}
