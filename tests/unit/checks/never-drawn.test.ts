import { describe, expect, it } from 'vitest'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { about, findingsOf, sure } from './judged.ts'
import { box, inWall, made, moves, part, rod, sled, xy } from './small-parts.ts'
import { bore, pin } from './smallest.ts'

/*
 * What the random jobs of the proof never draw, and what was once told more room than it has: each the smallest project
 * that shows it, beside the gap at its worst as a pocket calculator or a loop over the interval finds it.
 */

const rad = Math.PI / 180
/** Least value of a function over an interval. */
const leastOver = (from: number, to: number, of: (n: number) => number): number =>
  Math.min(...Array.from({ length: 401 }, (_, i) => of(from + ((to - from) * i) / 400)))

/** The least worst gap among the findings whose id begins so. */
function told(project: ProjectInput, id: string): number {
  const found = [...findingsOf(project).values()].filter((f) => f.id.startsWith(id))
  expect(found.map((f) => f.id)).not.toEqual([])
  return Math.min(...found.map((f) => f.margin.worst + f.limit))
}

const tapered = (length: object, from: number, to: number) => [
  { ...bore(), length, bore: [{ id: 't', diameter: sure(from), diameterEnd: sure(to) }] },
]

const cases: readonly (readonly [string, ProjectInput, string, number])[] = [
  [
    'a typed facing in doubt, in the wall',
    made({ parts: [part('w', box(8, 1), { z: sure(40), facing: about(0, 10), across: xy(11, 0) }, inWall)] }),
    'clearance:sleds/main',
    leastOver(-10, 10, (d) => 11 * Math.cos(d * rad) - 0.5 - 10),
  ],
  [
    'a round thing in the wall, the sled off its clock angle',
    made({
      sleds: sled({ clocking: 5, windows: [{ id: 'w', theta: 0, width: 7.2, floor: 7.5, from: 10, to: 60 }] }),
      parts: [part('rod', rod(6, 20), { z: sure(30), across: xy(11, 0) }, inWall)],
    }),
    'clearance:sleds/main',
    // To the side wall of the window, 3.6 aside, which ends where the sled does.
    leastOver(0, 5, (d) => {
      const [x, y] = [11 * Math.cos(d * rad), 11 * Math.sin(d * rad)]
      return Math.hypot(Math.max(0, x - Math.sqrt(10 ** 2 - 3.6 ** 2)), 3.6 - y) - 3
    }),
  ],
  [
    'a box in the wall that faces sideways, the sled off its clock angle',
    made({
      sleds: sled({ clocking: 5 }),
      parts: [
        part('c', box(2, 2, 20), { z: 30, facing: sure(0), across: xy(11, 4) }),
        part('bx', box(4, 2, 20), { z: sure(30), facing: sure(90), across: xy(12.5, 0) }, inWall),
      ],
    }),
    'clearance:parts/c',
    // From its upper face, turned, to the other's corner at 12 and 3.
    leastOver(0, 5, (d) => 3 * Math.cos(d * rad) - 12 * Math.sin(d * rad) - 1),
  ],
  [
    'a part on the sled drawn from a part in the wall',
    made({
      parts: [
        part('wall', box(4, 3), { z: about(30, 0.8), facing: sure(0), across: xy(12, 0) }, inWall),
        part('c', box(4, 6), { z: { of: 'parts/wall', end: 'blade', by: 1 }, facing: sure(0), across: xy(9, 0) }),
      ],
    }),
    'clearance:parts/c',
    1 - 0.8,
  ],
  [
    'a part on the sled drawn beside a part in the wall',
    made({
      sections: [bore({ diameter: sure(40) })],
      parts: [
        part('wall', box(4, 4), { z: sure(30), facing: sure(0), across: { x: sure(12), y: about(0, 0.7) } }, inWall),
        part('c', box(4, 4), {
          z: 30,
          facing: sure(0),
          across: { beside: 'parts/wall', theta: sure(90), gap: sure(0.9) },
        }),
      ],
    }),
    'clearance:parts/c',
    0.9 - 0.7,
  ],
  [
    'float, where a ring lies in a narrow step only by its doubt',
    made({
      insertions: moves('floats'),
      sections: [
        {
          ...bore(),
          bore: [
            { id: 'wide', length: about(50, 0.5), diameter: sure(26) },
            { id: 'narrow', diameter: sure(21) },
          ],
        },
      ],
      sleds: sled({ to: 70, diameter: sure(12), rings: [{ id: 'r', z: 45, length: 5.3, diameter: sure(20) }] }),
      features: [{ ...pin({ tip: sure(8) }), at: { z: sure(30), theta: sure(0) } }],
    }),
    'clearance:sleds/main',
    8 - 6 - (13 - 10),
  ],
  [
    'float in a taper: straight aside, not square to its wall',
    made({
      insertions: moves('floats'),
      sections: tapered(sure(20), 40, 24),
      sleds: sled({ from: 2, to: 15, chamfer: 0 }),
      features: [{ ...pin({ tip: sure(14) }), at: { z: sure(8), theta: sure(0) } }],
    }),
    'clearance:sleds/main',
    14 - 10 - (20 - (8 / 20) * 15 - 10),
  ],
  [
    'a ring centred in a taper, where it lies',
    made({
      sections: tapered(sure(100), 30, 20),
      sleds: sled({
        to: 95,
        diameter: sure(12),
        rings: [{ id: 'r', z: 78, length: 4, diameter: sure(24) }],
        seats: [{ id: 's', against: 'sections/tube/t', face: 'around', ring: 'r', fit: 'slide' }],
      }),
    }),
    'seat:main:s',
    30 - 0.1 * 82 - 24,
  ],
  [
    'a tower that a seat of the whole sled does not excuse',
    made({
      sections: [bore({ diameter: sure(24) })],
      sleds: sled({
        diameter: sure(22),
        towers: [{ id: 't', theta: 0, half: 15, outer: 13, from: 30, to: 40 }],
        seats: [{ against: 'sections/tube/main', face: 'around', fit: 'slide' }],
      }),
    }),
    'clearance:sleds/main',
    12 - 13,
  ],
  [
    'a pin that passes the sled on its way through its doubt',
    made({
      sections: tapered(sure(100), 30, 26),
      sleds: sled({ diameter: sure(12), rings: [{ id: 'r', z: 39.5, length: 1, diameter: sure(20.4) }] }),
      features: [{ ...pin({ diameter: sure(1), reach: sure(4) }), at: { z: about(38, 4.5), theta: sure(0) } }],
    }),
    'clearance:sleds/main',
    leastOver(39.5, 40.5, (z) => 15 - 0.02 * z - 4 - 10.2),
  ],
  [
    'a pin by its reach that may stand beyond a shoulder',
    made({
      sections: [
        {
          ...bore(),
          bore: [
            { id: 'a', length: sure(50), diameter: sure(24) },
            { id: 'b', diameter: sure(20) },
          ],
        },
      ],
      sleds: sled({ diameter: sure(14) }),
      features: [{ ...pin({ diameter: sure(1), reach: sure(4) }), at: { z: about(49.5, 1), theta: sure(0) } }],
    }),
    'clearance:sleds/main',
    10 - 4 - 7,
  ],
  [
    'a pin by its reach in a short taper of doubtful length',
    made({
      sections: [
        {
          ...bore(),
          bore: [
            { id: 'a', length: sure(40), diameter: sure(24) },
            { id: 't', length: about(5, 0.8), diameter: sure(24), diameterEnd: sure(16) },
            { id: 'b', diameter: sure(16) },
          ],
        },
      ],
      sleds: sled({ diameter: sure(8) }),
      features: [{ ...pin({ diameter: sure(1), reach: sure(3) }), at: { z: sure(42.5), theta: sure(0) } }],
    }),
    'clearance:sleds/main',
    leastOver(4.2, 5.8, (l) => 12 - (4 * 2.5) / l - 3 - 4),
  ],
  [
    'a pin by its reach beside the axis of its bore',
    made({
      sections: [{ ...bore({ diameter: sure(24) }), eccentricity: { offset: about(2, 0.3), theta: sure(0) } }],
      sleds: sled({ diameter: sure(12) }),
      features: [{ ...pin({ diameter: sure(1), reach: sure(3) }), at: { z: sure(40), theta: sure(90) } }],
    }),
    'clearance:sleds/main',
    Math.sqrt(12 ** 2 - 2.3 ** 2) - 3 - 6,
  ],
  [
    'a part put in past a sled that may be off its clock angle',
    made({
      sleds: sled({ clocking: 5 }),
      insertions: [
        ...moves('axis'),
        { id: 'x-in', moves: 'parts/x', through: { of: 'sections/tube', end: 'blade' }, lateral: 'axis' },
      ],
      parts: [
        part('c', box(2, 2), { z: 48, facing: sure(0), across: xy(11, 4) }),
        part('x', box(4, 2), { z: sure(20), facing: sure(0), across: xy(12.5, 0) }, { ...inWall, goesIn: 'after' }),
      ],
    }),
    'way-in:x-in',
    // Its corner at 11.5 and 2 turns up to 3 and more, where the other part begins.
    3 - (11.5 * Math.sin(5 * rad) + 2 * Math.cos(5 * rad)),
  ],
  [
    'something fitted after, where no state is called closed and a clamp is open in one',
    made({
      states: [{ id: 'run' }],
      insertions: moves('floats'),
      sections: [{ ...bore(), clamp: { open: sure(24), closed: sure(20.4), openIn: ['run'] } }],
      screws: [{ id: 's', on: 'sections/tube', at: { z: sure(40), theta: sure(0) }, thread: 'M3', tip: sure(10.5) }],
    }),
    'fitted-after:screws/s',
    10.5 - 10 - 2,
  ],
  [
    'a wide part pushed out, near the width of the sled',
    made({
      parts: [
        part(
          'p',
          { shape: 'box', width: about(18, 0.4), height: sure(2), length: sure(20) },
          { z: 20, across: { pushed: sure(0), gap: sure(0.5) } },
        ),
        part('q', box(4, 2, 20), { z: 20, facing: sure(0), across: xy(-1.5, 0) }),
      ],
    }),
    'packing:parts/p:parts/q',
    leastOver(8.8, 9.2, (w) => Math.sqrt(9.5 ** 2 - w * w) - 2 + 0.5),
  ],
  [
    'a part put into a tube before the tube is drawn over',
    made({
      sections: [
        { id: 'tube', length: sure(60), bore: [{ id: 'main', diameter: sure(34) }] },
        { id: 'over', length: sure(60), z: sure(60), bore: [{ id: 'main', diameter: sure(24) }] },
      ],
      sleds: sled({ to: 90 }),
      insertions: [
        ...moves('axis'),
        { id: 'x-in', moves: 'parts/x', through: { of: 'sections/over', end: 'rear' }, lateral: 'axis' },
        { id: 'on', moves: 'sections/over', through: { of: 'sections/over', end: 'rear' }, lateral: 'axis' },
      ],
      parts: [
        part(
          'x',
          box(4, 2, 5),
          { z: sure(62), facing: sure(0), across: xy(9.5, 0) },
          { on: 'sections/over', goesIn: 'after' },
        ),
      ],
    }),
    'way-in:on:sleds/main',
    9.5 - 1 - 10,
  ],
]

