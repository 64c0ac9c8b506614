import { buildBody, type Kernel } from '../../../geometry/kernel/manifold.ts'
import type { Mesh } from '../../../geometry/mesh/mesh.ts'
import type { PlanItem, PlanSolid } from '../../../geometry/plan/plan.ts'

/** Small plans for tests of what is done with a mesh. */

export const rod = (z0: number, z1: number, r0: number, r1 = r0, x = 0, y = 0): PlanSolid => ({
  shape: 'cylinder',
  x,
  y,
  z0,
  z1,
  r0,
  r1,
})

export const block = (z0: number, z1: number, width: number, height: number, x = 0, y = 0): PlanSolid => ({
  shape: 'box',
  x,
  y,
  z0,
  z1,
  width,
  height,
  facing: 90,
})

/** All of `adds` less all of `cuts`, as a mesh. */
export function meshOf(kernel: Kernel, adds: readonly PlanSolid[], cuts: readonly PlanSolid[] = []): Mesh {
  const item = (op: PlanItem['op']) => (solid: PlanSolid, i: number) => ({
    id: `${op}-${i}`,
    op,
    solid,
    by: 'sleds/main',
    nest: op,
    dimensions: [],
  })
  const built = buildBody(kernel, { id: 'b', name: 'b', items: [...adds.map(item('add')), ...cuts.map(item('cut'))] })
  if (!built.ok) throw new Error(JSON.stringify(built.faults))
  return built.mesh
}
