import fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import { loadKernel } from '../../geometry/kernel/load.ts'
import { buildBody, type Kernel } from '../../geometry/kernel/manifold.ts'
import { gate } from '../../geometry/mesh/gate.ts'
import type { PlanItem, PlanSolid } from '../../geometry/plan/plan.ts'

let kernel: Kernel
beforeAll(async () => {
  kernel = await loadKernel()
})

const seed = 20_260
const runs = 300

const added = (id: string, solid: PlanSolid): PlanItem => ({
  id,
  op: 'add',
  solid,
  by: 'sled',
  nest: id,
  dimensions: [],
})
const round = (z0: number, z1: number, r0: number, r1 = r0): PlanSolid => ({
  shape: 'cylinder',
  x: 0,
  y: 0,
  z0,
  z1,
  r0,
  r1,
})
/** Heights as people type them: a few decimals, which binary numbers only come near to. */
const height = (lo: number, hi: number) => fc.integer({ min: lo * 100, max: hi * 100 }).map((n) => n / 100)

/** Pieces of what is joined, and what the gate says of it as one shell. */
function joined(...solids: PlanSolid[]): { pieces: number; faults: readonly string[] } {
  const built = buildBody(kernel, { id: 'main', name: 'sled', items: solids.map((s, i) => added(`${i}`, s)) })
  if (!built.ok) throw new Error(JSON.stringify(built.faults))
  return { pieces: built.pieces, faults: gate(built.mesh, { shells: 1 }).faults }
}
const one = { pieces: 1, faults: [] }

describe(`solids that meet at a height are one, at any height (seed ${seed}, ${runs} runs)`, () => {
  it('a body between its chamfers', () => {
    fc.assert(
      fc.property(height(-100, 300), height(5, 200), height(0.2, 1), (z0, length, c) => {
        const z1 = z0 + length
        const solids = [round(z0, z0 + c, 10 - c, 10), round(z0 + c, z1 - c, 10), round(z1 - c, z1, 10, 10 - c)]
        expect(joined(...solids)).toEqual(one)
      }),
      { seed, numRuns: runs },
    )
  })

  const onTop: Record<string, (z0: number, z1: number) => PlanSolid> = {
    'a block': (z0, z1) => ({ shape: 'box', x: 1, y: 2, z0, z1, width: 3, height: 4, facing: 33 }),
    'a ring sector': (z0, z1) => ({ shape: 'ring-sector', z0, z1, rIn: 4, rOut: 8, theta: 20, half: 50 }),
    'an outline': (z0, z1) => ({
      shape: 'extruded',
      z0,
      z1,
      points: [
        [0, 0],
        [4, 0],
        [0, 4],
      ],
    }),
    'a dovetail': (z0, z1) => ({
      shape: 'plate',
      theta: 70,
      rIn: -5,
      rOut: 5,
      points: [
        [-3, z0],
        [3, z0],
        [4, z1],
        [-4, z1],
      ],
    }),
  }
  it.each(Object.keys(onTop))('%s on a disc', (what) => {
    fc.assert(
      fc.property(height(-100, 300), height(1, 50), height(1, 20), (z, thick, tall) => {
        const solid = onTop[what]?.(z + thick, z + thick + tall) as PlanSolid
        expect(joined(round(z, z + thick, 10), solid)).toEqual(one)
      }),
      { seed, numRuns: runs },
    )
  })
})