describe('what random jobs never draw', () => {
  it.each(cases)('%s leaves no more at worst than it does', (_, project, id, gap) => {
    expect(told(project, id)).toBeLessThanOrEqual(gap + 1e-3)
  })

  it('a face seat is as far off as the wider side of its doubt', () => {
    const project = made({
      sections: [
        {
          ...bore(),
          bore: [
            { id: 'w', length: { value: 60, plus: 2, minus: 0 }, diameter: sure(30) },
            { id: 'n', diameter: sure(16) },
          ],
        },
      ],
      sleds: sled({ seats: [{ id: 's', against: 'sections/tube/n', face: 'blade' }] }),
    })
    expect(findingsOf(project).get('seat:main:s')?.margin.worst).toBeCloseTo(0.5 - 2, 6)
  })

  it('a contact in the wall counts how far the sled may come to lie off', () => {
    const worst = (half: number) =>
      findingsOf(
        made({
          sections: [
            {
              ...bore(),
              bore: [
                { id: 'w', length: about(60, half), diameter: sure(30) },
                { id: 'n', diameter: sure(16) },
              ],
            },
          ],
          sleds: sled({ diameter: sure(24), seats: [{ against: 'sections/tube/n', face: 'blade' }] }),
          parts: [
            { id: 'cell', kind: 'cell', body: rod(18, 40), at: { z: 14 } },
            {
              ...part('k', rod(8, 6), { z: sure(8) }, inWall),
              kind: 'contact',
              presses: { part: 'parts/cell', end: 'rear' },
              solid: sure(2),
              free: sure(9),
            },
          ],
        }),
      ).get('axial-chain:parts/cell:longest')?.margin.worst ?? Number.NaN
    expect(worst(0.4)).toBeCloseTo(worst(0) - 0.4, 6)
  })

  it.each([
    ['first', [{ id: 'empty', without: ['sleds/main'] }, { id: 'closed' }]],
    ['last', [{ id: 'closed' }, { id: 'empty', without: ['sleds/main'] }]],
  ])('a state without the sled, named %s, hides no other', (_, states) => {
    const project = made({ states, features: [pin({ tip: sure(9) })] })
    expect(told(project, 'clearance:sleds/main:closed')).toBeCloseTo(9 - 10, 6)
  })

  it('the tallest of a board is the one that may be', () => {
    const component = (z: number, height: object) => ({
      z: sure(z),
      x: sure(0),
      length: sure(4),
      width: sure(4),
      height,
    })
    const outline = [
      [0, -5],
      [20, -5],
      [20, 5],
      [0, 5],
    ]
    const project = made({
      thresholds: [{ id: 'outline', value: 0 }],
      parts: [
        part(
          'p',
          {
            shape: 'outline',
            outline,
            thickness: sure(1),
            components: [component(2, sure(3)), component(10, about(2.9, 0.5))],
          },
          { z: 20, across: { pushed: sure(0), gap: sure(0.5) } },
        ),
        part('q', box(4, 2, 20), { z: 20, facing: sure(0), across: xy(1, 0) }),
      ],
    })
    // Pushed out until its tallest leaves 0.5, its underside stands 4.4 and not 4 further in.
    expect(told(project, 'packing:parts/p:parts/q')).toBeLessThanOrEqual(Math.sqrt(9.5 ** 2 - 5 ** 2) - 4.4 - 2 + 1e-3)
  })
})
