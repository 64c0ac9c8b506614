import { describe, expect, it } from 'vitest'
import { realise } from '../../../src/body/realise.ts'
import type { SledInput } from '../../../src/project/schema/sled.ts'
import { sledBodies } from '../../../src/sled/envelope.ts'
import { planSled } from '../../../src/sled/plan-sled.ts'
import { sure } from '../checks/judged.ts'
import { assemblyOf } from '../resolve/project-of.ts'
import { builder, faultsOf, itemOf, itemsOf, job, onlyFault, planned, roundArea, solidOf } from './planned.ts'

const build = builder()

describe('the outside of a sled', () => {
  it('is one round with a chamfer of 0.4 at both ends', () => {
    expect(solidOf(job({}), 'sleds/main/body-1', 'cylinder')).toMatchObject({ r0: 14, r1: 14, z0: 10.4, z1: 99.6 })
    expect(solidOf(job({}), 'sleds/main/body-1-rear-chamfer', 'cylinder')).toMatchObject({ r0: 13.6, r1: 14, z0: 10 })
    expect(solidOf(job({}), 'sleds/main/body-1-blade-chamfer', 'cylinder')).toMatchObject({ r1: 13.6, z1: 100 })
  })

  it('loses with a chamfer of 1 two rings, to the cubic millimetre', () => {
    // A cone stump of radii 13 and 14 instead of a cylinder of 14: π (14² − (13² + 13·14 + 14²)/3) each.
    const [sharp, chamfered] = [build(job({ chamfer: 0 })), build(job({ chamfer: 1 }))]
    const ring = (roundArea(14) / 196) * (196 - (169 + 182 + 196) / 3)
    expect(sharp.volume).toBeCloseTo(roundArea(14) * 90, 1)
    expect(sharp.volume - chamfered.volume).toBeCloseTo(2 * ring, 1)
    expect(chamfered.problems).toEqual([])
  })

  it('steps with its typed pieces', () => {
    const stepped = job({
      chamfer: 0,
      bodies: [
        { from: 10, to: 50, diameter: sure(28) },
        { from: 50, to: 100, diameter: sure(24) },
      ],
    })
    const { volume, problems } = build(stepped)
    expect(problems).toEqual([])
    expect(volume).toBeCloseTo(roundArea(14) * 40 + roundArea(12) * 50, 1)
    expect(itemOf(stepped, 'sleds/main/body-2').dimensions[0]).toMatchObject({
      how: 'typed',
      path: 'sleds/main/bodies/1/diameter',
    })
  })

  it('slim, keeps its width in a ring at each end', () => {
    const slim = job({ chamfer: 0, outside: 'slim', slimBy: 2, ringLength: 6 })
    expect(build(slim).volume).toBeCloseTo(roundArea(12) * 78 + roundArea(14) * 12, 1)
    expect(itemOf(slim, 'sleds/main/rings/rear-ring').dimensions.map((d) => [d.name, d.value, d.how])).toEqual([
      ['ring diameter', 28, 'derived'],
      ['ring length', 6, 'typed'],
      ['chamfer', 0, 'typed'],
    ])
    const plain = itemOf(job({ outside: 'slim' }), 'sleds/main/rings/rear-ring')
    expect(plain.dimensions.map((d) => d.how)).toEqual(['derived', 'default', 'default'])
  })

  it('has typed rings besides, with their own length and diameter', () => {
    const ringed = job({ rings: [{ id: 'r', z: 50, length: 4, diameter: sure(29) }] })
    expect(solidOf(ringed, 'sleds/main/rings/r', 'cylinder')).toMatchObject({ r0: 14.5, z0: 50, z1: 54 })
    expect(itemOf(ringed, 'sleds/main/rings/r').dimensions.slice(0, 2)).toMatchObject([
      { how: 'typed', path: 'sleds/main/rings/r/diameter' },
      { value: 4, how: 'typed', path: 'sleds/main/rings/r/length' },
    ])
  })

  it.each<[string, Partial<SledInput>, string, string]>([
    // Half of the radius of 14.
    ['a chamfer that leaves no end', { chamfer: 10 }, 'chamfer', '7.00'],
    ['rings longer than a third of it', { outside: 'slim', ringLength: 40 }, 'ringLength', '30.00'],
  ])('cannot have %s', (_what, sled, field, nearest) => {
    const fault = onlyFault(job(sled))
    expect(fault.path).toBe(`sleds/main/${field}`)
    expect(fault.hint).toContain(nearest)
    expect(faultsOf(job({ ...sled, [field]: Number(nearest) }))).toEqual([])
  })
})

describe('the outside as bodies for the checks', () => {
  const bodies = (sled: Partial<SledInput>) => {
    const assembly = assemblyOf(job(sled))
    const [own] = assembly.sleds
    if (!own) throw new Error('no sled')
    return sledBodies(own, planSled(assembly, own).plan)
  }

  it('is the round with its chamfers, end to end', () => {
    const solids = bodies({}).map((b) => realise(b, (q) => q.nominal))
    const ends = solids.map((s) => ('z0' in s ? [s.z0, s.z1] : []))
    expect(Math.min(...ends.flat())).toBe(10)
    expect(Math.max(...ends.flat())).toBe(100)
    expect(bodies({}).every((b) => b.of === 'sleds/main' && b.shape.kind === 'round')).toBe(true)
  })

  it('keeps the wide end of a cone as a body of its own where nothing as wide goes on', () => {
    const flat = bodies({ chamfer: 0 })
    expect(flat).toHaveLength(1)
    expect(bodies({})).toHaveLength(3)
  })

  it('is an outline where a nest opens to the outside', () => {
    const open = bodies({ chamfer: 0, windows: [{ id: 'w', theta: 0, width: 6, floor: 10, from: 40, to: 60 }] })
    expect(open.map((b) => b.shape.kind)).toEqual(['round', 'outline', 'round'])
  })
})

it('the same job makes the same plan', () => {
  const ids = () => itemsOf(planned(job({ outside: 'slim' })).plan)
  expect(ids()).toEqual(ids())
})
