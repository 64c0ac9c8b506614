import type { ProjectInput } from '../../src/project/schema/project.ts'
import { randomSize } from './random-size.ts'
import type { Rng } from './rng.ts'

export type Parts = NonNullable<ProjectInput['parts']>
type Part = Parts[number]

export interface Bay {
  readonly parts: Parts
  /** Nominal height of its blade end. */
  readonly end: number
}

export interface Room {
  readonly sled: string
  /** Radius of the sled around it. */
  readonly r: number
  readonly z0: number
  readonly z1: number
  /** How far parts may stand out of the sled: a slim sled whose parts are what must pass. */
  readonly out: number
}

const two = (n: number): number => Number(n.toFixed(2))

/** Parts one behind the other from the rear of a sled, each bay a part or two side by side, with gaps near what is needed. */
export function randomLoad(rng: Rng, room: Room): { parts: Parts; end: number } {
  const parts: Parts = []
  let z = room.z0
  let last: string | undefined
  for (let k = 0; k < rng.whole(1, 3); k++) {
    const length = Math.min(rng.between(8, 34, 1), room.z1 - z)
    if (length < 6) break
    const id = (name: string): string => `${name}-${room.sled}-${k}`
    const by = rng.chance(0.5) ? two(0.2 + rng.between(-0.25, 0.35)) : rng.between(1, 4, 1)
    const start: NonNullable<Part['at']>['z'] = last === undefined ? two(z) : { of: `parts/${last}`, end: 'blade', by }
    if (last !== undefined) z += by
    const bay = randomBay(rng, room, id, start, z, length)
    parts.push(...bay.parts.map((p): Part => ({ ...p, on: `sleds/${room.sled}` })))
    last = (bay.parts[0] as Part).id
    z = bay.end
  }
  return { parts, end: z }
}

type Start = NonNullable<Part['at']>['z']
type Name = (name: string) => string

function randomBay(rng: Rng, room: Room, id: Name, z: Start, at: number, length: number): Bay {
  const end = at + length
  switch (rng.whole(0, 6)) {
    case 0:
      return { parts: [speaker(rng, room, id, z)], end: at + 5 }
    case 1:
      return { parts: cellAndBoard(rng, room, id, z, length), end }
    case 2:
      return { parts: [flat(rng, room, id, z, length)], end }
    case 3:
      return { parts: [outlined(rng, room, id, z, length)], end }
    case 4:
      return { parts: [sector(rng, room, id, z, length)], end }
    case 5:
      return { parts: [block(rng, room, id, z, length)], end }
    default:
      return { parts: cellWithContact(rng, room, id, z, length), end }
  }
}

/** What is left between a part and the sled's outside: near nothing, or well inside; negative for what stands out. */
const gapOut = (rng: Rng, room: Room): number =>
  room.out > 0
    ? two(-room.out + rng.between(-0.3, 0.3))
    : rng.chance(0.4)
      ? rng.between(-0.05, 0.3)
      : rng.between(0.4, 2)

function speaker(rng: Rng, room: Room, id: Name, z: Start): Part {
  const d = 2 * (room.r - rng.between(0.6, 3))
  return {
    id: id('speaker'),
    kind: 'speaker',
    body: { shape: 'cylinder', diameter: randomSize(rng, d, 'outside'), length: randomSize(rng, 5, 'length') },
    at: { z },
  }
}

function cell(rng: Rng, room: Room, id: Name, z: Start, length: number): Part {
  const r = room.r * rng.between(0.4, 0.75)
  const theta = rng.pick([0, 90, 180, 270, rng.whole(0, 359)])
  const across = rng.chance(0.6)
    ? { pushed: theta, gap: gapOut(rng, room) }
    : rng.chance(0.5)
      ? { r: two(room.r - r - gapOut(rng, room)), theta }
      : { x: rng.between(-1, 1), y: rng.between(-1, 1) }
  return {
    id: id('cell'),
    kind: 'cell',
    body: {
      shape: 'cylinder',
      diameter: randomSize(rng, 2 * r, 'outside'),
      length: randomSize(rng, length, 'length', 0.3),
    },
    at: { z, ...(rng.chance(0.2) ? {} : { across }) },
    ...(rng.chance(0.3) ? { swapped: true } : {}),
  }
}

function cellWithContact(rng: Rng, room: Room, id: Name, z: Start, length: number): Parts {
  const own = cell(rng, room, id, z, length)
  if (typeof z !== 'number' || rng.chance(0.4)) return [own]
  const end = rng.pick(['rear', 'blade'] as const)
  return [
    own,
    {
      id: id('contact'),
      kind: 'contact',
      preset: rng.pick(['contact-coil', 'contact-leaf'] as const),
      presses: { part: `parts/${own.id}`, end },
      at: {},
    },
  ]
}

