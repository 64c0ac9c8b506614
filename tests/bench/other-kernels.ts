import { buildBody, type Kernel } from '../../geometry/kernel/manifold.ts'
import { leastFacets } from '../../geometry/plan/facets.ts'
import type { Plan, PlanBody, PlanItem } from '../../geometry/plan/plan.ts'
import { jscadBody } from '../oracle/kernels/jscad-body.ts'
import { loadOpenCascade, openCascadeBody } from '../oracle/kernels/opencascade-body.ts'
import { row, timed } from './timed.ts'

/** The same plan made and measured by each kernel: Manifold and JSCAD at 96 facets, OpenCascade with true rounds. */
export async function besideOthers(kernel: Kernel, plan: Plan): Promise<void> {
  const oc = await loadOpenCascade()
  const each = (work: (body: PlanBody) => unknown) => () => {
    for (const body of plan.bodies) work(body)
  }
  const solids = plan.bodies.reduce((n, b) => n + b.items.length, 0)
  const same = `the same plan of ${solids} solids`
  row(
    `Manifold, ${same}`,
    timed(
      15,
      5,
      each((b) => buildBody(kernel, b, leastFacets)),
    ),
    '',
  )
  row(
    `JSCAD (union first), ${same}`,
    timed(
      5,
      2,
      each((b) => jscadBody(b, leastFacets)),
    ),
    'for comparison',
  )
  row(
    `OpenCascade (list of tools), ${same}`,
    timed(
      5,
      1,
      each((b) => openCascadeBody(oc, b)),
    ),
    'for comparison',
  )
}

/** A round body with so many holes of 1.2 mm across it, in rows around and along. */
function drilled(cutters: number): PlanBody {
  const rest = { by: 'sleds/bench', nest: 'bench', dimensions: [] }
  const holes = Array.from({ length: cutters }, (_, i): PlanItem => {
    const [around, along] = [i % 8, Math.floor(i / 8)]
    const solid = { shape: 'spoke', z: 4 + 3 * along, theta: 45 * around, rIn: 6, rOut: 14, radius: 0.6 } as const
    return { ...rest, id: `hole-${i}`, op: 'cut', solid }
  })
  const body: PlanItem = {
    ...rest,
    id: 'body',
    op: 'add',
    solid: { shape: 'cylinder', x: 0, y: 0, z0: 0, z1: 300, r0: 12.7, r1: 12.7 },
  }
  return { id: 'bench', name: 'bench', items: [body, ...holes] }
}

/** Linear in cutters: the time a cutter takes stays what it is, however many there are. */
export function growth(kernel: Kernel): void {
  for (const cutters of [10, 20, 40, 80, 160]) {
    const body = drilled(cutters)
    const t = timed(15, 5, () => void buildBody(kernel, body, leastFacets))
    row(`a body with ${cutters} cutters, Manifold`, t, `${(t.median / cutters).toFixed(3)} ms a cutter`)
  }
}
