import { describe, expect, it } from 'vitest'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { planSled } from '../../../src/sled/plan-sled.ts'
import { assemblyOf } from '../resolve/project-of.ts'
import { about, findingOf, sure } from './judged.ts'
import { bore, job, pin } from './smallest.ts'

/** Verdicts that an exact solid once proved wrong, each reduced to the smallest project that shows it: where a sled lies and how it is held. */

describe('where a sled truly lies along the hilt', () => {
  /** A block that stands out of the sled, 0.4 behind a pin that it must not reach. */
  const ahead = (block: object, pinZ: object, sled: object, sections = [{ ...bore(), id: 'tube' }]) =>
    job({
      sections,
      features: [{ ...pin({ tip: sure(11) }), at: { z: pinZ, theta: sure(0) } } as never],
      sleds: [{ id: 'main', to: 60, diameter: sure(20), ...sled }],
      parts: [
        {
          id: 'block',
          kind: 'other',
          body: { shape: 'box', width: sure(3), height: sure(6), length: sure(8.6) },
          at: { z: 40, across: { x: 10, y: 0 }, ...block },
        },
      ],
    })
  const gap = (project: ProjectInput) => findingOf(project, 'clearance:parts/block:stripped').margin

  it('what it carries moves with it where its rear end is placed from something in doubt', () => {
    const sections = [
      { id: 'rear', length: about(5, 0.3), bore: [{ id: 'b', diameter: sure(30) }] },
      { ...bore(), z: sure(5) },
    ]
    const from = { of: 'sections/rear', end: 'blade' as const, by: 5 }
    const { worst, nominal } = gap(ahead({}, sure(50), { from }, sections))
    expect(nominal).toBeCloseTo(0.4 - 0.15, 6)
    expect(worst).toBeCloseTo(0.4 - 0.15 - 0.3, 6)
  })

  it('a part drawn from a pin does not follow the pin: the sled is drawn once', () => {
    const z = { of: 'features/pin', end: 'rear' as const, by: -0.4 }
    expect(gap(ahead({ z, face: 'blade' }, about(50, 0.3), { from: 10 })).worst).toBeCloseTo(0.4 - 0.15 - 0.3, 6)
  })

  it('a seated sled goes on to its shoulder, and what it carries comes that much nearer to what sticks in', () => {
    const shouldered = {
      ...bore(),
      bore: [
        { id: 'main', length: sure(60.3), diameter: sure(30) },
        { id: 'neck', diameter: sure(12) },
      ],
    }
    const seats = [{ against: 'sections/tube/neck', face: 'blade' as const }]
    expect(gap(ahead({}, sure(50), { from: 10, seats }, [shouldered])).worst).toBeCloseTo(0.4 - 0.15 - 0.3, 6)
  })

  it('a seat is wrong where the shoulder is far ahead as where it is far behind', () => {
    const at = (z: number) => {
      const steps = [
        { id: 'main', length: sure(z), diameter: sure(30) },
        { id: 'neck', diameter: sure(12) },
      ]
      const seats = [{ id: 'face', against: 'sections/tube/neck', face: 'blade' as const }]
      const project = job({
        sections: [{ ...bore(), bore: steps }],
        sleds: [{ id: 'main', from: 10, to: 60, diameter: sure(20), seats }],
      })
      return findingOf(project, 'seat:main:face').status
    }
    expect([59, 59.8, 60.2, 61].map(at)).toEqual(['clash', 'clear', 'clear', 'clash'])
  })
})

describe('a sled that is not held still', () => {
  const near = (sled: object) =>
    job({
      sleds: [{ id: 'main', from: 10, to: 60, diameter: sure(20), ...sled }],
      features: [pin({ tip: sure(10.6) })],
    })
  const worst = (sled: object) => findingOf(near(sled), 'clearance:sleds/main:stripped').margin.worst

  it('floats as far as was typed, in whatever form, even where it goes in on the axis', () => {
    expect(worst({ float: 0.2 })).toBeCloseTo(0.6 - 0.15 - 0.2, 4)
    expect(worst({ float: about(0.2, 0.1) })).toBeCloseTo(0.6 - 0.15 - 0.3, 4)
    expect(worst({ float: { min: 0, max: 0.25 } })).toBeCloseTo(0.6 - 0.15 - 0.25, 4)
  })

  it('off its clock angle comes nearer to the sides of a slot', () => {
    const slotted = (clocking: number) =>
      job({
        sections: [{ ...bore(), outside: [{ diameter: sure(40) }] }],
        sleds: [{ id: 'main', from: 10, to: 60, diameter: sure(20), clocking }],
        features: [
          {
            id: 'slot',
            kind: 'slot',
            on: 'sections/tube',
            at: { z: sure(-1), face: 'rear', theta: sure(0) },
            shape: { form: 'slot', length: sure(80), width: sure(4) },
          },
        ],
        parts: [
          {
            id: 'rider',
            kind: 'other',
            body: { shape: 'box', width: sure(3), height: sure(4), length: sure(6) },
            at: { z: 20, across: { x: 16, y: 0 } },
          },
        ],
      })
    const margin = (clocking: number) => findingOf(slotted(clocking), 'way-in:in:parts/rider').margin.worst
    expect(margin(0)).toBeCloseTo(0.5 - 0.15, 4)
    expect(margin(1)).toBeLessThan(0.5 - 0.15 - 18 * Math.sin(Math.PI / 180) + 1e-3)
  })
})

describe('the nominal margin', () => {
  it('is the least of all pairs, also where many others are tighter at the worst', () => {
    const features = Array.from({ length: 9 }, (_, i) => ({
      ...pin({ tip: about(10.6, 0.4) }),
      id: `pin-${i}`,
      at: { z: sure(20 + 3 * i), theta: sure(40 * i) },
    }))
    const { margin } = findingOf(job({ sections: [bore({ diameter: sure(20.6) })], features }), 'way-in:in:sleds/main')
    expect(margin.worst).toBeCloseTo(0.2 - 0.15, 3)
    expect(margin.nominal).toBeCloseTo(0.3 - 0.15, 6)
  })
})

describe('a window for what does not reach the sled', () => {
  it('is not cut, and spoils nothing', () => {
    const outside = job({
      features: [pin({ tip: sure(14) })],
      sleds: [{ id: 'main', from: 10, to: 60, diameter: sure(20), windows: [{ id: 'w', for: 'features/pin' }] }],
    })
    const assembly = assemblyOf(outside)
    const [sled] = assembly.sleds
    const items = sled ? planSled(assembly, sled).plan.bodies.flatMap((b) => b.items) : []
    expect(items.filter((x) => x.nest === 'window')).toEqual([])
  })
})
