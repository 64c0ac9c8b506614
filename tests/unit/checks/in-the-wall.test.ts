import { describe, expect, it } from 'vitest'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { answerTo } from '../job/demo-answer.ts'
import { about, sure } from './judged.ts'
import { job } from './smallest.ts'

/** A tube of 36 with a bore of 30, without doubt; the sled is from 10 to 60. */
const tube = { id: 'tube', length: sure(100), bore: [{ diameter: sure(30) }], outside: [{ diameter: sure(36) }] }
const hilt = (more: Partial<ProjectInput>): ProjectInput => job({ sections: [tube], ...more })
type Known = ReturnType<typeof about>
const atZ = <Z>(z: Z, theta = 0) => ({ z, theta: sure(theta) })
const round = (diameter: object, length: object) => ({ shape: 'cylinder' as const, diameter, length })
type PartIn = NonNullable<ProjectInput['parts']>[number]
/** A switch of 10 through the wall, behind the sled. */
const pushSwitch = (id: string, z: object, theta: number, more: object = {}): PartIn =>
  ({
    id,
    kind: 'switch',
    on: 'sections/tube',
    goesIn: 'after',
    body: { ...round(sure(10), sure(12)), axis: 'radial' },
    at: atZ(z, theta),
    ...more,
  }) as PartIn
const wall = (project: ProjectInput) =>
  answerTo(project).findings.filter((f) => f.check === 'in-the-wall' && f.status !== 'clear')
const told = (project: ProjectInput) => wall(project).map((f) => [f.id, f.status])

describe('two things in the wall', () => {
  const two = (gap: object) =>
    hilt({ parts: [pushSwitch('a', sure(80), 0), pushSwitch('b', { of: 'parts/a', by: gap }, 0)] })

  it('clash where they share room, and hold where they touch', () => {
    expect(told(two(sure(2)))).toEqual([['in-the-wall:parts/a:parts/b', 'clash']])
    // Each is 10 wide and the second begins 3 before the end of the first.
    expect(wall(two(sure(2)))[0]?.margin.worst).toBeCloseTo(-3, 6)
    expect(told(two(sure(5)))).toEqual([])
  })

  it('depend where what lies between them does', () => {
    expect(told(two(about(5, 1)))).toEqual([['in-the-wall:parts/a:parts/b', 'unsure']])
  })

  it('may be in one place where they never are there at once', () => {
    const states = [{ id: 'bench' }, { id: 'closed' }]
    const parts = [pushSwitch('a', sure(80), 0, { states: ['bench'] }), pushSwitch('b', sure(80), 0)]
    expect(told(hilt({ states, parts }))).toHaveLength(1)
    expect(told(hilt({ states, parts: [parts[0] as PartIn, { ...parts[1], states: ['closed'] } as PartIn] }))).toEqual(
      [],
    )
  })

  const screw = { id: 'k', on: 'sections/tube', thread: 'M4', tip: sure(2), at: atZ(sure(80)) }

  it('clash where one is a screw, unless the part is said to be screwed', () => {
    const held = (more: object) => hilt({ parts: [pushSwitch('a', sure(80), 0, more)], screws: [screw] })
    expect(told(held({}))).toEqual([['in-the-wall:parts/a:screws/k', 'clash']])
    expect(wall(held({}))[0]?.fix.map((f) => f.path)).toContain('parts/a/held')
    expect(told(held({ held: 'screwed' }))).toEqual([])
  })

  it('are not a screw and the lip it is screwed through', () => {
    const lip = {
      id: 'lip',
      kind: 'intrusion' as const,
      on: 'sections/tube',
      at: atZ(sure(80)),
      shape: { form: 'ring-sector' as const, reach: sure(3), half: sure(180), length: sure(6) },
    }
    expect(told(hilt({ features: [lip], screws: [screw] }))).toEqual([])
    expect(told(hilt({ features: [lip], parts: [pushSwitch('a', sure(80), 0)] }))).toEqual([
      ['in-the-wall:parts/a:features/lip', 'clash'],
    ])
  })
})

describe('a part in the wall and metal', () => {
  const block = (diameter: object, z: object, length: object) =>
    ({ id: 'block', kind: 'other', on: 'sections/tube', body: round(diameter, length), at: { z } }) as PartIn

  it('clashes with its own section where no metal would be left, and is asked about where it lies within the wall', () => {
    expect(told(hilt({ parts: [block(sure(50), sure(70), sure(20))] }))).toEqual([
      ['in-the-wall:parts/block:own', 'clash'],
    ])
    const within = answerTo(hilt({ parts: [block(sure(34), sure(70), sure(20))] }))
    expect(within.notChecked.map((n) => n.id)).toEqual(['in-the-wall:parts/block:own'])
    expect(answerTo(hilt({ parts: [block(sure(30.2), sure(70), sure(20))] })).verdict).toBe('clear')
  })

  it('clashes with another section that is narrower, not with one that is as wide', () => {
    const cap = (bore: number) => ({ ...tube, id: 'cap', length: sure(40), bore: [{ diameter: sure(bore) }] })
    const over = (bore: number) => hilt({ sections: [tube, cap(bore)], parts: [block(sure(20), sure(90), sure(20))] })
    expect(told(over(15))).toEqual([['in-the-wall:parts/block:sections/cap', 'clash']])
    expect(wall(over(15))[0]?.margin.worst).toBeCloseTo(-2.5, 6)
    expect(told(over(20))).toEqual([])
  })

  it('is not in the metal of a section that it lies around', () => {
    const cap = { ...tube, id: 'cap', length: sure(40), outside: [{ diameter: sure(32) }] }
    const strip = (r: object) =>
      ({
        id: 'strip',
        kind: 'other',
        on: 'sections/tube',
        body: { shape: 'box', width: sure(4), height: sure(2), length: sure(20) },
        at: { z: sure(90), across: { r, theta: sure(0) }, facing: sure(0) },
      }) as PartIn
    expect(told(hilt({ sections: [tube, cap], parts: [strip(sure(17))] }))).toEqual([])
    expect(told(hilt({ sections: [tube, cap], parts: [strip(about(17, 0.1))] }))).toEqual([
      ['in-the-wall:parts/strip:sections/cap', 'unsure'],
    ])
    expect(told(hilt({ sections: [tube, cap], parts: [strip(sure(16))] }))).toEqual([
      ['in-the-wall:parts/strip:sections/cap', 'clash'],
    ])
  })
})

