import { describe, expect, it } from 'vitest'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { assemblyOf, problemsOf } from '../resolve/project-of.ts'
import { about, sure } from './judged.ts'
import { box, inWall, made, part, xy } from './small-parts.ts'
import { bore, pin } from './smallest.ts'

describe('what cannot be placed is said', () => {
  const codes = (project: ProjectInput) => problemsOf(project).map((p) => `${p.path} ${p.code}`)

  it('a part in the wall cannot go in with the sled', () => {
    const wall = part(
      'w',
      box(8, 6),
      { z: sure(40), facing: sure(0), across: xy(11, 0) },
      { ...inWall, goesIn: 'with-sled' },
    )
    expect(codes(made({ parts: [wall] }))).toEqual(['parts/w/goesIn contradiction'])
  })

  it('a part is pushed only where a sled is around it', () => {
    const across = { pushed: sure(0), gap: sure(1) }
    expect(codes(made({ parts: [part('w', box(4, 2), { z: sure(40), across }, inWall)] }))).toEqual([
      'parts/w/at/across contradiction',
    ])
    expect(codes(made({ parts: [part('p', box(4, 2), { z: 70, across })] }))).toEqual([
      'parts/p/at/across contradiction',
    ])
  })

  it('a pin by its reach needs a wall, a slot an end it surely has, and an outside where it may be turned', () => {
    const notChecked = (features: object[], sections?: object[]) =>
      assemblyOf(made({ features, ...(sections ? { sections } : {}) })).missing.map((m) => m.path)
    expect(
      notChecked(
        [{ ...pin({ reach: sure(4) }), at: { z: sure(50), theta: sure(0) } }],
        [{ ...bore(), bore: [{ id: 'm', kind: 'solid' }] }],
      ),
    ).toEqual(['features/pin/shape/tip'])
    const slot = (z: object, theta: object) => ({
      id: 'slot',
      kind: 'slot',
      on: 'sections/tube',
      at: { z, theta },
      shape: { form: 'slot', length: sure(20), width: sure(6), depth: sure(2) },
    })
    expect(notChecked([slot(about(90, 0.5), sure(0))])).toEqual(['features/slot/at/z'])
    expect(notChecked([slot(sure(90), sure(0))])).toEqual([])
    const through = { ...slot(sure(50), about(0, 3)), shape: { form: 'slot', length: sure(20), width: sure(6) } }
    expect(notChecked([through])).toEqual(['sections/tube/outside'])
  })
})
