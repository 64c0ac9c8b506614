import type { Room, Thing } from '../../papers/hilt-solid.ts'
import type { JobSolids, SledSolid } from '../../worker/job-solids.ts'

/** How far something is drawn from its place: along the hilt, up (towards the clock angle that is cut), to the eye, mm. */
export type Offset = readonly [number, number, number]

/** Something drawn as one: a section, a printed body, a thing; with the room it takes in its place. */
export interface Placed {
  /** `sections/body`, the id of a printed body, `parts/cell`. */
  readonly key: string
  readonly offset: Offset
  readonly room: Room
}

/** What stands out of its place: how far things are drawn apart (0 to 1), and what is pushed how far. */
export interface Standing {
  readonly theta: number
  readonly apart: number
  /** `sleds/main` and how far along the hilt it stands from its place, mm. */
  readonly pushed: { readonly moves: string; readonly by: number } | undefined
  /** References of what is not shown: not there yet, or taken away by the reader. */
  readonly hidden: ReadonlySet<string>
}

/** Room between things drawn apart, mm. */
const air = 6

/** Where everything that is shown is drawn. Nothing is ever hidden by what it is drawn apart from. */
export function placed(solids: JobSolids, standing: Standing): Placed[] {
  const { apart, pushed, hidden, theta } = standing
  const sections = sectionRooms(solids)
  const outside = Math.max(1, ...sections.map((s) => s.room.r))
  const pushOf = (id: string): number => (pushed?.moves === id ? pushed.by : 0)
  const out: Placed[] = sections.map(({ key, room }, i) => ({
    key,
    room,
    offset: [apart * (i - (sections.length - 1) / 2) * air * 2 + pushOf(key), 0, 0],
  }))
  let bottom = outside
  for (const sled of solids.sleds) {
    const things = solids.hilt.things.filter((t) => t.rides === sled.id)
    const own = sledRoom(sled)
    const beside = (up: boolean) =>
      Math.max(0, ...things.filter((t) => upwards(t, theta) === (up ? 1 : -1)).map((t) => t.room.r + air))
    // Below the hilt, and so far that what is drawn up out of it stays below the hilt too; the next one below that.
    const down = bottom + air + beside(true) + own.r
    bottom = down + own.r + beside(false)
    const from: Offset = [pushOf(sled.id), -apart * down, 0]
    for (const [i, body] of sled.bodies.entries())
      out.push({ key: body.id, room: bodyRoom(body), offset: plus(from, apart, bodyWay(sled, i)) })
    for (const t of things)
      out.push({ key: keyOf(t), room: t.room, offset: plus(from, apart, thingWay(t, things, own, theta)) })
  }
  for (const t of solids.hilt.things.filter((x) => !x.rides.startsWith('sleds/'))) {
    const home = out.find((p) => p.key === t.rides)?.offset ?? [0, 0, 0]
    const away = t.kind === 'intrusion' ? ([0, 0, 0] as const) : wayOut(t, theta, outside + air)
    out.push({ key: keyOf(t), room: t.room, offset: plus(plus(home, 1, [pushOf(t.id), 0, 0]), apart, away) })
  }
  return out.filter((p) => !isHidden(p.key, hidden, solids))
}

/** Rods carry the id of their sled: what they are is added. */
export const keyOf = (t: Thing): string => (t.id === t.rides && t.kind === 'rod' ? `${t.id} ${t.name}` : t.id)

function isHidden(key: string, hidden: ReadonlySet<string>, { sleds, hilt }: JobSolids): boolean {
  if (hidden.has(key)) return true
  const thing = hilt.things.find((t) => keyOf(t) === key)
  if (thing) return hidden.has(thing.rides) || hidden.has(thing.id)
  return sleds.some((s) => hidden.has(s.id) && s.bodies.some((b) => b.id === key))
}

const plus = (a: Offset, k: number, b: Offset): Offset => [a[0] + k * b[0], a[1] + k * b[1], a[2] + k * b[2]]