describe('a part and the hole it is put through', () => {
  const hole = (shape: object, z = 80, theta = 0) =>
    [{ id: 'hole', kind: 'hole', on: 'sections/tube', at: atZ(sure(z), theta), shape }] as ProjectInput['features']
  const through = (shape: object, z?: number, theta?: number, part: object = {}) =>
    hilt({
      features: hole(shape, z, theta),
      parts: [pushSwitch('a', sure(80), 0, { through: 'features/hole', ...part })],
    })
  const drilled = (diameter: object) => ({ form: 'round', diameter })

  it('clashes where the hole is too small for it, and depends where nobody knows', () => {
    expect(told(through(drilled(sure(4))))).toEqual([['in-the-wall:parts/a:features/hole', 'clash']])
    expect(wall(through(drilled(sure(4))))[0]?.margin.worst).toBeCloseTo(-6, 6)
    expect(told(through(drilled(about(10, 0.1))))).toEqual([['in-the-wall:parts/a:features/hole', 'unsure']])
    expect(told(through(drilled(sure(10))))).toEqual([])
  })

  it('clashes where the two surely lie apart, along the hilt or around it', () => {
    const place = [['in-the-wall:parts/a:features/hole:place', 'clash']]
    expect(told(through(drilled(sure(12)), 80, 90))).toEqual(place)
    expect(told(through(drilled(sure(12)), 82))).toEqual(place)
    // The hole leaves 1 all around.
    expect(wall(through(drilled(sure(12)), 82))[0]?.margin.worst).toBeCloseTo(-1, 6)
    expect(told(through(drilled(sure(12)), 81))).toEqual([])
  })

  it('may be narrower than one that is fitted from within', () => {
    expect(told(through(drilled(sure(4)), 80, 0, { goesIn: 'before' }))).toEqual([])
    expect(told(through(drilled(sure(4)), 80, 90, { goesIn: 'before' }))).toHaveLength(1)
  })

  it('goes through a slot by its sides', () => {
    const slot = (width: number) => ({ form: 'slot', length: sure(20), width: sure(width) })
    expect(told(through(slot(9)))).toEqual([['in-the-wall:parts/a:features/hole', 'clash']])
    expect(wall(through(slot(9)))[0]?.margin.worst).toBeCloseTo(-1, 6)
    expect(told(through(slot(10), 84))).toEqual([])
  })
})

describe('a sleeve', () => {
  const sleeve = (inside: Known, more: object = {}) =>
    hilt({ sleeves: [{ id: 'g', on: 'sections/tube', z: sure(0), length: sure(50), inside, ...more }] })

  it('must be as wide inside as what it lies on', () => {
    expect(told(sleeve(sure(10)))).toEqual([['in-the-wall:sleeves/g:tube:0', 'clash']])
    expect(told(sleeve(about(36, 0.1)))).toEqual([['in-the-wall:sleeves/g:tube:0', 'unsure']])
    expect(answerTo(sleeve(sure(36))).verdict).toBe('clear')
  })

  it('need not, where it goes around a part of it only', () => {
    expect(told(sleeve(sure(10), { half: sure(40) }))).toEqual([])
  })
})

describe('tags and wires', () => {
  const port = (body: object, more: object) =>
    hilt({
      parts: [
        {
          id: 'port',
          kind: 'other',
          on: 'sections/tube',
          at: { z: sure(80), across: { r: sure(10), theta: sure(0) }, theta: sure(0) },
          body,
          ...more,
        } as PartIn,
      ],
    })
  const box = { shape: 'box', width: sure(8), height: sure(2), length: sure(8) }
  const unchecked = (project: ProjectInput) => answerTo(project).notChecked.map((n) => n.path)

  it('count behind a round body that points at the axis; behind any other they are told as not checked', () => {
    expect(unchecked(port(box, { tags: sure(3), wireBend: sure(6) }))).toEqual([
      'parts/port/tags',
      'parts/port/wireBend',
    ])
    expect(unchecked(port(box, { tags: sure(0) }))).toEqual([])
    const preset = answerTo(port(box, { kind: 'port', preset: 'port-usb-c' }))
    expect(preset.notChecked).toEqual([])
    expect(preset.assembly.assumptions.join()).toContain('room for the bend of its wires')
    expect(unchecked(port({ ...round(sure(8), sure(5)), axis: 'radial' }, { tags: sure(3) }))).toEqual([])
  })
})
