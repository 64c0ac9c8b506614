import { describe, expect, it } from 'vitest'
import { assemblyOf } from '../resolve/project-of.ts'
import { about, findingOf, findingsOf, sure } from './judged.ts'
import { bore, job, pin } from './smallest.ts'

/** Fields that were asked for and not used, each in the smallest project that shows it. */

const worst = (project: Parameters<typeof findingOf>[0], id: string) => findingOf(project, id).margin.worst

describe('a seat around', () => {
  const seats = [{ id: 's', against: 'sections/tube/main', face: 'around' as const, ring: 'r' }]
  const ringed = (sections: object[], z: number) =>
    job({
      sections: sections as never,
      sleds: [{ id: 'main', from: 10, to: 60, diameter: 16, seats, rings: [{ id: 'r', z, length: 5, diameter: 25 }] }],
    })

  it('comes through the narrow end of its taper to get to the wide one', () => {
    const taper = bore({ diameter: sure(20), diameterEnd: sure(40) })
    expect(worst(ringed([taper], 55), 'seat:main:s')).toBeCloseTo(20 - 25, 6)
  })

  it('lies at the narrowest of where it came along, not of what lies beyond', () => {
    const taper = bore({ diameter: sure(40), diameterEnd: sure(20) })
    // At z 15, the ring's blade end, the taper is 37 wide.
    expect(worst(ringed([taper], 10), 'seat:main:s')).toBeCloseTo(37 - 25, 6)
  })

  it('is narrower by how far its bore lies beside the axis', () => {
    const aside = (offset: number) => ({ ...bore(), eccentricity: { offset: sure(offset), theta: sure(30) } })
    expect(worst(ringed([aside(2)], 55), 'seat:main:s')).toBeCloseTo(30 - 25 - 4, 6)
    expect(worst(ringed([{ ...bore(), eccentricity: { offset: sure(2) } }], 55), 'seat:main:s')).toBeCloseTo(1, 6)
  })
})

describe('a clamp', () => {
  it('opens nothing that is narrower than it', () => {
    const steps = [
      { id: 'main', diameter: sure(30), length: sure(90) },
      { id: 'lip', diameter: sure(15) },
    ]
    const clamped = { id: 'tube', length: sure(100), bore: steps, clamp: { open: sure(30), closed: sure(29) } }
    const sleds = [{ id: 'main', from: 10, to: 95, diameter: 20 }]
    expect(worst(job({ sections: [clamped], sleds }), 'way-in:in:sleds/main')).toBeCloseTo(7.5 - 10 - 0.15, 6)
  })
})

describe('a slot', () => {
  it('that is there in some states only leaves no room', () => {
    const at = { z: sure(-1), face: 'rear' as const, theta: sure(0) }
    const shape = { form: 'slot' as const, length: sure(102), width: sure(6) }
    const slot = { id: 'slot', kind: 'slot' as const, on: 'sections/tube', at, shape }
    const keyed = { id: 'main', from: 10, to: 60, diameter: 29, keys: [{ id: 'k', theta: 0, width: 4, height: 2 }] }
    const status = (extra: object) =>
      findingOf(job({ sleds: [keyed], features: [{ ...slot, ...extra }] }), 'way-in:in:sleds/main').status
    expect(status({})).toBe('clear')
    expect(status({ states: ['service'] })).toBe('clash')
  })
})

describe('a switch whose axis points at the hilt’s', () => {
  const spoke = (extra: object, length: number) => ({
    id: 'switch',
    kind: 'switch' as const,
    body: { shape: 'cylinder' as const, axis: 'radial' as const, diameter: sure(6), length: sure(length) },
    ...extra,
  })

  it('on a sled stands out as far as its outer end may', () => {
    const parts = [spoke({ at: { z: 40, theta: sure(0), outer: about(13, 1) } }, 4)]
    // Its corners lie at √(14² + 3²).
    expect(worst(job({ parts }), 'clearance:parts/switch:stripped')).toBeCloseTo(15 - Math.hypot(14, 3) - 0.15, 6)
  })

  it('reaches the far wall where it is longer than its way to the axis', () => {
    const parts = [spoke({ at: { z: 40, theta: sure(0), outer: sure(10) } }, 24)]
    expect(worst(job({ parts }), 'clearance:parts/switch:stripped')).toBeCloseTo(15 - Math.hypot(14, 3) - 0.15, 6)
  })

  it('in a tapered wall begins where the outside is there', () => {
    const cone = { ...bore(), outside: [{ diameter: sure(60), diameterEnd: sure(40) }] }
    const parts = [spoke({ on: 'sections/tube', goesIn: 'after', at: { z: sure(50), theta: sure(0) } }, 10)]
    const [part] = assemblyOf(job({ sections: [cone], parts })).parts
    expect(part?.bodies[0]?.shape).toMatchObject({ rIn: { nominal: 15 } })
  })
})

describe('two contacts at one end', () => {
  const contact = (id: string, y: number) => ({
    id,
    kind: 'contact' as const,
    body: { shape: 'cylinder' as const, diameter: sure(3), length: sure(4) },
    presses: { part: 'parts/cell', end: 'rear' as const },
    at: { z: 16, across: { x: 0, y } },
    solid: sure(1),
    free: sure(3),
    preload: sure(0.5),
  })
  const body = { shape: 'cylinder' as const, diameter: sure(14), length: sure(30) }
  const cell = { id: 'cell', kind: 'cell' as const, body, at: { z: 20 } }
  const margin = (parts: object[], id: string) => worst(job({ parts: [cell, ...parts] as never }), id)

  it('press side by side, so that each has to reach', () => {
    const alone = margin([contact('a', 0)], 'axial-chain:parts/cell:shortest')
    expect(alone).toBeLessThan(0)
    for (const id of ['a', 'b'])
      expect(margin([contact('a', 3), contact('b', -3)], `axial-chain:parts/cell:${id}:shortest`)).toBeCloseTo(alone, 6)
  })
})

it('of a tip and a reach that disagree the one that sticks in farther counts', () => {
  const both = (tip: number) => job({ features: [pin({ tip: sure(tip), reach: sure(3) })] })
  for (const tip of [14, 12]) expect(worst(both(tip), 'way-in:in:sleds/main')).toBeCloseTo(12 - 10 - 0.15, 6)
  expect(worst(both(11), 'way-in:in:sleds/main')).toBeCloseTo(11 - 10 - 0.15, 6)
  expect(assemblyOf(both(14)).questions.map((q) => q.path)).toContain('features/pin/shape/tip')
})

it('bodies of a sled meet, or nothing holds what lies between', () => {
  const apart = [
    { from: 10, to: 20, diameter: 20 },
    { from: 40, to: 60, diameter: 20 },
  ]
  const sleds = (bodies: typeof apart) => [{ id: 'main', from: 10, to: 60, bodies }]
  expect(() => findingsOf(job({ sleds: sleds(apart) }))).toThrow(/bodies/)
  expect(findingsOf(job({ sleds: sleds(apart.with(1, { from: 20, to: 60, diameter: 20 })) })).size).toBeGreaterThan(0)
})
