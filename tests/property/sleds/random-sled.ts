import type { ProjectInput } from '../../../src/project/schema/project.ts'
import { type Rng, rngOf } from '../../prove/rng.ts'
import { randomBore, type Stretch, throatTo } from './random-bore.ts'
import { type Bay, lookingOut, type Part, type Room, randomBay } from './random-parts.ts'

type Sled = NonNullable<ProjectInput['sleds']>[number]

export const constructions = ['full-cage', 'open-cradle', 'discs-on-rods'] as const
export type Construction = (typeof constructions)[number]

export interface RandomSled {
  readonly construction: Construction
  readonly project: ProjectInput
  /** The bore as it truly is at its narrowest. */
  readonly bore: readonly Stretch[]
  /** Printed bodies asked for; undefined where the program chooses its discs. */
  readonly bodies: number | undefined
  /** Print error to either side, mm. */
  readonly error: number
}

const two = (n: number): number => Number(n.toFixed(2))
const processes = [
  { process: 'process-filament', wall: 1.2 },
  { process: 'process-filament', wall: 1.2 },
  { process: 'process-resin', wall: 1 },
] as const

/** A random job of one sled in one hilt, with a load that a builder could mean. The same seed, the same job. */
export function randomSled(seed: number): RandomSled {
  const rng = rngOf(seed)
  const construction = constructions[seed % 3] as Construction
  const { process, wall } = rng.pick(processes)
  const error = rng.pick([0.05, 0.1, 0.15])
  const wanted = rng.between(40, 150, 1)
  const { steps, stretches } = randomBore(rng, wanted + 45)
  const outside = rng.pick(['straight', 'straight', 'throat', 'slim', 'typed'] as const)
  const away = 0.15 + error
  const narrowest = (z: number) => throatTo(stretches, z) - away
  const from = rng.between(2, 6, 1)
  const slimBy = outside === 'slim' ? rng.between(0.6, 1.5, 1) : 0
  const whole = narrowest(wanted + 40) - slimBy - (outside === 'typed' ? 0.2 : 0)
  const rods = construction === 'discs-on-rods' ? 6 : 0
  const room: Room = {
    rng,
    wall: wall + 0.05,
    slack: two(0.2 + error),
    cradles: construction === 'open-cradle',
    radius: (_, z1) => Math.floor(10 * (outside === 'throat' ? narrowest(z1 + 2) : whole)) / 10 - rods,
    rods,
  }
  const load = randomLoad(room, from, wanted)
  const to = Math.ceil(load.end * 10) / 10
  const sled: Sled = {
    id: 'main',
    name: 'sled',
    construction,
    from,
    to,
    ...outsideOf(rng, outside, room.radius(from, to) + rods, slimBy, from, to),
    nests: [...load.nests],
    ...featuresOf(rng, construction, load, room, from, to),
  }
  return {
    construction,
    bore: stretches,
    error,
    bodies: construction === 'discs-on-rods' ? sled.discs?.length : 1 + (sled.splits?.length ?? 0),
    project: {
      format: 'sledwright',
      version: 1,
      sections: [
        { id: 'tube', length: { min: wanted + 45, max: wanted + 45 }, bore: steps, outside: [{ diameter: 42 }] },
        { id: 'end', length: 10, bore: [{ id: 'cap', kind: 'solid' }] },
      ],
      parts: [...load.parts],
      sleds: [sled],
      insertions: [{ id: 'in', moves: 'sleds/main', through: { of: 'sections/tube', end: 'rear' }, lateral: 'axis' }],
      wires: rng.chance(0.6)
        ? [{ id: 'w', preset: rng.pick(['wire-28-silicone', 'wire-30-silicone']), count: rng.whole(1, 3) }]
        : [],
      printer: [{ id: 'p', process, error: { value: 0, plus: error, minus: error } }],
    },
  }
}

interface Load extends Bay {
  /** Where walls between bays lie: from the end of one nest to the beginning of the next. */
  readonly walls: readonly number[]
}

