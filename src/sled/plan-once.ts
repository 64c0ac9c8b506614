import { equal } from '../../geometry/equal.ts'
import { oneItem } from '../../geometry/plan/one-item.ts'
import type { Body } from '../body/body.ts'
import { oneBody } from '../body/one-body.ts'
import type { Sled } from '../resolve/assembly.ts'
import { sledBodies } from './envelope.ts'
import type { Around } from './job.ts'
import { planSled, type SledPlan } from './plan-sled.ts'

/** A planned sled and its outside as bodies for the checks, its hardware with it. */
export interface Planned extends SledPlan {
  readonly outside: readonly Body[]
}

interface Made {
  readonly around: Around
  readonly sled: Sled
  readonly planned: Planned
}

/** So many are kept: a few sleds, before and after a change or two. */
const most = 5
let kept: readonly Made[] = []

/**
 * The plan of a sled, made once for all answers in which neither the sled nor anything its plan may depend on has
 * changed: the same objects, so that what was found out about them holds too.
 */
export function planOnce(assembly: Around, sled: Sled): Planned {
  const around = aroundOf(assembly)
  const known = kept.find((k) => k.sled === sled && equal(k.around, around))
  const made = known ?? { around, sled, planned: planned(around, sled) }
  kept = [made, ...kept.filter((k) => k !== made)].slice(0, most)
  return made.planned
}

function aroundOf({ parts, wires, thresholds, insertions, intrusions }: Around): Around {
  return { parts, wires, thresholds, insertions, intrusions }
}

function planned(around: Around, sled: Sled): Planned {
  const { plan: made, hardware, faults } = planSled(around, sled)
  // What is found out about items, their cross-sections and the outside holds for other plans too.
  const plan = { ...made, bodies: made.bodies.map((b) => ({ ...b, items: b.items.map(oneItem) })) }
  return { plan, hardware, faults, outside: [...sledBodies(sled, plan), ...hardware].map(oneBody) }
}
