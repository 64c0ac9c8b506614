import { describe, expect, it } from 'vitest'
import type { SledInput } from '../../../src/project/schema/sled.ts'
import { board, builder, cell, faultsOf, itemsOf, job, leaf, onlyFault, planned, roundArea } from './planned.ts'

const build = builder()
type Split = NonNullable<SledInput['splits']>[number]
const split = (typed: Partial<Split>, ...more: Split[]) =>
  job({ chamfer: 0, splits: [{ id: 's', z: 50, ...typed } as Split, ...more] })
const path = (field: string) => `sleds/main/splits/s/${field}`
const joint = (project: ReturnType<typeof job>, side: string) =>
  itemsOf(planned(project).plan).filter((x) => x.id.startsWith(`sleds/main/splits/s/${side}`))

describe('a split with pins', () => {
  it('makes two bodies: pins on the rear one, holes with their gap in the other', () => {
    const { volume, bounds, problems } = build(split({}))
    expect(problems).toEqual([])
    expect(bounds.map((b) => [b.min[2], b.max[2]])).toEqual([
      [10, 55],
      [50, 100],
    ])
    const pins = 2 * roundArea(1.5) * 5
    const holes = 2 * roundArea(1.7, 'cut') * 5.2
    expect(volume).toBeCloseTo(roundArea(14) * 90 + pins - holes, 0)
  })

  it('sets the pins far apart, each with a wall about it', () => {
    const [a, b] = joint(split({}), 'tongue').map((x) => (x.solid.shape === 'cylinder' ? x.solid : undefined))
    expect(a && b && Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(4 * 2.9)
    for (const pin of [a, b]) expect(Math.hypot(pin?.x ?? 99, pin?.y ?? 99) + 1.7 + 1.2).toBeLessThanOrEqual(14.001)
  })

  it('says what is typed', () => {
    const how = (s: Partial<Split>) => joint(split(s), 'tongue')[0]?.dimensions.map((d) => d.how)
    expect(how({})).toEqual(['default', 'default', 'default'])
    expect(how({ pinDiameter: 2, pinLength: 4, gap: 0.25 })).toEqual(['typed', 'typed', 'typed'])
  })
})

describe('a split with a dovetail', () => {
  it('widens from its foot to its head, the socket by the gap on every side', () => {
    const project = split({ joint: 'dovetail', foot: 10, head: 14, pinLength: 5, gap: 0.3, theta: 40 })
    const points = (side: string) => {
      const solid = joint(project, `${side}-dovetail`)[0]?.solid
      return solid?.shape === 'plate' ? solid.points : []
    }
    expect(points('tongue').slice(2, 4)).toEqual([
      [5, 50],
      [7, 55],
    ])
    expect(points('socket').slice(2, 4)).toEqual([
      [5.3, 50],
      [7.3, 55.3],
    ])
    expect(joint(project, 'tongue-dovetail')[0]?.dimensions.map((d) => d.how)).toEqual(
      Array.from({ length: 5 }, () => 'typed'),
    )
    expect(build(project).problems).toEqual([])
  })

  it('is a share of the body wide by default, and says so', () => {
    const [tongue] = joint(split({ joint: 'dovetail' }), 'tongue-dovetail')
    expect(tongue?.dimensions.map((d) => [d.name, Number(d.value.toFixed(6)), d.how])).toEqual([
      ['dovetail foot', 9.8, 'default'],
      ['dovetail head', 15.4, 'default'],
      ['pin length', 4, 'default'],
      ['dovetail angle', 90, 'default'],
      ['joint gap', 0.2, 'default'],
    ])
  })
})

it('a plain split only cuts, and several make one body more each', () => {
  const { volume, bounds } = build(split({ joint: 'plain' }, { id: 't', z: 70, joint: 'plain' }))
  expect(bounds.map((b) => [b.min[2], b.max[2]])).toEqual([
    [10, 50],
    [50, 70],
    [70, 100],
  ])
  expect(volume).toBeCloseTo(roundArea(14) * 90, 1)
})

describe('a split that cannot be', () => {
  const contacts = (z: number) => job({ splits: [{ id: 's', z, joint: 'plain' }] }, { parts: [cell(), leaf()] })

  it('through a contact: says the nearest height that leaves it whole', () => {
    // The leaf from 85 to 87, with 1 on each side.
    const fault = onlyFault(contacts(86.5))
    expect(fault.path).toBe(path('z'))
    expect(fault.got).toContain('through leaf')
    expect(fault.hint).toContain('z 88.0')
    expect(faultsOf(contacts(88))).toEqual([])
    expect(onlyFault(contacts(84.5)).hint).toContain('z 84.0')
  })

  it.each<[string, Partial<Split>, string, string, string]>([
    ['at the end', { z: 11, joint: 'plain' }, 'z', 'z 11', 'some length'],
    ['with pins thinner than a wall', { pinDiameter: 0.5 }, 'pinDiameter', '0.5 mm', '1.20'],
    ['with pins of no length', { pinLength: 0 }, 'pinLength', '0 mm', '1.00'],
    ['with pins wider than the body', { pinDiameter: 20 }, 'pinDiameter', 'pins of 20 mm', 'thinner pins'],
    // 100 − 50 − gap 0.2 − wall 1.2
    ['with a dovetail longer than its piece', { joint: 'dovetail', pinLength: 60 }, 'pinLength', '60 mm', '48.60'],
    ['with a dovetail that pulls out', { joint: 'dovetail', foot: 10, head: 8 }, 'head', '8 mm', '10.00'],
    // 2 · (14 − 0.2 − 1.2)
    ['with a dovetail wider than the body', { joint: 'dovetail', head: 27 }, 'head', '27 mm', '25.20'],
    ['with a foot of nothing', { joint: 'dovetail', foot: 1 }, 'foot', '1 mm', '2.40'],
  ])('%s', (_what, typed, field, got, hint) => {
    const fault = onlyFault(split(typed))
    expect(fault.path).toBe(path(field))
    expect(fault.got).toContain(got)
    expect(fault.hint).toContain(hint)
  })

  it('with a dovetail through the wall before the next nest, which it would cut off: says how long or where it may be', () => {
    // The board's bay begins at 53.2 and takes away more than half of the round: the dovetail runs along its edge.
    const before = (typed: Partial<Split>) =>
      job(
        {
          construction: 'open-cradle',
          chamfer: 0,
          splits: [{ id: 's', z: 50, joint: 'dovetail', theta: 0, ...typed }],
        },
        { parts: [board({ at: { z: 53.4, facing: 90 } })] },
      )
    const fault = onlyFault(before({}))
    expect(fault.path).toBe(path('pinLength'))
    expect(fault.got).toBe('"4 mm"')
    const works = Number(fault.hint.match(/[\d.]+(?=\.$)/)?.[0])
    // 53.2 less 50, less the gap of 0.2 and a wall of 1.2, in steps of 0.1.
    expect(works).toBeGreaterThan(1.65)
    expect(works).toBeLessThan(1.801)
    expect(faultsOf(before({ pinLength: works }))).toEqual([])
    expect(build(before({ pinLength: works })).problems).toEqual([])
    const near = onlyFault(before({ z: 51.5 }))
    expect(near.path).toBe(path('z'))
    const z = Number(near.hint.match(/z (\d+\.\d+)/)?.[1])
    expect(Math.abs(z - 51.5)).toBeGreaterThan(0.4)
    expect(build(before({ z })).problems).toEqual([])
  })

  it('whose pins go through the next piece', () => {
    const faults = faultsOf(split({ joint: 'dovetail', pinLength: 9 }, { id: 't', z: 60, joint: 'plain' }))
    expect(faults.map((f) => [f.path, f.hint])).toEqual([[path('pinLength'), expect.stringContaining('8.60')]])
  })
})