/** Parts in a row, something that looks out at either end among them. */
function randomLoad(room: Room, from: number, wanted: number): Load {
  const { rng } = room
  const parts: Part[] = []
  const nests: Bay['nests'][number][] = []
  const walls: number[] = []
  let z = from + 2.2
  const take = (bay: Bay | undefined): boolean => {
    if (!bay) return false
    parts.push(...bay.parts)
    nests.push(...bay.nests)
    z = bay.end
    return true
  }
  if (rng.chance(0.5)) take(lookingOut(room, 'rear-end', from, 'rear'))
  for (let k = 0; z < from + wanted - 30 && k < 6; k++) {
    z += rng.between(0, 2.5, 1)
    if (take(randomBay(room, `b${k}`, two(z)))) walls.push(z - room.wall)
  }
  const end = rng.chance(0.5) && take(lookingOut(room, 'blade-end', two(z), 'blade'))
  return { parts, nests, walls, end: end ? z - room.wall - room.slack : z + 1 }
}

function outsideOf(
  rng: Rng,
  outside: 'straight' | 'throat' | 'slim' | 'typed',
  R: number,
  slimBy: number,
  from: number,
  to: number,
): Partial<Sled> {
  if (outside === 'slim') return { outside, slimBy, ringLength: rng.between(3, 6, 1) }
  if (outside !== 'typed') return { outside }
  if (rng.chance(0.5)) return { diameter: two(2 * R) }
  const middle = two((from + to) / 2)
  return {
    bodies: [
      { from, to: middle, diameter: two(2 * (R + 0.15)) },
      { from: middle, to, diameter: two(2 * R) },
    ],
  }
}

/** What a sled has besides its nests. Some of it will not go together: then the program must say so. */
function featuresOf(
  rng: Rng,
  construction: Construction,
  load: Load,
  room: Room,
  from: number,
  to: number,
): Partial<Sled> {
  const R = room.radius(from, to) + room.rods
  const discs = construction === 'discs-on-rods'
  const theta = () => rng.whole(0, 359)
  const height = (length: number) => rng.between(from + 2, Math.max(from + 3, to - length - 2), 1)
  const sled: Partial<Sled> = {}
  if (discs && rng.chance(0.5)) {
    const n = rng.whole(3, 5)
    const step = (to - from - 6) / (n - 1)
    sled.discs = Array.from({ length: n }, (_, i) => ({ id: `d${i}`, z: two(from + i * step), thickness: 6 }))
  }
  if (discs && rng.chance(0.3))
    sled.rods = [80, 200, 320].map((t, i) => ({ id: `r${i}`, theta: t + rng.whole(-20, 20) }))
  if (rng.chance(0.15))
    sled.channels = [{ id: 'c', theta: theta(), width: rng.between(2, 3, 1), open: rng.chance(0.5) }]
  if (discs) return sled
  if (rng.chance(0.15))
    sled.keys = [
      {
        id: 'k',
        kind: rng.pick(['key', 'keyway'] as const),
        theta: theta(),
        from: from + 1,
        to: from + 9,
        height: rng.between(0.5, 1.2, 1),
      },
    ]
  if (rng.chance(0.15)) {
    const at = height(10)
    sled.towers = [
      {
        id: 't',
        theta: theta(),
        half: rng.whole(10, 40),
        outer: two(R + rng.between(0.1, 0.6)),
        from: at,
        to: two(at + 9),
      },
    ]
  }
  if (rng.chance(0.25) && load.walls.length > 0)
    sled.splits = [
      {
        id: 's',
        z: two(rng.pick(load.walls)),
        joint: rng.pick(['pins', 'dovetail', 'plain'] as const),
        theta: theta(),
      },
    ]
  if (rng.chance(0.2)) {
    const at = height(8)
    sled.windows = [
      {
        id: 'w',
        theta: theta(),
        width: rng.between(4, 8, 1),
        floor: two(rng.between(0.6, 0.85) * R),
        from: at,
        to: two(at + 7),
      },
    ]
  }
  if (construction === 'open-cradle' && rng.chance(0.3) && load.walls.length > 0)
    sled.bulkheads = [{ id: 'b', z: two(rng.pick(load.walls) - 0.6), thickness: 1.6 }]
  if (rng.chance(0.15)) sled.standardMarks = true
  if (rng.chance(0.1)) sled.rods = [{ id: 'r', theta: theta(), diameter: 2 }]
  return sled
}
