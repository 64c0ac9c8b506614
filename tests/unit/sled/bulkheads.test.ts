import { describe, expect, it } from 'vitest'
import { builder, cell, faultsOf, itemOf, job, nest, onlyFault, prober, solidOf } from './planned.ts'

const build = builder()
const probe = prober()
const walled = (bulkhead: object, extra: object = {}) =>
  job(
    {
      construction: 'open-cradle',
      nests: [nest('cell', { gap: 0.2, opening: 0 })],
      bulkheads: [{ id: 'b', z: 88, ...bulkhead }],
      channels: [{ id: 'c', theta: 45, width: 3, r: 11 }],
      ...extra,
    },
    { parts: [cell()] },
  )

describe('a bulkhead', () => {
  it('is a disc of 2.4 as wide as the body, put in after the nests', () => {
    expect(itemOf(walled({}), 'sleds/main/bulkheads/b')).toMatchObject({
      op: 'add',
      stage: 2,
      solid: { r0: 14, z0: 88, z1: 90.4 },
      dimensions: [{ how: 'default', path: 'sleds/main/bulkheads/b/thickness' }],
    })
    expect(itemOf(walled({ thickness: 3 }), 'sleds/main/bulkheads/b').dimensions[0]).toMatchObject({
      value: 3,
      how: 'typed',
    })
  })

  it('stands where the body was cut away, with the wires’ way through it', () => {
    const window = { windows: [{ id: 'w', theta: 0, width: 24, floor: 2, from: 86, to: 98 }] }
    const at = probe(walled({}, { windows: window.windows.map((w) => ({ ...w, floor: 13 })) }))
    expect(at(8, 0, 89)).toBe(true)
    const c = 11 * Math.SQRT1_2
    expect(at(c, c, 89)).toBe(false)
    expect(build(walled({})).problems).toEqual([])
  })

  it('is as wide as a slim body, not as its rings', () => {
    expect(solidOf(walled({}, { outside: 'slim', slimBy: 1 }), 'sleds/main/bulkheads/b', 'cylinder').r0).toBe(13)
  })

  it.each([
    ['through a part', { z: 40 }, 'z', 'through cell', 'z 85.0'],
    ['beyond the blade end', { z: 99 }, 'z', 'z 99.00 to 101.40', 'z 97.6'],
    ['before the rear end', { z: 8 }, 'z', 'z 8.00 to 10.40', 'z 10.0'],
    ['thinner than a wall', { thickness: 0.8 }, 'thickness', '0.8 mm', '1.2'],
  ])('cannot stand %s', (_what, typed, field, got, nearest) => {
    const fault = onlyFault(walled(typed))
    expect(fault.path).toBe(`sleds/main/bulkheads/b/${field}`)
    expect(fault.got).toContain(got)
    expect(fault.hint).toContain(nearest)
  })

  it('is told in hundredths, however the computer holds its numbers', () => {
    // 0.1 + 0.2 is 0.30000000000000004 to a computer.
    expect(onlyFault(walled({ thickness: 0.1 + 0.2 })).got).toBe('"0.3 mm"')
  })

  it('the nearest that works, works', () => {
    for (const typed of [{ z: 85 }, { z: 97.6 }, { z: 10 }, { thickness: 1.2 }])
      expect(faultsOf(walled(typed))).toEqual([])
  })
})
