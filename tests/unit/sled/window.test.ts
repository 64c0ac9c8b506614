import { describe, expect, it } from 'vitest'
import type { SledInput } from '../../../src/project/schema/sled.ts'
import { sure } from '../checks/judged.ts'
import { builder, faultsOf, heightsOf, itemOf, itemsOf, job, onlyFault, planned, solidOf } from './planned.ts'

const build = builder()
type Window = NonNullable<SledInput['windows']>[number]
const own = 'sleds/main/windows/w'
/** A switch of ⌀ 8 × 6 through the wall from radius 16 inwards, with tags of 2 and wires that bend in 1: to radius 7. */
const fitted = {
  id: 'switch',
  name: 'switch',
  kind: 'switch',
  on: 'sections/tube',
  goesIn: 'after',
  body: { shape: 'cylinder', axis: 'radial', diameter: sure(8), length: sure(6) },
  tags: sure(2),
  wireBend: sure(1),
  at: { z: sure(50), theta: sure(90), outer: sure(16) },
}
/** A pin that reaches 3 into the bore at z 50, θ 0: there before the sled. */
const pin = {
  id: 'pin',
  kind: 'intrusion',
  on: 'sections/tube',
  at: { z: sure(50), theta: sure(0) },
  shape: { form: 'pin', diameter: sure(2), reach: sure(3) },
}
const windowed = (window: Partial<Window>, heading?: 'blade' | 'rear') =>
  job(
    { windows: [{ id: 'w', ...window }] },
    {
      parts: [fitted as never],
      features: [pin as never],
      ...(heading
        ? { insertions: [{ id: 'in', moves: 'sleds/main', through: { of: 'sections/tube', end: 'blade' }, heading }] }
        : {}),
    },
  )

describe('a window', () => {
  it('for what is fitted after follows it, with the gap of 0.3 all round', () => {
    const cut = solidOf(windowed({ for: 'parts/switch' }), own, 'box')
    expect([cut.width, cut.z0, cut.z1, cut.facing]).toEqual([
      expect.closeTo(8.6, 9),
      expect.closeTo(45.7, 9),
      expect.closeTo(54.3, 9),
      90,
    ])
    expect(heightsOf(cut)).toEqual([expect.closeTo(6.7, 9), expect.closeTo(15, 9)])
    expect(build(windowed({ for: 'parts/switch' })).problems).toEqual([])
  })

  it('for what lies past the end of the sled is not cut, and nothing is wrong with it', () => {
    const far = { ...pin, at: { z: sure(140), theta: sure(0) } }
    const p = job({ windows: [{ id: 'w', for: 'features/pin' }] }, { features: [far as never] })
    expect(itemsOf(planned(p).plan).filter((x) => x.id === own)).toEqual([])
    expect(build(p).problems).toEqual([])
  })

  it('for what is there before is a way to the end that goes in first', () => {
    const blade = solidOf(windowed({ for: 'features/pin' }), own, 'box')
    expect([blade.z0, blade.z1]).toEqual([expect.closeTo(48.7, 9), 101])
    expect(heightsOf(blade)[0]).toBeCloseTo(15 - 3 - 0.3, 9)
    const rear = solidOf(windowed({ for: 'features/pin' }, 'rear'), own, 'box')
    expect([rear.z0, rear.z1]).toEqual([9, expect.closeTo(51.3, 9)])
  })

  it('is where and as large as it is typed, and says so', () => {
    const typed = itemOf(windowed({ theta: 30, width: 6, floor: 10, from: 40, to: 60, gap: 0.5 }), own)
    expect(typed.dimensions.map((d) => [d.name, d.value, d.how])).toEqual([
      ['gap', 0.5, 'typed'],
      ['theta', 30, 'typed'],
      ['width', 6, 'typed'],
      ['floor', 10, 'typed'],
    ])
    expect(typed.solid).toMatchObject({ z0: 40, z1: 60, width: 6, height: expect.closeTo(5, 9) })
    const plain = itemOf(windowed({ for: 'parts/switch' }), own)
    expect(plain.dimensions.map((d) => d.how)).toEqual(['default', 'default', 'default', 'default'])
  })

  it('that the sled does not reach is not cut', () => {
    const ids = (w: Partial<Window>) => itemsOf(planned(windowed(w)).plan).map((x) => x.id)
    expect(ids({ theta: 0, floor: 14.5, from: 40, to: 60 })).not.toContain(own)
    expect(ids({ theta: 0, floor: 10, from: 102, to: 110 })).not.toContain(own)
  })

  it.each<[string, Partial<Window>, string, string, string]>([
    ['of no width', { theta: 0, width: 0, floor: 10 }, 'width', '0 mm', 'Leave the width out'],
    ['the wrong way round', { theta: 0, floor: 10, from: 60, to: 40 }, 'to', 'z 40', '61.0'],
  ])('cannot be %s', (_what, typed, field, got, hint) => {
    const fault = onlyFault(windowed(typed))
    expect(fault.path).toBe(`${own}/${field}`)
    expect(fault.got).toContain(got)
    expect(fault.hint).toContain(hint)
    expect(faultsOf(windowed({ theta: 0, width: 6, floor: 10, from: 60, to: 61 }))).toEqual([])
  })
})
