import type { Demand, StateTruth } from './demand.ts'
import { fitted, inPlace } from './in-place.ts'
import { packed } from './in-sled.ts'
import { waysIn } from './ways-in.ts'
import type { World } from './world.ts'

/** Everything asked of a job: the list is the same in every draw. */
export function demandsOf(w: World, states: readonly StateTruth[]): Demand[] {
  return [
    ...waysIn(w),
    ...w.sleds.flatMap((s) => [...inPlace(w, s.id, states), ...packed(w, s.id), ...fitted(w, s.id)]),
  ]
}
