import { describe, expect, it } from 'vitest'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { planSled } from '../../../src/sled/plan-sled.ts'
import { assemblyOf } from '../resolve/project-of.ts'
import { about, findingOf, perfect, sure } from './judged.ts'
import { bore, job, pin } from './smallest.ts'

/** Verdicts that an exact solid once proved wrong, each reduced to the smallest project that shows it. */

describe('what sticks in is measured from the wall where it is', () => {
  it('in a bore that narrows from 30 to 26 the wall at half way lies at 14: a pin of 3 ends at 11', () => {
    const tapered = job({ sections: [bore({ diameterEnd: sure(26) })], features: [pin({ reach: sure(3) })] })
    expect(findingOf(tapered, 'way-in:in:sleds/main').margin.worst).toBeCloseTo(11 - 10 - 0.15, 4)
  })

  it('in a bore 0.5 off the axis the wall on the far side lies 0.5 nearer', () => {
    const off = { ...bore(), eccentricity: { offset: sure(0.5), theta: sure(180) } }
    const beside = job({ sections: [off], features: [pin({ reach: sure(4) })] })
    expect(findingOf(beside, 'way-in:in:sleds/main').margin.worst).toBeCloseTo(14.5 - 4 - 10 - 0.15, 4)
  })

  it('moves with its section when the joint has play', () => {
    const front = { id: 'front', length: sure(30), bore: [{ id: 'b', diameter: sure(40) }] }
    const played = job({
      sections: [front, { ...bore(), id: 'tube' }],
      joints: [{ id: 'j', kind: 'slip', rear: 'front', blade: 'tube', play: sure(0.2) }],
      features: [pin({ tip: sure(10.4) })],
      insertions: [{ id: 'in', moves: 'sleds/main', through: { of: 'sections/front', end: 'rear' }, lateral: 'axis' }],
    })
    expect(findingOf(played, 'way-in:in:sleds/main').margin.worst).toBeCloseTo(10.4 - 10 - 0.15 - 0.2, 4)
  })
})

describe('print error', () => {
  it('of 0.05 ± 0.03 may be 0.08', () => {
    const printer = [{ id: 'p', error: about(0.05, 0.03) }]
    const margin = findingOf(job({ printer }), 'way-in:in:sleds/main').margin
    expect(margin.nominal - margin.worst).toBeCloseTo(0.08, 6)
  })

  it('typed bare has no reading error of its own', () => {
    const [sled] = assemblyOf(job({ printer: [{ id: 'p', error: 0.05 }] })).sleds
    expect(sled?.print.error.terms[0]?.spread).toMatchObject({ minus: 0.05, plus: 0.05 })
  })
})

