import type { PlanBody } from '../../../geometry/plan/plan.ts'
import { demos } from '../../../src/job/demos/index.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import { checkProject } from '../../../src/project/read.ts'
import { resolve } from '../../../src/resolve/resolve.ts'
import { planSled } from '../../../src/sled/plan-sled.ts'

/** Every printed body of every demo, whatever its verdict. */
export function demoBodies(): { demo: string; body: PlanBody }[] {
  const presets = loadPresets()
  return demos.flatMap(({ name, project }) => {
    const read = checkProject(project)
    if (!read.ok) throw new Error(`demo ${name} does not read`)
    const found = resolve(read.value.project, presets)
    if (!found.ok) throw new Error(`demo ${name}: ${JSON.stringify(found.problems)}`)
    const { value: assembly } = found
    return assembly.sleds.flatMap((s) => planSled(assembly, s).plan.bodies.map((body) => ({ demo: name, body })))
  })
}