/** A cell pushed to one side and something beside it, with a gap near the least between parts. */
function cellAndBoard(rng: Rng, room: Room, id: Name, z: Start, length: number): Parts {
  const own = cell(rng, room, id, z, length)
  const theta = rng.pick([0, 90, 180, 270])
  own.at = { ...own.at, across: { pushed: theta, gap: gapOut(rng, room) } }
  const w = room.r * rng.between(0.5, 1)
  const h = rng.between(0.8, 3)
  const l = Math.max(5, length - rng.between(1, 8, 1))
  return [
    own,
    {
      id: id('beside'),
      kind: 'board',
      body: {
        shape: 'box',
        width: randomSize(rng, w, 'outside'),
        height: randomSize(rng, h, 'outside'),
        length: randomSize(rng, l, 'length'),
      },
      at: {
        z: { of: `parts/${own.id}`, end: 'rear', by: rng.between(0, 1, 1) },
        across: { beside: `parts/${own.id}`, theta: (theta + 180) % 360, gap: two(0.2 + rng.between(-0.2, 0.4)) },
      },
    },
  ]
}

function flat(rng: Rng, room: Room, id: Name, z: Start, length: number): Part {
  const theta = rng.pick([0, 90, 180, 270, rng.whole(0, 359)])
  return {
    id: id('board'),
    kind: 'board',
    body: {
      shape: 'box',
      width: randomSize(rng, room.r * rng.between(0.6, 1.3), 'outside'),
      height: randomSize(rng, rng.between(1, 5), 'outside'),
      length: randomSize(rng, length, 'length'),
    },
    at: {
      z,
      across: rng.chance(0.7)
        ? { pushed: theta, gap: gapOut(rng, room) }
        : { r: rng.between(0, room.r / 2), theta: { value: theta, plus: 1, minus: 1 } },
      ...(rng.chance(0.2) ? { facing: (theta + rng.pick([0, 90, 30])) % 360 } : {}),
    },
  }
}

/** A board of any outline with blocks on both faces. */
function outlined(rng: Rng, room: Room, id: Name, z: Start, length: number): Part {
  const half = (room.r * rng.between(0.5, 1.1)) / 2
  const [step, narrow] = [two(length * rng.between(0.3, 0.7)), two(half * rng.between(0.5, 0.9))]
  const corners: [number, number][] = rng.pick([
    [
      [0, -half],
      [0, half],
      [step, half],
      [step, narrow],
      [length, narrow],
      [length, -narrow],
      [step, -narrow],
      [step, -half],
    ],
    [
      [0, -narrow],
      [0, narrow],
      [step, half],
      [length, half],
      [length, -half],
      [step, -half],
    ],
    [
      [0, -half],
      [0, half],
      [length, half],
      [length, -half],
    ],
  ] as [number, number][][])
  const component = (): NonNullable<Extract<Part['body'], { shape: 'outline' }>['components']>[number] => ({
    z: { value: two(length * rng.between(0, 0.5)), plus: 0.2, minus: 0.2 },
    x: two(half * rng.between(-0.4, 0.4)),
    length: two(length * 0.3),
    width: two(half * rng.between(0.3, 0.9)),
    height: randomSize(rng, rng.between(0.6, 3), 'outside'),
    side: rng.pick(['top', 'bottom'] as const),
  })
  const theta = rng.pick([0, 90, 180, 270])
  return {
    id: id('outlined'),
    kind: 'board',
    body: {
      shape: 'outline',
      outline: corners.map(([a, b]) => [two(a), two(b)]),
      thickness: randomSize(rng, 1.6, 'outside'),
      components: Array.from({ length: rng.whole(0, 3) }, component),
    },
    at: { z, across: rng.chance(0.7) ? { pushed: theta, gap: gapOut(rng, room) } : { r: rng.between(0, 2), theta } },
  }
}

function sector(rng: Rng, room: Room, id: Name, z: Start, length: number): Part {
  const outer = room.r - Math.max(0, gapOut(rng, room))
  return {
    id: id('tower'),
    kind: 'other',
    body: {
      shape: 'ring-sector',
      inner: two(outer * rng.between(0.4, 0.8)),
      outer: randomSize(rng, outer, 'outside'),
      half: { value: rng.whole(10, 60), plus: 1, minus: 1 },
      length: randomSize(rng, length, 'length'),
    },
    at: { z, facing: rng.pick([0, 90, 180, 270]) },
  }
}

function block(rng: Rng, room: Room, id: Name, z: Start, length: number): Part {
  const theta = rng.whole(0, 359)
  return {
    id: id('block'),
    kind: 'other',
    body: {
      shape: 'box',
      width: randomSize(rng, room.r * rng.between(0.3, 0.8), 'outside'),
      height: randomSize(rng, room.r * rng.between(0.3, 0.6), 'outside'),
      length: randomSize(rng, length, 'length'),
    },
    at: { z, across: { pushed: theta, gap: gapOut(rng, room) } },
  }
}
