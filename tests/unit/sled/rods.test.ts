import { describe, expect, it } from 'vitest'
import { realise } from '../../../src/body/realise.ts'
import type { SledInput } from '../../../src/project/schema/sled.ts'
import { sure } from '../checks/judged.ts'
import { builder, cell, faultsOf, itemOf, itemsOf, job, nest, onlyFault, planned, solidOf } from './planned.ts'

const build = builder()
type Rod = NonNullable<SledInput['rods']>[number]
const body = (diameter: number) => ({ shape: 'cylinder', diameter: sure(diameter), length: sure(65) })
const rodded = (rods: readonly Rod[], diameter = 14, extra: Partial<SledInput> = {}) =>
  job(
    { rods: [...rods], nests: [nest('cell', { gap: 0.2, opening: 180 })], ...extra },
    { parts: [cell({ body: body(diameter) })] },
  )

describe('a rod', () => {
  it('lies as far out as a wall allows, its hole through both ends', () => {
    // 14 − wall 1.2 − gap 0.1 − 1.5
    const hole = solidOf(rodded([{ id: 'a', theta: 90 }]), 'sleds/main/rods/a', 'cylinder')
    expect([hole.x, hole.y]).toEqual([expect.closeTo(0, 9), expect.closeTo(11.2, 9)])
    expect([hole.r0, hole.z0, hole.z1]).toEqual([expect.closeTo(1.6, 9), 9, 101])
    expect(build(rodded([{ id: 'a', theta: 90 }])).problems).toEqual([])
  })

  it('is bought: a body that moves with the sled, from end to end', () => {
    const [rod] = planned(rodded([{ id: 'a', theta: 90 }])).hardware
    expect(rod?.id).toBe('sleds/main/rods/a')
    const solid = rod && realise(rod, (q) => q.nominal)
    expect(solid).toMatchObject({ z0: 10, z1: 100 })
  })

  it('says which of its dimensions are typed', () => {
    const how = (rod: Rod) => itemOf(rodded([rod]), 'sleds/main/rods/a').dimensions.map((d) => d.how)
    expect(how({ id: 'a', theta: 90 })).toEqual(['default', 'default', 'derived'])
    expect(how({ id: 'a', theta: 90, r: 11, diameter: 2, gap: 0.2 })).toEqual(['typed', 'typed', 'derived'])
  })
})

describe('rods that cannot be', () => {
  it('through the cell: says a place that works', () => {
    const fault = onlyFault(rodded([{ id: 'a', theta: 90, r: 5 }]))
    expect(fault.path).toBe('sleds/main/rods/a/theta')
    expect(fault.got).toContain('3.70 mm into a part')
    const [, theta, r] = fault.hint.match(/θ (\d+)°, r (\d+\.\d)/) ?? []
    expect(faultsOf(rodded([{ id: 'a', theta: Number(theta), r: Number(r) }]))).toEqual([])
  })

  it('through a cell that leaves no room at all', () => {
    expect(onlyFault(rodded([{ id: 'a', theta: 90, r: 5 }], 18)).hint).toContain('No place for a rod')
  })

  it('without a wall outside', () => {
    const fault = onlyFault(rodded([{ id: 'a', theta: 90, r: 12 }]))
    expect([fault.path, fault.got]).toEqual(['sleds/main/rods/a/r', '"12.00 mm"'])
    expect(fault.limit).toContain('11.20')
    expect(faultsOf(rodded([{ id: 'a', theta: 90, r: 11.2 }]))).toEqual([])
  })

  it('in each other: says how far to turn the second', () => {
    // Middles 2 · 11.2 · sin 5° = 1.95 apart; holes of 3.2 and a wall of 1.2 need 4.4.
    const pair = (theta: number) =>
      rodded([
        { id: 'a', theta: 80 },
        { id: 'b', theta },
      ])
    const fault = onlyFault(pair(90))
    expect(fault.path).toBe('sleds/main/rods/b/theta')
    expect(fault.got).toContain('1.95 mm from rod a')
    expect(fault.limit).toContain('4.40')
    expect(fault.hint).toContain('23°')
    expect(faultsOf(pair(103))).toEqual([])
  })

  it('of discs, where no place is left beside the cell', () => {
    const faults = faultsOf(rodded([], 25, { construction: 'discs-on-rods' }))
    expect(faults.map((f) => f.path)).toContain('sleds/main/rods')
    expect(itemsOf(planned(rodded([], 12, { construction: 'discs-on-rods' })).plan).map((x) => x.nest)).toContain('rod')
  })
})
