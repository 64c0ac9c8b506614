import { describe, expect, it } from 'vitest'
import { builder, cell, faultsOf, itemOf, job, nest, onlyFault, round, solidOf } from './planned.ts'

const build = builder()
/** A port of ⌀ 12 × 6 behind a panel of 2 at the rear end. */
const faced = (typed: object = {}, kind = 'port') => {
  const port = round(kind, {
    body: { shape: 'cylinder', diameter: { value: 12, plus: 0, minus: 0 }, length: { value: 6, plus: 0, minus: 0 } },
    at: { z: { value: 12, plus: 0, minus: 0 } },
  })
  return job({ nests: [nest(kind, { gap: 0.2, ...typed })] }, { parts: [port, cell({ at: { z: 22 } })] })
}

describe('a service face', () => {
  it('leaves a panel of 2 at the end with a hole 2 narrower than the port, and room behind it', () => {
    const room = solidOf(faced(), 'parts/port/room', 'cylinder')
    expect([room.r0, room.z0, room.z1]).toEqual([6.2, 12, expect.closeTo(18.2, 9)])
    const hole = solidOf(faced(), 'parts/port/hole', 'cylinder')
    expect([hole.r0, hole.z0, hole.z1]).toEqual([5, 9, expect.closeTo(12.05, 9)])
    expect(solidOf(faced(), 'parts/port/opening', 'box').width).toBeCloseTo(12.4, 9)
    expect(build(faced()).problems).toEqual([])
  })

  it('takes a kill switch as well', () => {
    expect(itemOf(faced({}, 'switch'), 'parts/switch/room').nest).toBe('service face')
  })

  it('at the blade end is its mirror', () => {
    const project = job({ nests: [nest('port', { gap: 0.2 })] }, { parts: [cell(), round('port')] })
    const hole = solidOf(project, 'parts/port/hole', 'cylinder')
    expect([hole.r0, hole.z0, hole.z1]).toEqual([9, expect.closeTo(97.95, 9), 101])
  })

  it('its panel and hole can be typed, and say so', () => {
    const item = itemOf(faced({ panel: 3, hole: 8 }), 'parts/port/hole')
    expect(item.dimensions.map((d) => [d.name, d.how])).toEqual([
      ['gap', 'typed'],
      ['room radius', 'derived'],
      ['panel', 'typed'],
      ['hole', 'typed'],
    ])
    expect(item.solid).toMatchObject({ r0: 4, z1: expect.closeTo(13.05, 9) })
  })

  it.each([
    ['a panel thinner than a wall', { panel: 0.8 }, 'panel', '0.8 mm', '1.2'],
    ['a hole the port falls through', { hole: 13 }, 'hole', '13 mm', 'stop the body'],
    ['a hole of nothing', { hole: 0 }, 'hole', '0 mm', 'nearest that works is 1'],
  ])('cannot have %s', (_what, typed, field, got, hint) => {
    const fault = onlyFault(faced(typed))
    expect(fault.path).toBe(`sleds/main/nests/parts/port/${field}`)
    expect(fault.got).toContain(got)
    expect(fault.hint).toContain(hint)
  })

  it('the limits themselves work', () => {
    expect(faultsOf(faced({ panel: 1.2, hole: 1 }))).toEqual([])
  })
})