describe('a slot in the wall', () => {
  it('turned by 1° is narrower by what that is worth at the radius that rides in it, not at the bore', () => {
    const slotted = job({
      sections: [{ ...bore(), outside: [{ diameter: sure(40) }] }],
      features: [
        {
          id: 'slot',
          kind: 'slot',
          on: 'sections/tube',
          at: { z: sure(-1), face: 'rear', theta: about(0, 1) },
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
    // The rider's outer corners lie at radius √(18² + 1.5²); the slot's side turns about the axis by 1°.
    const beside = 2 - 1.5 - 18 * Math.sin(Math.PI / 180)
    expect(findingOf(slotted, 'clearance:parts/rider:stripped').margin.worst).toBeLessThan(beside - 0.15 + 1e-3)
  })
})

describe('a place measured in the wall', () => {
  it('has the error of its reading, unlike a place drawn in a sled', () => {
    const boss = job({
      parts: [
        {
          id: 'boss',
          kind: 'other',
          on: 'sections/tube',
          body: { shape: 'box', width: sure(2), height: sure(2), length: sure(4) },
          at: { z: sure(40), across: { x: 12, y: sure(0) } },
        },
      ],
    })
    const margin = findingOf(boss, 'clearance:sleds/main:stripped').margin
    expect(margin.nominal - margin.worst).toBeCloseTo(0.1, 3)
  })
})

describe('the order of the moves', () => {
  const two = (gap: number) =>
    job({
      sleds: [
        { id: 'main', from: 40, to: 80, diameter: sure(20) },
        { id: 'second', from: 20, to: 40 - gap, diameter: sure(20) },
      ],
      insertions: ['main', 'second'].map((id) => ({
        id: `${id}-in`,
        moves: `sleds/${id}`,
        through: { of: 'sections/tube', end: 'rear' as const },
        lateral: 'axis' as const,
      })),
    })

  it('a sled meets the one that went in before it', () => {
    expect(findingOf(two(0.05), 'way-in:second-in:sleds/second').status).toBe('clash')
    expect(findingOf(two(0.2), 'way-in:second-in:sleds/second').margin.worst).toBeCloseTo(0.05, 6)
    expect(findingOf(two(0.05), 'way-in:main-in:sleds/main').status).toBe('clear')
  })
})

describe('a tube drawn over what stands still', () => {
  /** The sled stands out of the base by 40; the cap, narrow at its far end, comes over it from the blade side. */
  const capped = (through: { of: string; end: 'rear' | 'blade' }, extra: Partial<ProjectInput> = {}) =>
    job({
      sections: [
        { id: 'tube', length: sure(50), bore: [{ id: 'main', diameter: sure(30) }] },
        {
          id: 'cap',
          length: sure(50),
          bore: [
            { id: 'wide', length: sure(44), diameter: sure(30) },
            { id: 'end', diameter: sure(10) },
          ],
        },
      ],
      sleds: [{ id: 'main', from: 10, to: 90, diameter: sure(20) }],
      insertions: [
        { id: 'in', moves: 'sleds/main', through: { of: 'sections/tube', end: 'blade' }, lateral: 'axis' },
        { id: 'cap-on', moves: 'sections/cap', through },
      ],
      ...extra,
    })

  it('the unit goes in by the mouth that looks at it, whichever of the two mouths is named', () => {
    for (const through of [
      { of: 'sections/tube', end: 'blade' as const },
      { of: 'sections/cap', end: 'rear' as const },
    ])
      expect(findingOf(capped(through), 'way-in:cap-on:sleds/main').margin.worst).toBeCloseTo(4 - 0.15, 6)
  })

  it('what is fixed in the tube passes the unit too', () => {
    const boss: NonNullable<ProjectInput['parts']>[number] = {
      id: 'boss',
      kind: 'other',
      on: 'sections/cap',
      body: { shape: 'box', width: sure(2), height: sure(2), length: sure(2) },
      at: { z: sure(52), across: { x: sure(10.5), y: sure(0) } },
    }
    const cap = capped({ of: 'sections/tube', end: 'blade' }, { parts: [boss] })
    expect(findingOf(cap, 'way-in:cap-on:sleds/main').status).toBe('clash')
  })
})

describe('tapers', () => {
  it('a bore that opens from 26 to 30 over 40 leaves 0.02 less where its rear end may lie 0.4 farther ahead', () => {
    const opening = (doubt: number) =>
      job({
        sections: [
          {
            id: 'tube',
            length: sure(60),
            bore: [
              { id: 'mouth', length: about(20, doubt), diameter: sure(40) },
              { id: 'cone', diameter: sure(26), diameterEnd: sure(30) },
            ],
          },
        ],
        sleds: [{ id: 'main', from: 30, to: 50, diameter: sure(24), chamfer: 0 }],
        insertions: [
          { id: 'in', moves: 'sleds/main', through: { of: 'sections/tube', end: 'blade' }, lateral: 'axis' },
        ],
      })
    const worst = (doubt: number) => findingOf(opening(doubt), 'clearance:sleds/main:stripped').margin.worst
    // At z 30 the cone has opened by 4·10/40 on the diameter, or by 4·9.6/39.6 where it begins at 20.4.
    expect((worst(0) - worst(0.4)) * Math.hypot(1, 2 / 40)).toBeCloseTo(13.5 - (13 + (2 * 9.6) / 39.6), 2)
  })

  it('a printed chamfer stands out square to its own face', () => {
    const shoulder = job({
      sections: [
        {
          id: 'tube',
          length: sure(100),
          bore: [
            { id: 'main', length: sure(60), diameter: sure(30) },
            { id: 'neck', diameter: sure(20.2) },
          ],
        },
      ],
      sleds: [{ id: 'main', from: 10, to: 59.9, diameter: sure(20), chamfer: 1 }],
      printer: [{ id: 'p', error: 0.15 }],
    })
    // The neck's edge lies at (60, 10.1); the chamfer runs from (58.9, 10) to (59.9, 9): 1.2/√2 apart as drawn.
    const f = findingOf(shoulder, 'way-in:in:sleds/main')
    expect(f.margin.nominal).toBeCloseTo(1.2 / Math.SQRT2 - 0.15, 4)
    expect(f.margin.worst).toBeLessThanOrEqual(1.2 / Math.SQRT2 - 0.15 - 0.15 + 1e-6)
  })
})

describe('a board given by its outline', () => {
  type Part = NonNullable<ProjectInput['parts']>[number]
  const board: Part = {
    id: 'board',
    kind: 'board',
    body: {
      shape: 'outline',
      outline: [
        [0, -4],
        [0, 4],
        [20, 4],
        [20, -4],
      ],
      thickness: sure(1.6),
    },
    at: { z: 15 },
  }
  const block: Part = {
    id: 'block',
    kind: 'other',
    body: { shape: 'box', width: sure(6), height: sure(4), length: sure(10) },
    at: { z: { of: 'parts/board', end: 'blade', by: 0.5 } },
  }
  const margin = (parts: ProjectInput['parts']) => findingOf(job({ parts }), 'packing:parts/board:parts/block').margin

  it('leaves to what is placed by its blade edge just what was asked for, however its edges are off', () => {
    const { worst, best } = margin([board, block])
    expect([worst, best].map((m) => Number(m.toFixed(6)))).toEqual([0.3, 0.3])
  })

  it('does so at heights of which binary fractions fall short, too', () => {
    // 79.6 − 50.5 is not 29.1 to a computer.
    const outline: [number, number][] = [
      [0, -4],
      [0, 4],
      [29.1, 4],
      [29.1, -4],
    ]
    const odd = { ...board, body: { shape: 'outline', outline, thickness: sure(1.6) }, at: { z: 50.5 } } as Part
    const project = job({
      sections: [{ ...bore(), length: sure(150) }],
      sleds: [{ id: 'main', from: 45, to: 100, diameter: sure(20) }],
      parts: [odd, block],
    })
    const { worst, best } = findingOf(project, 'packing:parts/board:parts/block').margin
    expect([worst, best].map((m) => Number(m.toFixed(6)))).toEqual([0.3, 0.3])
  })

  it('has components that end at its edge with a doubt of their own', () => {
    const component = { z: about(15, 1), x: sure(0), length: sure(5), width: sure(4), height: sure(2), side: 'top' }
    const with1 = { ...board, body: { ...(board.body as object), components: [component] } } as Part
    // 36 − (15 + 20 + 1), and 0.2 is asked for.
    expect(margin([with1, { ...block, at: { z: 36 } }]).worst).toBeCloseTo(-0.2, 6)
  })

  it('begins where its outline begins, wherever that is counted from', () => {
    const outline: [number, number][] = [
      [5, -4],
      [5, 4],
      [25, 4],
      [25, -4],
    ]
    const late = { ...board, body: { shape: 'outline', outline, thickness: sure(1.6) } } as Part
    expect(margin([late, block])).toEqual(margin([board, block]))
    for (const z of [4, 36])
      expect(margin([late, { ...block, at: { z } }])).toEqual(margin([board, { ...block, at: { z } }]))
  })

  it('is longer by both edges, so what stands at a height of its own may be met 0.3 earlier', () => {
    const { worst, best } = margin([board, { ...block, at: { z: 36 } }])
    expect([worst, best].map((m) => Number(m.toFixed(6)))).toEqual([0.5, 1.1])
  })
})

describe('nests', () => {
  const plan = (parts: readonly object[], printer = perfect) => {
    const assembly = assemblyOf(job({ parts: parts as never, printer }))
    const [sled] = assembly.sleds
    if (!sled) throw new Error('no sled')
    return planSled(assembly, sled).plan.bodies.flatMap((b) => b.items)
  }
  const cell = (diameter: number) => ({
    id: 'cell',
    kind: 'cell',
    body: { shape: 'cylinder', diameter: sure(diameter), length: sure(30) },
    at: { z: 20 },
  })
  const spring = {
    id: 'spring',
    kind: 'contact',
    body: { shape: 'cylinder', diameter: sure(8), length: sure(5) },
    presses: { part: 'parts/cell', end: 'rear' },
    solid: sure(3),
    free: sure(6),
    preload: sure(0.5),
    at: { z: 15 },
  }

  it('a ring sector has a recess of its own, from its inner radius outwards', () => {
    const tower = {
      id: 'tower',
      kind: 'switch',
      body: { shape: 'ring-sector', inner: sure(6), outer: sure(9), half: sure(20), length: sure(10) },
      at: { z: 30, facing: 90 },
    }
    const recess = plan([tower]).find((x) => x.by === 'parts/tower')?.solid
    expect(recess).toMatchObject({ shape: 'ring-sector', theta: 90 })
    expect(recess?.shape === 'ring-sector' && recess.rIn < 6 && recess.rOut > 10 && recess.half > 20).toBe(true)
  })

  it('a block on the underside near an edge of its board takes the place of the rail', () => {
    const board = {
      id: 'board',
      kind: 'board',
      body: {
        shape: 'outline',
        outline: [
          [0, -6],
          [0, 6],
          [30, 6],
          [30, -6],
        ],
        thickness: sure(1.6),
        components: [{ z: sure(5), x: sure(4.5), length: sure(6), width: sure(2), height: sure(2), side: 'bottom' }],
      },
      at: { z: 20, across: { x: 2, y: 0 } },
    }
    const rooms = plan([board]).filter((x) => x.id.includes('/keep-out'))
    expect(rooms).toHaveLength(1)
    // It reaches from y 3.5 to 5.5; the rail stands from 4.8 outwards.
    const box = rooms[0]?.solid
    expect(box?.shape === 'box' && box.y + box.width / 2).toBeGreaterThan(5.5)
    expect(box?.shape === 'box' && box.y - box.width / 2).toBeLessThan(3.5)
  })

  it('a closed nest is longer than its part by the gap and by what both printed faces may stand in', () => {
    const pocket = plan([cell(12)], [{ id: 'p', error: sure(0.4) }]).find((x) => x.id === 'parts/cell/pocket')?.solid
    expect(pocket?.shape === 'cylinder' && pocket.z1 - pocket.z0).toBeCloseTo(30 + 0.4 + 2 * 0.4, 6)
  })

  it('a contact must not be wider than the pocket it stands in', () => {
    const narrow = job({ parts: [cell(7), spring] as never })
    expect(findingOf(narrow, 'nest-fit:parts/spring').status).toBe('clash')
    expect(findingOf(job({ parts: [cell(12), spring] as never }), 'nest-fit:parts/spring').status).toBe('clear')
  })

  it('a cell with one contact may slide to the far wall of its pocket, and both walls are printed', () => {
    const margin = (error: number) =>
      findingOf(
        job({ parts: [cell(12), spring] as never, printer: [{ id: 'p', error: sure(error) }] }),
        'axial-chain:parts/cell:shortest',
      ).margin
    // From the spring's face at 15 to the far wall at 50.2 less a cell of 30: 5.2 for a spring of 6 − 0.5.
    expect(margin(0).worst).toBeCloseTo(6 - 0.5 - 5.2, 6)
    // The far wall is drawn 0.1 farther, and each wall may stand out by 0.1.
    expect(margin(0.1).worst).toBeCloseTo(6 - 0.5 - 5.3 - 0.2, 6)
  })
})
