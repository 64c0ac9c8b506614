import { beforeAll, describe, expect, it } from 'vitest'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import { buildBody, type Kernel } from '../../../geometry/kernel/manifold.ts'
import { gate } from '../../../geometry/mesh/gate.ts'
import { stl } from '../../../geometry/mesh/stl.ts'
import { facetsFor } from '../../../geometry/plan/facets.ts'
import type { PlanBody, PlanItem, PlanSolid } from '../../../geometry/plan/plan.ts'

let kernel: Kernel
beforeAll(async () => {
  kernel = await loadKernel()
})

const item = (id: string, op: PlanItem['op'], solid: PlanSolid): PlanItem => ({
  id,
  op,
  solid,
  by: 'sleds/main',
  nest: id,
  dimensions: [],
})
const rod = (z0: number, z1: number, r: number, x = 0, y = 0): PlanSolid => ({
  shape: 'cylinder',
  x,
  y,
  z0,
  z1,
  r0: r,
  r1: r,
})

const sled: PlanBody = {
  id: 'main',
  name: 'sled',
  items: [
    item('body', 'add', rod(0, 90, 13)),
    item('pocket', 'cut', rod(10, 76, 9.4, 0, 2)),
    item('slot', 'cut', { shape: 'box', x: 0, y: 12, z0: 10, z1: 76, width: 14, height: 12, facing: 90 }),
    item('channel', 'cut', rod(-1, 91, 1.5, 0, -10)),
    item('hole', 'cut', { shape: 'spoke', z: 84, theta: 30, rIn: 2, rOut: 20, radius: 2 }),
    item('sector', 'cut', { shape: 'ring-sector', z0: 78, z1: 81, rIn: 10, rOut: 14, theta: 200, half: 30 }),
  ],
}

describe('a plan made into a solid', () => {
  it('is closed, in one piece and as large as the plan', () => {
    const built = buildBody(kernel, sled)
    if (!built.ok) throw new Error(JSON.stringify(built.faults))
    const report = gate(built.mesh, { shells: 1, bounds: { min: [-13, -13, 0], max: [13, 13, 90] } })
    expect(report.faults).toEqual([])
    expect(built.pieces).toBe(1)
  })

  it('loses no more volume to facets than the polygon must (ratio n/2π · sin 2π/n, computed)', () => {
    const built = buildBody(kernel, { ...sled, items: sled.items.slice(0, 1) })
    if (!built.ok) throw new Error(JSON.stringify(built.faults))
    const n = facetsFor(13)
    const prism = Math.PI * 13 ** 2 * 90 * (n / (2 * Math.PI)) * Math.sin((2 * Math.PI) / n)
    expect(gate(built.mesh, { shells: 1 }).volume / prism).toBeCloseTo(1, 6)
  })

  it('takes facets from the chord error: 79 or more for 0.01 at radius 12.5 (REFERENCE section 11, computed)', () => {
    expect(Math.ceil(Math.PI / Math.acos(1 - 0.01 / 12.5))).toBe(79)
    expect(facetsFor(12.5)).toBe(96)
    expect(12.5 * (1 - Math.cos(Math.PI / facetsFor(12.5)))).toBeLessThanOrEqual(0.01)
    expect(40 * (1 - Math.cos(Math.PI / facetsFor(40)))).toBeLessThanOrEqual(0.01)
  })

  it('names every triangle’s maker', () => {
    const built = buildBody(kernel, sled)
    if (!built.ok) throw new Error(JSON.stringify(built.faults))
    expect(new Set(built.mesh.made)).toEqual(new Set([0, 1, 2, 3, 4, 5]))
  })

  it.each([
    ['a size that is not a number', { ...rod(0, 10, 5), r0: Number.NaN }],
    ['a length of nothing', rod(5, 5, 5)],
    ['a negative length', rod(10, 5, 5)],
    ['an infinite coordinate', { ...rod(0, 10, 5), x: Number.POSITIVE_INFINITY }],
  ])('refuses %s by name before the kernel sees it', (_, solid) => {
    const built = buildBody(kernel, { ...sled, items: [...sled.items, item('bad', 'cut', solid as PlanSolid)] })
    expect(built.ok ? [] : built.faults.map((f) => f.item)).toEqual(['bad'])
  })

  it('says so when the cuts leave nothing, or two pieces', () => {
    const gone = buildBody(kernel, { ...sled, items: [...sled.items, item('all', 'cut', rod(-1, 100, 20))] })
    expect(gone.ok).toBe(false)
    const two = buildBody(kernel, { ...sled, items: [...sled.items, item('through', 'cut', rod(40, 45, 20))] })
    if (!two.ok) throw new Error(JSON.stringify(two.faults))
    expect(gate(two.mesh, { shells: 1 }).faults.join()).toContain('2 pieces instead of 1')
  })

  it('gives its memory back: the heap does not grow over 60 builds', () => {
    const heap = () => (kernel as unknown as { HEAPU8: Uint8Array }).HEAPU8?.length ?? 0
    buildBody(kernel, sled)
    const before = heap()
    for (let i = 0; i < 60; i++) buildBody(kernel, sled)
    expect(heap()).toBe(before)
  })
})

describe('binary STL', () => {
  // REFERENCE section 11 (read): 84 + 50 n bytes, 12 triangles are 684; the header must not begin with "solid".
  it('has 84 + 50 n bytes, an honest header, and the same bytes each time', () => {
    const built = buildBody(kernel, {
      ...sled,
      items: [item('block', 'add', { shape: 'box', x: 0, y: 0, z0: 0, z1: 2, width: 3, height: 4, facing: 0 })],
    })
    if (!built.ok) throw new Error('no block')
    const file = stl(built.mesh, 'block')
    expect(file.length).toBe(684)
    expect(new TextDecoder().decode(file.slice(0, 80)).startsWith('solid')).toBe(false)
    expect(stl(built.mesh, 'block')).toEqual(file)
  })

  it('reads back as the same triangles, in millimetres', () => {
    const built = buildBody(kernel, sled)
    if (!built.ok) throw new Error('no sled')
    const view = new DataView(stl(built.mesh, 'sled').buffer)
    const n = view.getUint32(80, true)
    let most = 0
    for (let t = 0; t < n; t++)
      for (let k = 0; k < 3; k++) most = Math.max(most, view.getFloat32(84 + 50 * t + 12 + 12 * k + 8, true))
    expect(n).toBe(built.mesh.triangles.length / 3)
    expect(most).toBeCloseTo(90, 6)
  })
})
