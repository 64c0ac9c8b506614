import type { Plan } from '../../geometry/plan/plan.ts'
import type { Assembly, Sled } from '../resolve/assembly.ts'
import { fullCage } from './full-cage.ts'

/** The plan of one sled: solids to add and to cut, each naming who asked for it. Same assembly, same plan. */
export function planSled(assembly: Assembly, sled: Sled): Plan {
  return { id: sled.id, name: sled.name, bodies: [{ id: sled.id, name: sled.name, items: fullCage(assembly, sled) }] }
}
