import type { NestInput } from '../../../src/project/schema/nest.ts'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import type { Rng } from '../../prove/rng.ts'

export type Part = NonNullable<ProjectInput['parts']>[number]

/** What a row of parts is laid out with. */
export interface Room {
  readonly rng: Rng
  /** Radius of the sled beside a stretch of the axis, as the generator expects it, mm. */
  readonly radius: (z0: number, z1: number) => number
  /** Least wall of the printer, and what a nest is longer than its part at each end, mm. */
  readonly wall: number
  readonly slack: number
  readonly cradles: boolean
  /** What a part pushed to the wall must leave there for rods, mm. */
  readonly rods: number
}

/** Parts with what is typed for their nests, and where the next may begin: walls and rooms behind them included. */
export interface Bay {
  readonly parts: readonly Part[]
  readonly nests: readonly NestInput[]
  readonly end: number
}

type Make = (room: Room, id: string, z: number) => Bay | undefined

const two = (n: number): number => Number(n.toFixed(2))
/** A size with a little doubt, as a calliper gives it. */
const about = (n: number) => ({ value: two(n), plus: 0.05, minus: 0.05 })
const typed = (part: string, fields: Omit<NestInput, 'part'>): NestInput[] =>
  Object.keys(fields).length > 0 ? [{ part: `parts/${part}`, ...fields }] : []

/** What looks out of the rear end of a sled that begins at z: a speaker, a connector, a charge port or kill switch. */
export const lookingOut = (room: Room, id: string, z: number, end: 'rear' | 'blade'): Bay | undefined => {
  const { rng, wall, slack } = room
  const R = room.radius(z - 1, z + 20)
  const kind = rng.pick(['speaker', 'speaker', 'connector', 'port', 'switch'] as const)
  const face = kind === 'port' || kind === 'switch'
  const r = face ? rng.between(3, 5.5) : rng.between(6, R - wall - 0.6)
  const length = face ? rng.between(6, 12, 1) : rng.between(3, 6, 1)
  const behind = kind === 'connector' ? 6 : kind === 'speaker' ? 1 : 0
  const inset = face ? 2 : rng.between(0.2, 1, 1)
  const at = two(end === 'rear' ? z + inset : z)
  const part: Part = {
    id,
    kind,
    body: { shape: 'cylinder', diameter: about(2 * r), length: about(length) },
    at: { z: end === 'rear' ? at : two(z + slack + behind) },
  }
  const fields = {
    ...(kind === 'speaker' && rng.chance(0.4) ? { gasket: rng.between(0.5, 1.5, 1) } : {}),
    ...(face && rng.chance(0.4) ? { hole: two(rng.between(r, 2 * r - 1)) } : {}),
    ...(!face && rng.chance(0.3) ? { step: rng.between(0.8, 2, 1) } : {}),
  }
  const grown = (fields.gasket ?? 0) * 0.7
  const last = end === 'rear' ? at + length + slack + behind + grown : z + slack + behind + length + grown + inset
  return { parts: [part], nests: typed(id, fields), end: last + wall + slack }
}

/** A cell between a spring or leaf at each end, in a pocket or a cradle, on the axis or pushed to one side. */
const cell: Make = (room, id, z) => {
  const { rng, wall } = room
  const length = rng.pick([rng.between(20, 40, 1), 34.5, 50, 65])
  const R = room.radius(z, z + length + 12)
  const r = rng.between(4.5, Math.min(11, R - wall - 0.9))
  if (r < 4.5) return undefined
  const theta = rng.pick([0, 90, 180, 270, rng.whole(0, 359)])
  const slack = R - r - 0.5
  const across =
    rng.chance(0.5) || slack < 1
      ? {}
      : { across: { pushed: theta, gap: two(room.rods + rng.between(0.4, Math.min(2, slack))) } }
  const rear = contact(rng, `${id}-rear`, `parts/${id}`, 'rear', two(z + 1.3))
  const start = two(z + 1.3 + rear.length)
  const blade = contact(rng, `${id}-blade`, `parts/${id}`, 'blade')
  const part: Part = {
    id,
    kind: 'cell',
    body: { shape: 'cylinder', diameter: about(2 * r), length: { value: length, plus: 0.2, minus: 0.2 } },
    at: { z: start, ...across },
  }
  const cradle = room.cradles ? rng.chance(0.7) : rng.chance(0.15)
  const pocket = {
    ...(rng.chance(0.15) && room.cradles
      ? { openingWidth: 0 }
      : rng.chance(0.2)
        ? { openingWidth: two(rng.between(1, 1.9) * r) }
        : {}),
    ...(rng.chance(0.25) ? { notchWidth: rng.between(6, 9, 1) } : {}),
  }
  const arms = {
    style: 'cradle' as const,
    ...(rng.chance(0.5) ? { arm: rng.between(1.3, 2.2, 1), wrap: rng.whole(5, 35) } : {}),
    ...(rng.chance(0.3) ? { armRoot: rng.whole(45, 75), arms: rng.whole(1, 3), armLength: rng.between(4, 6, 1) } : {}),
    ...(rng.chance(0.3) ? { notchWidth: 8 } : {}),
  }
  return {
    parts: [rear.part, part, blade.part],
    nests: typed(id, cradle ? arms : pocket),
    end: start + length + blade.length + 1.3 + wall,
  }
}

function contact(
  rng: Rng,
  id: string,
  presses: string,
  end: 'rear' | 'blade',
  z?: number,
): { part: Part; length: number } {
  const coil = rng.chance(0.5)
  const length = coil ? 5 : 2
  const part: Part = {
    id,
    kind: 'contact',
    body: coil
      ? { shape: 'cylinder', diameter: about(rng.between(6, 8)), length }
      : { shape: 'box', width: 7, height: 8, length },
    solid: { value: coil ? 3.1 : 0.8, plus: 0.1, minus: 0.1 },
    free: { value: coil ? 9 : 4, plus: 0.3, minus: 0.3 },
    presses: { part: presses, end },
    at: z === undefined ? {} : { z },
  }
  return { part, length }
}

