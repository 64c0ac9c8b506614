import { describe, expect, it } from 'vitest'
import { builder, faultsOf, heightsOf, itemOf, job, onlyFault, prober, roundArea, solidOf } from './planned.ts'

const build = builder()
const probe = prober()
const keyed = (key: object) => job({ chamfer: 0, keys: [{ id: 'k', theta: 90, ...key }] })
const own = 'sleds/main/keys/k'

describe('a key', () => {
  it('is 4 wide and stands 1.5 out of the body from end to end, rooted in it', () => {
    const key = solidOf(keyed({}), own, 'box')
    expect([key.width, key.z0, key.z1, key.facing]).toEqual([4, 10, 100, 90])
    expect(heightsOf(key)).toEqual([expect.closeTo(12.5, 9), expect.closeTo(15.5, 9)])
    const at = probe(keyed({}))
    expect([at(0, 15, 50), at(2.5, 15, 50), at(0, -15, 50)]).toEqual([true, false, false])
    expect(build(keyed({})).problems).toEqual([])
  })

  it('runs where it is typed to run, and says what is typed', () => {
    const typed = itemOf(keyed({ width: 3, height: 1, from: 40, to: 60 }), own)
    expect(typed.solid).toMatchObject({ z0: 40, z1: 60, width: 3 })
    expect(typed.dimensions.map((d) => [d.name, d.value, d.how])).toEqual([
      ['key width', 3, 'typed'],
      ['key height', 1, 'typed'],
    ])
    expect(itemOf(keyed({}), own).dimensions.map((d) => d.how)).toEqual(['default', 'default'])
  })
})

describe('a keyway', () => {
  it('is a groove through both ends, which takes exactly its share', () => {
    const way = keyed({ kind: 'keyway', width: 4, height: 2 })
    const cut = solidOf(way, own, 'box')
    expect([cut.z0, cut.z1]).toEqual([9, 101])
    expect(heightsOf(cut)[0]).toBeCloseTo(12, 9)
    // Segment of the round above 12, 4 wide: ∫ √(196 − t²) − 12 over ±2.
    const under = (t: number) => (t * Math.sqrt(196 - t * t) + 196 * Math.asin(t / 14)) / 2
    const groove = 2 * under(2) - 4 * 12
    expect(build(way).volume).toBeCloseTo((roundArea(14) - groove) * 90, -1)
  })
})

describe('a key that cannot be', () => {
  it.each([
    ['wider than the body', { width: 20 }, 'width', '20 mm', '4 is usual'],
    ['thinner than a wall', { width: 0.5 }, 'width', '0.5 mm', '1.2'],
    ['a keyway to the axis', { kind: 'keyway', height: 14 }, 'height', '14 mm', '1.5 is usual'],
    ['the wrong way round', { from: 60, to: 40 }, 'to', 'z 40', '61.0'],
  ])('%s', (_what, typed, field, got, hint) => {
    const fault = onlyFault(keyed(typed))
    expect(fault.path).toBe(`${own}/${field}`)
    expect(fault.got).toContain(got)
    expect(fault.hint).toContain(hint)
  })

  it('the limits themselves work', () => {
    const limits = [{ width: 14 }, { width: 1.2 }, { kind: 'keyway', height: 12.8 }, { from: 60, to: 61 }]
    for (const typed of limits) expect(faultsOf(keyed(typed))).toEqual([])
  })
})
