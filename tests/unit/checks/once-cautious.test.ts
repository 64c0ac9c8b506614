import { describe, expect, it } from 'vitest'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { findingOf, sure } from './judged.ts'
import { bore, job, pin } from './smallest.ts'

/** Verdicts "clash" that an exact solid once proved wrong, each reduced to the smallest project that shows it. */

const nominal = (project: ProjectInput, id: string) => findingOf(project, id).margin.nominal

describe('what takes less room than it was taken for', () => {
  it('a board beyond its step is as wide as it is there: 4 wide, not 10, where a pin comes to 2.3 from its middle', () => {
    const outline: [number, number][] = [
      [0, -5],
      [0, 5],
      [20, 5],
      [20, 2],
      [40, 2],
      [40, -2],
      [20, -2],
      [20, -5],
    ]
    const project = job({
      features: [{ ...pin({ tip: sure(2.3) }), at: { z: sure(50), theta: sure(90) } }],
      sleds: [{ id: 'main', from: 10, to: 60, diameter: sure(20), windows: [{ id: 'w', for: 'features/pin' }] }],
      parts: [
        {
          id: 'board',
          kind: 'board',
          body: { shape: 'outline', outline, thickness: sure(1.6) },
          at: { z: 15, across: { x: 0, y: 0 } },
        },
      ],
    })
    expect(nominal(project, 'clearance:parts/board:stripped')).toBeCloseTo(2.3 - 2 - 0.15, 6)
  })

  it('a chamfered end that a window cuts is judged where its cone is: 0.3 and more from a shoulder it goes past', () => {
    const steps = [
      { id: 'main', length: sure(60), diameter: sure(30) },
      { id: 'neck', diameter: sure(19.6) },
    ]
    const cut = (windows: object[]) =>
      job({
        sections: [{ ...bore(), bore: steps }],
        features: [pin({ tip: sure(6) })].map((p) => ({ ...p, at: { z: sure(59), theta: sure(0) } })),
        sleds: [{ id: 'main', from: 10, to: 60, diameter: sure(20), windows }] as ProjectInput['sleds'],
      })
    const open = cut([{ id: 'w', for: 'features/pin' }])
    // The cone runs from radius 10 at z 59.6 to 9.6 at 60; the shoulder's edge is at radius 9.8.
    expect(nominal(open, 'clearance:sleds/main:stripped')).toBeCloseTo(0.2 / Math.SQRT2 - 0.15, 6)
  })

  it('a taper with a slot is as wide beside the slot as it is without it', () => {
    const tapered = (features: object[]) =>
      job({
        sections: [{ ...bore(), bore: [{ id: 'main', diameter: sure(24), diameterEnd: sure(20) }] }],
        sleds: [{ id: 'main', from: 10, to: 30, diameter: sure(20) }],
        features: features as ProjectInput['features'],
      })
    const slot = {
      id: 'slot',
      kind: 'slot',
      on: 'sections/tube',
      at: { z: sure(-1), face: 'rear', theta: sure(0) },
      shape: { form: 'slot', length: sure(110), width: sure(4) },
    }
    const id = 'clearance:sleds/main:stripped'
    expect(nominal(tapered([slot]), id)).toBeCloseTo(nominal(tapered([]), id), 6)
  })
})
