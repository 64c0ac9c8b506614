import { buildBody, type Kernel } from '../../geometry/kernel/manifold.ts'
import { type GateReport, gate } from '../../geometry/mesh/gate.ts'
import type { Mesh } from '../../geometry/mesh/mesh.ts'
import { leastFacets } from '../../geometry/plan/facets.ts'
import { idleItems } from '../../geometry/plan/idle.ts'
import type { Plan, PlanBody } from '../../geometry/plan/plan.ts'
import { planBounds } from '../../geometry/plan/plan-bounds.ts'
import { remember } from '../../geometry/remember.ts'
import { bad, good, type Outcome, type Problem, problem } from '../problem/problem.ts'
import type { Assembly, Sled } from '../resolve/assembly.ts'
import { planSled } from '../sled/plan-sled.ts'

/** One printed body, ready to leave as a file. */
export interface PrintedBody {
  readonly id: string
  readonly name: string
  readonly mesh: Mesh
  readonly report: GateReport
}

export interface BuiltSled {
  readonly sled: Sled
  readonly plan: Plan
  readonly bodies: readonly PrintedBody[]
}

/** A sled with what is wrong with it: bodies that the gate refuses are there too, bodies that could not be made are not. */
export interface TriedSled extends BuiltSled {
  readonly problems: readonly Problem[]
}

/**
 * The sled of an assembly as closed meshes, with all that is wrong, named by item and input: whatever has problems may
 * be looked at, but may leave as a file only when it is forced. Fails only where there is no such sled.
 */
export function trySled(kernel: Kernel, assembly: Assembly, sledId: string, facets = leastFacets): Outcome<TriedSled> {
  const sled = assembly.sleds.find((s) => s.id === sledId)
  if (!sled)
    return bad(
      problem(
        'unknown-reference',
        'sleds',
        sledId,
        assembly.sleds.map((s) => s.id).join(', ') || 'a sled whose bores are all measured',
        'Name one of the sleds.',
      ),
    )
  const { plan, faults } = planSled(assembly, sled)
  const problems: Problem[] = faults.map((f) => f.problem)
  const bodies = plan.bodies.flatMap((body): PrintedBody[] => {
    const built = solidOf({ kernel, body, facets, leastWall: sled.print.leastWall })
    if (!built.ok) {
      problems.push(
        ...built.faults.map((f) =>
          problem(
            'solid-failed',
            whereTyped(plan, f.item),
            f.what,
            'dimensions a solid can be made from',
            'Correct this dimension.',
          ),
        ),
      )
      return []
    }
    const { mesh, report } = built
    problems.push(...report.faults.map((fault) => solidProblem(sled, fault)))
    return [{ id: body.id, name: body.name, mesh, report }]
  })
  return good({ sled, plan, bodies, problems })
}

interface SolidAsk {
  readonly kernel: Kernel
  readonly body: PlanBody
  readonly facets: number
  readonly leastWall: number
}

/**
 * A body's solid, judged. A change at the bench leaves most bodies as they were: theirs are kept, by all that they
 * follow from, so that what is given is what would be made anew. Nobody may write into a mesh.
 */
const solidOf = remember(
  8,
  ({ body, facets, leastWall }: SolidAsk) => {
    const idle = idleItems(body.items)
    const made = body.items.flatMap((x, i) =>
      idle.has(i) ? [] : [[i, x.id, x.op, x.stage, x.nest === 'mark', x.solid]],
    )
    return JSON.stringify([facets, leastWall, body.id, made], (_key, value) =>
      typeof value === 'number' && !Number.isFinite(value) ? String(value) : value,
    )
  },
  ({ kernel, body, facets, leastWall }: SolidAsk) => {
    const built = buildBody(kernel, body, facets)
    if (!built.ok) return built
    const relief = new Set(body.items.flatMap((x, i) => (x.nest === 'mark' ? [i] : [])))
    const report = gate(built.mesh, { shells: 1, bounds: planBounds(body), leastWall, relief })
    return { ok: true as const, mesh: built.mesh, report }
  },
)

function whereTyped(plan: Plan, item: string): string {
  const found = plan.bodies.flatMap((b) => b.items).find((x) => x.id === item)
  return found?.dimensions[0]?.path ?? item
}

/** What the gate found of a body of a sled, as a problem. */
export function solidProblem({ id, print }: Sled, fault: string, where = ''): Problem {
  const [got = fault] = fault.split('; ')
  const limit = got.startsWith(thinWall)
    ? `walls of ${print.leastWall} mm or more`
    : 'one closed body of the planned size'
  return problem('solid-failed', `sleds/${id}`, `${where}${got}`, limit, hint(fault))
}

/** How the gate begins what it says of a thin wall. */
const thinWall = 'a wall of'

function hint(fault: string): string {
  if (fault.startsWith(thinWall))
    return 'Make the sled wider or the nest smaller there, move what is beside it, or choose the open cradle.'
  if (fault.includes('pieces'))
    return 'A nest cuts the sled through: make it narrower or shallower, or leave more wall at the ends.'
  if (fault.includes('shut off'))
    return 'Give that nest an opening, or lead a channel into it: nothing could be put in.'
  return 'Change a dimension of the sled a little and try again.'
}
