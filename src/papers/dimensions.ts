import type { Dimension, PlanItem } from '../../geometry/plan/plan.ts'
import { valueAt } from '../project/path.ts'
import type { Project } from '../project/schema/project.ts'
import type { Assembly, Sled } from '../resolve/assembly.ts'
import { bodiesOf } from './plans.ts'
import type { SledDimension } from './sled-dimension.ts'
import { placesOf } from './sled-places.ts'

/** What a default that follows from others is typed as: most say where to change what they follow from. */
const ownField: Readonly<Record<string, string>> = { 'pocket radius': 'pocketRadius', 'channel radius': 'r' }

/** Every dimension of every sled, once, in the order of the plan. Same assembly, same list. */
export function dimensionsOf(project: Project, assembly: Assembly): readonly SledDimension[] {
  return assembly.sleds.flatMap((sled) => {
    const items = bodiesOf(assembly, sled).flatMap((b) => b.items)
    const planned = items.flatMap((item) => dimensionsOfItem(project, sled, item))
    const places = placesOf(assembly, sled, items).map((d) => ({ ...d, typeable: takes(project, d.path) }))
    return once([...planned, ...places])
  })
}

/** The dimensions that made one item of the plan, and so each face of it. */
export const dimensionsOfItem = (project: Project, sled: Sled, item: PlanItem): SledDimension[] =>
  item.dimensions.map((d) => ofPlan(project, sled, item, d))

function ofPlan(project: Project, sled: Sled, item: PlanItem, d: Dimension): SledDimension {
  const own = ownField[d.name]
  const path = own === undefined ? d.path : d.path.replace(/[^/]+$/, own)
  const [, part] = /\/nests\/(parts\/[^/]+)\//.exec(d.path) ?? []
  const common = { sled: sled.id, path, unit: d.unit, nest: item.nest, part: part ?? partOf(item) }
  const whole = outside(sled, item, d)
  const kind = whole?.kind ?? d.how
  return {
    ...common,
    name: d.name,
    value: d.value,
    kind,
    source: d.source,
    ...whole,
    typeable: (kind !== 'derived' || own !== undefined) && takes(project, whole?.path ?? path),
  }
}

const partOf = (item: PlanItem): string | undefined => (item.by.startsWith('parts/') ? item.by : undefined)

/**
 * The body and its own rings. Of a slim sled the typed diameter is that of its rings; a body that steps with the bore
 * has one diameter for each step, and none of them is typed by itself.
 */
function outside(
  sled: Sled,
  item: PlanItem,
  d: Dimension,
): (Partial<SledDimension> & { kind: SledDimension['kind'] }) | undefined {
  const [first] = sled.pieces
  const typedPieces = (sled.input.bodies ?? []).length > 0
  if (!first || typedPieces || d.unit !== 'mm') return undefined
  const slim = sled.input.outside === 'slim'
  if (d.name === 'ring diameter' && d.how === 'derived')
    return { kind: first.how, path: first.path, source: first.source }
  if (d.name !== 'body diameter') return undefined
  if (slim)
    return {
      kind: 'derived',
      path: `sleds/${sled.id}/slimBy`,
      source: 'its rings, less how much slimmer it is on each side',
    }
  if (sled.pieces.length === 1) return undefined
  const piece = sled.pieces.find((p) => item.id.startsWith(`sleds/${sled.id}/body-${sled.pieces.indexOf(p) + 1}`))
  return {
    kind: 'derived',
    name: piece ? `body diameter, z ${piece.z0.toFixed(1)} to ${piece.z1.toFixed(1)}` : d.name,
  }
}

/** Whether somebody wrote down the record that the path is in; a nest's is made by typing. */
const takes = (project: Project, path: string): boolean =>
  path.includes('/nests/') || valueAt(project, path.replace(/\/[^/]+$/, '')) !== undefined

function once(list: readonly SledDimension[]): SledDimension[] {
  const seen = new Set<string>()
  return list.filter((d) => {
    const key = `${d.path} ${d.name}`
    return !seen.has(key) && seen.add(key)
  })
}
