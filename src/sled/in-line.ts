import type { Plan, PlanItem, PlanSolid } from '../../geometry/plan/plan.ts'
import { planSpan } from '../../geometry/plan/plan.ts'
import { least } from '../quantity/quantity.ts'
import type { Part, Sled } from '../resolve/assembly.ts'
import { type Around, nestJob, sledJob } from './job.ts'
import { pocketSpan } from './nests/round-nest.ts'
import { seenFacing } from './round.ts'

type End = 'rear' | 'blade'

/** Faces closer than this leave nothing between them, mm. */
const touching = 0.01

/**
 * The parts that one part pushes along, nearest first: where its own pocket ends in the nest of another, no wall stops
 * it, and it goes on to that part, and so on. It ends at a part that something presses on from there.
 */
export function inLine(
  around: Around,
  sled: Sled,
  plan: Plan,
  part: Part,
  end: End,
  isPressed: (p: Part, end: End) => boolean,
): Part[] {
  const job = sledJob(around, sled)
  const cuts = plan.bodies.flatMap((b) => b.items.filter((x) => x.op === 'cut'))
  const line = [part]
  for (;;) {
    const last = line.at(-1) as Part
    if (last !== part && isPressed(last, end)) break
    const z = faceOf(pocketSpan(nestJob(job, last)), end)
    const next = job.parts.find(
      (p) =>
        !line.includes(p) && !p.contact && isAhead(last, p, end) && cuts.some((x) => lets(x, p, last, z, job.sled)),
    )
    if (!next) break
    line.push(next)
  }
  return line.slice(1)
}

/** Whether the sled has anything at a height for a part to be stopped by. */
export function isStopped(plan: Plan, z: number, end: End): boolean {
  const spans = plan.bodies.flatMap((b) => b.items.filter((x) => x.op === 'add').map((x) => planSpan(x.solid)))
  return spans.some(({ z0, z1 }) =>
    end === 'blade' ? z1 > z + touching && z0 <= z + touching : z0 < z - touching && z1 >= z - touching,
  )
}

const faceOf = ({ z0, z1 }: { z0: number; z1: number }, end: End): number => (end === 'rear' ? z0 : z1)

function isAhead(of: Part, p: Part, end: End): boolean {
  const by = p.ends.rear.nominal + p.ends.blade.nominal - of.ends.rear.nominal - of.ends.blade.nominal
  return end === 'blade' ? by > 0 : by < 0
}

/** Whether a cut of another's nest begins where a pocket ends and takes away so much that no ledge is left. */
function lets({ by, solid }: PlanItem, p: Part, last: Part, z: number, sled: Sled): boolean {
  if (by !== p.id) return false
  const { z0, z1 } = planSpan(solid)
  return z0 <= z + touching && z1 >= z - touching && reachPast(solid, last) < sled.print.leastWall
}

/** How far a part reaches past the side of a cut: a ledge so wide would be left to stop it. */
function reachPast(solid: PlanSolid, { across, extent }: Part): number {
  const c = { x: across.x.nominal, y: across.y.nominal }
  const [u, v] = [least(extent.halfU), least(extent.halfV)]
  if (solid.shape === 'cylinder')
    return (
      Math.hypot(c.x - solid.x, c.y - solid.y) + (extent.round ? u : Math.hypot(u, v)) - Math.min(solid.r0, solid.r1)
    )
  if (solid.shape !== 'box') return Number.POSITIVE_INFINITY
  const [own, other] = [seenFacing(c, solid.facing), seenFacing(solid, solid.facing)]
  const turn = ((across.facing - solid.facing) * Math.PI) / 180
  const [cos, sin] = [Math.abs(Math.cos(turn)), Math.abs(Math.sin(turn))]
  const [high, wide] = extent.round ? [u, u] : [v * cos + u * sin, v * sin + u * cos]
  return Math.max(
    Math.abs(own.v - other.v) + high - solid.height / 2,
    Math.abs(own.aside - other.aside) + wide - solid.width / 2,
  )
}
