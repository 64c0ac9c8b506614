import type { PlanBody } from '../../geometry/plan/plan.ts'
import { worldOf } from '../checks/world.ts'
import type { Assembly, Sled } from '../resolve/assembly.ts'

/** The printed bodies of a sled as planned: the same that the checks saw. */
export const bodiesOf = (assembly: Assembly, sled: Sled): readonly PlanBody[] =>
  worldOf(assembly).plans.get(sled.id)?.bodies ?? []
