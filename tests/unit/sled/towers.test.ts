import { describe, expect, it } from 'vitest'
import { builder, faultsOf, itemOf, job, onlyFault, prober, solidOf } from './planned.ts'

const build = builder()
const probe = prober()
const towered = (tower: object) => job({ towers: [{ id: 't', theta: 0, outer: 14.8, from: 50, to: 70, ...tower }] })
const own = 'sleds/main/towers/t'

describe('a switch tower', () => {
  it('is a ring sector of ± 20° to its typed radius, rooted 2 deep', () => {
    expect(solidOf(towered({}), own, 'ring-sector')).toMatchObject({
      z0: 50,
      z1: 70,
      rIn: 12,
      rOut: 14.8,
      theta: 0,
      half: 20,
    })
    expect(itemOf(towered({}), own).dimensions.map((d) => d.how)).toEqual(['default', 'typed', 'default'])
    expect(itemOf(towered({ half: 15, inner: 11 }), own).dimensions.map((d) => d.how)).toEqual(
      Array.from({ length: 3 }, () => 'typed'),
    )
  })

  it('stands out of the body there, and nowhere else', () => {
    const at = probe(towered({}))
    expect([at(14.4, 0, 60), at(14.4, 0, 48), at(-14.4, 0, 60), at(14.4 * 0.9, 14.4 * 0.44, 60)]).toEqual([
      true,
      false,
      false,
      false,
    ])
    expect(build(towered({})).problems).toEqual([])
  })

  it.each([
    ['inside the body', { outer: 13 }, 'outer', '13 mm', '15.0'],
    ['loose above it', { inner: 14.2 }, 'inner', '14.2 mm', '12.80'],
    ['all round', { half: 120 }, 'half', '120°', '20 is usual'],
    ['of no width', { half: 0 }, 'half', '0°', '20 is usual'],
    ['the wrong way round', { from: 70, to: 50 }, 'to', 'z 50', '71.0'],
  ])('cannot be %s', (_what, typed, field, got, hint) => {
    const fault = onlyFault(towered(typed))
    expect(fault.path).toBe(`${own}/${field}`)
    expect(fault.got).toContain(got)
    expect(fault.hint).toContain(hint)
  })

  it('the limits themselves work', () => {
    for (const typed of [{ inner: 12.8 }, { half: 90 }, { from: 50, to: 51 }])
      expect(faultsOf(towered(typed))).toEqual([])
  })
})