/** Off the axis by less than this lies on it, for the way out, mm. */
const onAxis = 2

/** Which way a thing leaves its sled sideways: up and to the eye, of length 1; undefined where it goes along the hilt. */
function sideways(t: Thing, theta: number): readonly [up: number, out: number] | undefined {
  const off = Math.hypot(t.room.x, t.room.y)
  // A board is laid in from its open side, wherever its middle is; round things on the axis have no side.
  if (off < onAxis) return t.kind === 'board' ? [1, 0] : undefined
  const turn = Math.atan2(t.room.y, t.room.x) - (theta * Math.PI) / 180
  return [Math.cos(turn), Math.sin(turn)]
}

/** 1 where a thing is drawn upwards out of its sled, -1 downwards, 0 where neither. */
const upwards = (t: Thing, theta: number): number => Math.sign(Math.round(10 * (sideways(t, theta)?.[0] ?? 0)))

/** Out of a sled: sideways, or along the hilt past the nearer end, with all that lies before it there. */
function thingWay(t: Thing, all: readonly Thing[], sled: Room, theta: number): Offset {
  if (t.kind === 'rod') return [0, 0, 0]
  const side = sideways(t, theta)
  const far = sled.r + air
  if (side) return [0, side[0] * far, side[1] * far]
  const rear = isRear(t, sled)
  const same = all.filter((o) => o.kind !== 'rod' && !sideways(o, theta) && isRear(o, sled) === rear)
  return rear
    ? [sled.z0 - Math.max(...same.map((o) => o.room.z1)) - air, 0, 0]
    : [sled.z1 - Math.min(...same.map((o) => o.room.z0)) + air, 0, 0]
}

const isRear = (t: Thing, sled: Room): boolean => (t.room.z0 + t.room.z1) / 2 < (sled.z0 + sled.z1) / 2

/** Straight out through the wall; what lies on the axis is lifted out. */
function wayOut(t: Thing, theta: number, far: number): Offset {
  const side = sideways(t, theta)
  return side ? [0, side[0] * far, side[1] * far] : [0, far * 2, 0]
}

/** Printed pieces of one sled are drawn apart along the hilt, and sideways where they lie side by side. */
function bodyWay(sled: SledSolid, i: number): Offset {
  const rooms = sled.bodies.map(bodyRoom)
  const [own, first] = [rooms[i] as Room, rooms[0] as Room]
  const along = rooms.filter((r) => r.z0 + r.z1 < own.z0 + own.z1 - 1).length
  const across = rooms.filter((r) => Math.abs(r.z0 + r.z1 - own.z0 - own.z1) <= 1).length > 1
  return [along * air * 1.5, 0, across ? (own === first ? air : -air) : 0]
}

function bodyRoom({ min, max }: SledSolid['bodies'][number]): Room {
  const r = Math.max(Math.abs(min[0]), Math.abs(min[1]), max[0], max[1])
  return { z0: min[2], z1: max[2], r, x: (min[0] + max[0]) / 2, y: (min[1] + max[1]) / 2 }
}

function sledRoom(sled: SledSolid): Room {
  const rooms = sled.bodies.map(bodyRoom)
  return {
    z0: Math.min(...rooms.map((r) => r.z0)),
    z1: Math.max(...rooms.map((r) => r.z1)),
    r: Math.max(0, ...rooms.map((r) => r.r)),
    x: 0,
    y: 0,
  }
}

function sectionRooms({ hilt }: JobSolids): { key: string; room: Room }[] {
  return [...new Set(hilt.metal.map((l) => l.section))].map((key) => {
    const points = hilt.metal.filter((l) => l.section === key).flatMap((l) => l.rings.flat())
    const zs = points.map(([z]) => z)
    return {
      key,
      room: { z0: Math.min(...zs), z1: Math.max(...zs), r: Math.max(...points.map(([, r]) => r)), x: 0, y: 0 },
    }
  })
}
