import fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import { loadKernel } from '../../../geometry/kernel/load.ts'
import type { Kernel } from '../../../geometry/kernel/manifold.ts'
import { gate } from '../../../geometry/mesh/gate.ts'
import { boundsOf, volume } from '../../../geometry/mesh/mesh.ts'
import { boundsAfter, laidDown, moved, shifted, standStill, turnedOver } from '../../../geometry/mesh/motion.ts'
import { evenly } from '../../evenly.ts'
import { meshOf, rod } from './solids.ts'

let kernel: Kernel
beforeAll(async () => {
  kernel = await loadKernel()
})
const cup = () => meshOf(kernel, [rod(40, 70, 14)], [rod(44, 71, 12), rod(30, 80, 1.5, 1.5, 5, 3)])

describe('moving a mesh', () => {
  it('standing still changes not one bit', () => {
    const m = cup()
    expect(moved(m, standStill)).toEqual(m)
  })

  it('turning over twice brings every vertex back', () => {
    const m = cup()
    expect(moved(moved(m, turnedOver), turnedOver)).toEqual(m)
  })

  it.each([0, 90, 180, 270])('a quarter turn is exact: what faces θ = %i° lies at the bottom', (theta) => {
    const m = cup()
    const { min, max } = boundsOf(moved(m, laidDown(theta)))
    expect([min[0], max[0]]).toEqual([40, 70])
    expect(min[2]).toBe(-boundsOf(m).max[theta % 180 === 0 ? 0 : 1])
  })

  it('stays closed, in one piece, as large, and never mirrored, wherever it is taken (seed 83)', () => {
    const m = cup()
    const place = evenly(0, 250)
    const turn = fc.oneof(fc.constant(standStill), fc.constant(turnedOver), evenly(0, 360).map(laidDown))
    fc.assert(
      fc.property(turn, place, place, place, (t, x, y, z) => {
        const motion = shifted(t, [x, y, z])
        const there = moved(m, motion)
        expect(gate(there, { shells: 1, bounds: boundsAfter(m, motion) }).faults).toEqual([])
        expect(volume(there) / volume(m)).toBeCloseTo(1, 5)
      }),
      { seed: 83, numRuns: 60 },
    )
  })
})
