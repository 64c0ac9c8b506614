import type { Plan, PlanBody, PlanItem } from '../../geometry/plan/plan.ts'
import { planSpan } from '../../geometry/plan/plan.ts'
import type { Body } from '../body/body.ts'
import type { Sled } from '../resolve/assembly.ts'
import { fullCage } from './constructions/full-cage.ts'
import { type Around, type SledFault, type SledJob, sledJob } from './job.ts'
import { wireChannels } from './nests/wire-channel.ts'
import { rare } from './rare.ts'

export interface SledPlan {
  readonly plan: Plan
  /** What is bought and moves with the sled: rods. */
  readonly hardware: readonly Body[]
  /** What cannot be built as asked: the parameter, the value got, and the nearest that works. */
  readonly faults: readonly SledFault[]
}

/**
 * The plan of one sled: solids to add and to cut, each naming who asked for it. Same assembly, same plan. With faults
 * the plan is still there to be looked at, but no file may be made of it.
 */
export function planSled(assembly: Around, sled: Sled): SledPlan {
  const job = sledJob(assembly, sled)
  const bare = bodiesOf(job)
  const nests = uniqueCuts(bare)
  const standing = bare.flatMap((b) => b.items.filter((x) => x.op === 'add' && x.nest === 'cradle arm'))
  const { construction, windows, rods, splits, marks, standardMarks } = sled.input
  const windowCuts = windows?.length ? rare().windowItems(job) : []
  const ownRods = construction === 'discs-on-rods' || rods?.length ? rare().rodsOf(job, nests) : []
  const rodCuts = ownRods.length > 0 ? rare().rodItems(job, ownRods) : []
  const holes = [...windowCuts, ...rodCuts]
  const ways = [...holes, ...wireChannels(job, [...nests, ...holes], standing)]
  const bodies = bare.map((b) => throughAll(b, ways))
  const pieces = splits?.length ? bodies.flatMap((b) => rare().splitBodies(job, b)) : bodies
  const marked =
    construction === 'discs-on-rods' || !(marks?.length || standardMarks)
      ? pieces
      : pieces.map((b) => ({ ...b, items: [...b.items, ...within(b, rare().markItems(job, b.items))] }))
  const hardware = ownRods.length > 0 ? rare().rodBodies(job, ownRods) : []
  return { plan: { id: sled.id, name: sled.name, bodies: marked }, hardware, faults: job.faults }
}

function bodiesOf(job: SledJob): PlanBody[] {
  const { sled } = job
  const { construction, keys, towers } = sled.input
  if (construction === 'discs-on-rods') return rare().discsOnRods(job)
  const body = construction === 'open-cradle' ? rare().openCradle(job) : fullCage(job)
  const standing = [
    ...(keys?.length ? rare().keyItems(job) : []),
    ...(towers?.length ? rare().towerItems(job) : []),
    ...(sled.input.bulkheads?.length ? rare().bulkheadItems(job) : []),
  ]
  return [{ id: sled.id, name: sled.name, items: [...body, ...standing] }]
}

/** What all bodies together cut, each item once. */
function uniqueCuts(bodies: readonly PlanBody[]): PlanItem[] {
  return [...new Map(bodies.flatMap((b) => b.items.filter((x) => x.op === 'cut')).map((x) => [x.id, x])).values()]
}

/** Windows and the ways for wires and rods, cut last of all so that no wall put in later closes them. */
function throughAll(body: PlanBody, ways: readonly PlanItem[]): PlanBody {
  const late = body.items.some((x) => x.stage === 2)
  const cuts = ways.filter((x) => meets(x, body))
  return { ...body, items: [...body.items, ...cuts.map((x): PlanItem => (late ? { ...x, stage: 2 } : x))] }
}

function meets(x: PlanItem, body: PlanBody): boolean {
  const spans = body.items.filter((o) => o.op === 'add').map((o) => planSpan(o.solid))
  const { z0, z1 } = planSpan(x.solid)
  return spans.some((s) => s.z1 > z0 && s.z0 < z1)
}

/** A mark belongs to the piece it lies on as a whole. */
function within(body: PlanBody, marks: readonly PlanItem[]): PlanItem[] {
  const cuts = body.items.filter((x) => x.nest === 'split').map((x) => planSpan(x.solid))
  return marks.filter((m) => {
    const { z0, z1 } = planSpan(m.solid)
    return cuts.every((c) => z1 <= c.z0 || z0 >= c.z1)
  })
}
