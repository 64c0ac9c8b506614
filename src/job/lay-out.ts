import { besideOneAnother } from '../../geometry/mesh/bed.ts'
import { type GateReport, gate } from '../../geometry/mesh/gate.ts'
import type { Mesh } from '../../geometry/mesh/mesh.ts'
import { boundsAfter, type Motion, moved, shifted, standStill } from '../../geometry/mesh/motion.ts'
import { type End, type Orientation, orientationOf, turnOf } from '../../geometry/mesh/orientation.ts'
import { type PlanBody, planSpan } from '../../geometry/plan/plan.ts'
import type { BuiltSled, PrintedBody } from './build-sled.ts'

/** How bodies lie in their files: as they are printed, or where they are in the hilt. */
export const fileLayouts = ['printed', 'assembled'] as const
export type FileLayout = (typeof fileLayouts)[number]

/** A body where its file has it. */
export interface PlacedBody {
  readonly body: PrintedBody
  readonly mesh: Mesh
  /** Of the mesh as the file holds it. */
  readonly report: GateReport
  /** Undefined where it is left as it lies in the hilt. */
  readonly orientation: Orientation | undefined
  /** From the frame of the hilt to that of the file. */
  readonly toFile: Motion
}

/**
 * The bodies of a sled as printed: each turned the way it prints best, seated on z = 0, beside one another. Moving a
 * body rounds it anew, so it passes the gate again as the file will hold it.
 */
export function layOut(built: Pick<BuiltSled, 'bodies' | 'plan'>, layout: FileLayout): PlacedBody[] {
  if (layout === 'assembled')
    return built.bodies.map((body) => ({
      body,
      mesh: body.mesh,
      report: body.report,
      orientation: undefined,
      toFile: standStill,
    }))
  const turned = built.bodies.map((body) => {
    const plan = built.plan.bodies.find((b) => b.id === body.id)
    const orientation = orientationOf(body.mesh, plan ? splitEnds(plan, body) : new Set())
    const turn = turnOf(orientation)
    return { body, orientation, turn, bounds: boundsAfter(body.mesh, turn) }
  })
  const corners = besideOneAnother(
    turned.map(({ bounds: { min, max } }) => ({ x: max[0] - min[0], y: max[1] - min[1] })),
  )
  return turned.map(({ body, orientation, turn, bounds }, i) => {
    const corner = corners[i] as { x: number; y: number }
    const toFile = shifted(turn, [corner.x - bounds.min[0], corner.y - bounds.min[1], -bounds.min[2]])
    const mesh = moved(body.mesh, toFile)
    return {
      body,
      mesh,
      report: gate(mesh, { shells: 1, bounds: boundsAfter(body.mesh, toFile) }),
      orientation,
      toFile,
    }
  })
}

/** The ends of a piece that are faces of a split: the cut that took the rest away ends there. */
function splitEnds(plan: PlanBody, { report: { bounds } }: PrintedBody): ReadonlySet<End> {
  const cuts = plan.items.filter((x) => x.nest === 'split').map((x) => planSpan(x.solid))
  const near = (a: number, b: number): boolean => Math.abs(a - b) < 0.01
  return new Set([
    ...(cuts.some((c) => near(c.z1, bounds.min[2])) ? (['rear'] as const) : []),
    ...(cuts.some((c) => near(c.z0, bounds.max[2])) ? (['blade'] as const) : []),
  ])
}