/** A bare board with what stands on it, or one as a block; on the axis or moved out. */
const board: Make = (room, id, z) => {
  const { rng, wall, slack } = room
  const length = rng.between(16, 45, 1)
  const R = room.radius(z, z + length + 2)
  const width = rng.between(0.7 * R, 1.25 * R)
  const facing = rng.pick([0, 90, 180, 270, rng.whole(0, 359)])
  const height = rng.between(1, 5, 1)
  const bare = rng.chance(0.6)
  const half = two(width / 2)
  const component = (name: string, at: number, side: 'top' | 'bottom') => ({
    name,
    z: two(at * length),
    x: rng.between(-1.5, 1.5, 1),
    length: two(0.25 * length),
    width: two(0.5 * width),
    height: rng.between(0.8, 2, 1),
    side,
  })
  const body: Part['body'] = bare
    ? {
        shape: 'outline',
        outline: [
          [0, -half],
          [length, -half],
          [length, half],
          [0, half],
        ],
        thickness: about(1),
        components: [component('chip', 0.15, 'top'), ...(rng.chance(0.6) ? [component('socket', 0.5, 'bottom')] : [])],
      }
    : { shape: 'box', width: about(width), height: about(height), length: about(length) }
  const at = rng.chance(0.5) ? { r: rng.between(0, 0.2 * R), theta: facing } : undefined
  const notch = rng.chance(0.3) ? { liftNotch: rng.between(5, 9, 1) } : {}
  return {
    parts: [{ id, kind: 'board', body, at: { z: two(z + slack), facing, ...(at ? { across: at } : {}) } }],
    nests: typed(id, { ...(bare && rng.chance(0.5) ? { lip: rng.between(0.4, 0.7, 1) } : {}), ...notch }),
    end: z + 2 * slack + length + wall + 0.2 + (notch.liftNotch ? 3 : 0),
  }
}

/** A cell pushed to one side with a board over it. */
const stacked: Make = (room, id, z) => {
  const own = cell(room, id, z)
  const body = own?.parts[1]?.body
  if (!own || body?.shape !== 'cylinder' || room.cradles || room.rods > 0) return undefined
  const { rng, wall } = room
  const R = room.radius(z, own.end)
  const r = (body.diameter as { value: number }).value / 2
  const gap = two(2 * 0.35 + wall + rng.between(0, 0.6))
  const high = 2 * R - 0.6 - 2 * r - gap - 0.5
  if (high < 1.2) return undefined
  const theta = rng.pick([0, 90, 180, 270])
  const width = Math.min(1.2 * R, 1.5 * Math.sqrt(Math.max(0, R ** 2 - (R - high) ** 2)))
  const [rear, part, blade] = own.parts as [Part, Part, Part]
  const beside: Part = {
    id: `${id}-over`,
    kind: 'board',
    body: { shape: 'box', width: about(width), height: about(Math.min(high, rng.between(1.2, 4, 1))), length: 16 },
    at: {
      z: { of: `parts/${id}`, end: 'rear', by: 1 },
      across: { beside: `parts/${id}`, theta, gap },
    },
  }
  const pushed: Part = { ...part, at: { ...part.at, across: { pushed: (theta + 180) % 360, gap: 0.6 } } }
  const nests = own.nests
    .map((n): NestInput => ({ ...n, style: undefined }) as NestInput)
    .filter((n) => n.arm === undefined)
  return { parts: [rear, pushed, blade, beside], nests, end: own.end }
}

/** A part that is a piece of a ring, such as a light strip or a switch on its tower. */
const sector: Make = (room, id, z) => {
  const { rng, wall, slack } = room
  const length = rng.between(6, 20, 1)
  const R = room.radius(z, z + length + 2)
  const outer = R - rng.between(0, 0.8)
  const body: Part['body'] = {
    shape: 'ring-sector',
    inner: two(outer - rng.between(2, 4)),
    outer: about(outer),
    half: { value: rng.whole(10, 60), plus: 1, minus: 1 },
    length: about(length),
  }
  return {
    parts: [{ id, kind: 'other', body, at: { z: two(z + slack), facing: rng.whole(0, 359) } }],
    nests: [],
    end: z + 2 * slack + length + wall + 0.2,
  }
}

/** A round or square thing in a pocket of its own. */
const thing: Make = (room, id, z) => {
  const { rng, wall, slack } = room
  const length = rng.between(8, 30, 1)
  const R = room.radius(z, z + length + 2)
  const r = rng.between(3, 0.6 * R)
  const theta = rng.whole(0, 359)
  const round = rng.chance(0.5)
  const body: Part['body'] = round
    ? { shape: 'cylinder', diameter: about(2 * r), length: about(length) }
    : { shape: 'box', width: about(1.4 * r), height: about(r), length: about(length) }
  const across = { r: rng.between(0, Math.max(0, R - r - wall - 1)), theta }
  return {
    parts: [{ id, kind: 'other', body, at: { z: two(z + slack), across } }],
    nests: typed(id, {
      ...(rng.chance(0.3) ? { fit: rng.pick(['press', 'snug', 'slide', 'free'] as const) } : {}),
      ...(round && rng.chance(0.3) ? { opening: theta } : {}),
    }),
    end: z + 2 * slack + length + wall + 0.2,
  }
}

/** Any bay but one at an end. */
export const randomBay: Make = (room, id, z) =>
  room.rng.pick([cell, cell, stacked, board, board, sector, thing])(room, id, z)
