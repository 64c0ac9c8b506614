import { beforeAll, describe, expect, it } from 'vitest'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import { buildBody, type Kernel } from '../../../geometry/kernel/manifold.ts'
import { volume } from '../../../geometry/mesh/mesh.ts'
import { idleItems } from '../../../geometry/plan/idle.ts'
import type { PlanItem, PlanSolid } from '../../../geometry/plan/plan.ts'

let kernel: Kernel
beforeAll(async () => {
  kernel = await loadKernel()
})

const item = (id: string, op: PlanItem['op'], solid: PlanSolid, stage?: 2): PlanItem => ({
  id,
  op,
  ...(stage ? { stage } : {}),
  solid,
  by: 'sleds/main',
  nest: id,
  dimensions: [],
})
const rod = (z0: number, z1: number, r: number, y = 0): PlanSolid => ({
  shape: 'cylinder',
  x: 0,
  y,
  z0,
  z1,
  r0: r,
  r1: r,
})
const block = (z0: number, z1: number, side: number): PlanSolid => ({
  shape: 'box',
  x: 0,
  y: 0,
  z0,
  z1,
  width: side,
  height: side,
  facing: 0,
})

const whole = [
  item('rear', 'add', rod(0, 50, 13)),
  item('blade', 'add', rod(49.99, 90, 12)),
  item('pocket', 'cut', rod(5, 40, 9, 2)),
  item('seat', 'cut', rod(50, 80, 6, 3)),
  item('channel', 'cut', rod(-1, 91, 1.5, -10)),
]
const [above, below] = [item('above', 'cut', block(50, 95, 100)), item('below', 'cut', block(-5, 50, 100))]
const names = (items: readonly PlanItem[]) => [...idleItems(items)].map((i) => items[i]?.id)
const volumeOf = (items: readonly PlanItem[]): number => {
  const built = buildBody(kernel, { id: 'b', name: 'b', items })
  if (!built.ok) throw new Error(JSON.stringify(built.faults))
  return volume(built.mesh)
}

describe('items that change nothing', () => {
  it('are those in a stretch that a cut takes away as a whole', () => {
    expect(names(whole)).toEqual([])
    expect(names([...whole, above])).toEqual(['seat'])
    expect(names([...whole, below])).toEqual(['rear', 'pocket'])
  })

  it('a body of which nothing is left is still told of by its name', () => {
    const built = buildBody(kernel, { id: 'b', name: 'b', items: [...whole, item('all', 'cut', block(-5, 95, 100))] })
    expect(built).toEqual({ ok: false, faults: [{ item: 'b', what: 'nothing is left of the body' }] })
  })

  it('are none where the cut leaves something beside it', () => {
    expect(names([...whole, item('above', 'cut', block(50, 95, 25))])).toEqual([])
  })

  it('the pieces of a split have the volume of the whole between them', () => {
    const pieces = volumeOf([...whole, above]) + volumeOf([...whole, below])
    expect(pieces).toBeCloseTo(volumeOf(whole), 2)
  })

  it('what comes back in the second stage is still cut there', () => {
    const tongue = item('tongue', 'add', rod(45, 56, 5), 2)
    const bore = item('bore', 'cut', rod(51, 60, 2), 2)
    const far = item('far', 'cut', rod(70, 75, 2), 2)
    expect(names([...whole, above, tongue, bore, far])).toEqual(['seat', 'far'])
    const [plain, bored] = [
      [...whole, above, tongue],
      [...whole, above, tongue, bore],
    ].map(volumeOf)
    // A hole of 2 mm radius, 5 mm long, in a tongue; facets lie outside a cut by less than 1 %.
    expect((plain as number) - (bored as number)).toBeGreaterThan(Math.PI * 4 * 5)
    expect((plain as number) - (bored as number)).toBeLessThan(Math.PI * 4 * 5 * 1.01)
  })
})
