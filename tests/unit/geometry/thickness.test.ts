import { beforeAll, describe, expect, it } from 'vitest'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import { buildBody, type Kernel } from '../../../geometry/kernel/manifold.ts'
import { thickness } from '../../../geometry/mesh/thickness.ts'
import type { PlanItem, PlanSolid } from '../../../geometry/plan/plan.ts'

let kernel: Kernel
beforeAll(async () => {
  kernel = await loadKernel()
})

const item = (id: string, op: PlanItem['op'], solid: PlanSolid): PlanItem => ({
  id,
  op,
  solid,
  by: 'x',
  nest: id,
  dimensions: [],
})
const rod = (z0: number, z1: number, r: number, x = 0): PlanSolid => ({
  shape: 'cylinder',
  x,
  y: 0,
  z0,
  z1,
  r0: r,
  r1: r,
})

function measured(items: readonly PlanItem[], limit = 1.2) {
  const built = buildBody(kernel, { id: 'b', name: 'b', items })
  if (!built.ok) throw new Error(JSON.stringify(built.faults))
  return thickness(built.mesh, limit)
}

describe('wall thickness on the mesh', () => {
  it('of a pipe is radius less radius, to the facets', () => {
    const r = measured([item('body', 'add', rod(0, 40, 12)), item('bore', 'cut', rod(-1, 41, 10))])
    expect(r.thinnest?.thickness).toBeCloseTo(2, 1)
    expect(r.thin).toEqual([])
  })

  it('of an off-centre pocket is found on its thin side, with the place and who made it', () => {
    const r = measured([item('body', 'add', rod(0, 40, 12)), item('bore', 'cut', rod(5, 35, 9, 2.2))])
    expect(r.thinnest?.thickness).toBeCloseTo(12 - 2.2 - 9, 1)
    expect(r.thinnest?.at[0]).toBeGreaterThan(10)
    expect(new Set(r.thinnest?.made)).toEqual(new Set([0, 1]))
  })

  it('finds a bulkhead between two pockets', () => {
    const r = measured([
      item('body', 'add', rod(0, 40, 12)),
      item('a', 'cut', rod(3, 20, 8)),
      item('b', 'cut', rod(20.7, 37, 8)),
    ])
    expect(r.thinnest?.thickness).toBeCloseTo(0.7, 3)
    expect(r.thin.length).toBe(1)
    expect(r.thin[0]?.at[2]).toBeGreaterThan(19)
  })

  it('finds the 0.6 mm sliver between a slot and the outside', () => {
    const slot: PlanSolid = { shape: 'box', x: 10.9, y: 0, z0: 10, z1: 30, width: 6, height: 1, facing: 0 }
    const r = measured([item('body', 'add', rod(0, 40, 12)), item('slot', 'cut', slot)])
    expect(r.thinnest?.thickness).toBeLessThan(0.65)
    expect(r.thin.length).toBe(1)
  })

  it('does not take the edge of an open pocket for a wall', () => {
    const mouth: PlanSolid = { shape: 'box', x: 8, y: 0, z0: 5, z1: 35, width: 14, height: 16, facing: 0 }
    const r = measured([item('body', 'add', rod(0, 40, 12)), item('mouth', 'cut', mouth)])
    expect(r.thin).toEqual([])
  })

  it('gives the same answer each time', () => {
    const items = [item('body', 'add', rod(0, 40, 12)), item('bore', 'cut', rod(5, 35, 9, 2.2))]
    expect(measured(items)).toEqual(measured(items))
  })
})
