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
  for (const sled of solids.sleds) {
    const things = solids.hilt.things.filter((t) => t.rides === sled.id)
    const own = sledRoom(sled)
    // Below the hilt, and so far that what is drawn up out of it stays below the hilt too.
    const above = Math.max(0, ...things.filter((t) => goesUp(t, theta)).map((t) => t.room.r + air))
    const from: Offset = [pushOf(sled.id), -apart * (outside + air + own.r + above), 0]
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

/** Whether a thing lies beside the axis on the upper side, as the hilt lies. */
function goesUp(t: Thing, theta: number): boolean {
  const { up, off } = seen(t.room, theta)
  return off >= 1 && up > 0
}

function seen(room: Room, theta: number): { up: number; out: number; off: number } {
  const off = Math.hypot(room.x, room.y)
  const turn = Math.atan2(room.y, room.x) - (theta * Math.PI) / 180
  return { up: off * Math.cos(turn), out: off * Math.sin(turn), off }
}

/** Out of a sled: sideways the way it lies beside the axis; along the hilt where it lies on it, near an end. */
function thingWay(t: Thing, all: readonly Thing[], sled: Room, theta: number): Offset {
  if (t.kind === 'rod') return [0, 0, 0]
  const { up, out, off } = seen(t.room, theta)
  if (off >= 1) {
    const far = sled.r + air
    return [0, (up / off) * far, (out / off) * far]
  }
  const rear = isRear(t, sled)
  const same = all.filter((o) => o.kind !== 'rod' && seen(o.room, theta).off < 1 && isRear(o, sled) === rear)
  return rear
    ? [sled.z0 - Math.max(...same.map((o) => o.room.z1)) - air, 0, 0]
    : [sled.z1 - Math.min(...same.map((o) => o.room.z0)) + air, 0, 0]
}

const isRear = (t: Thing, sled: Room): boolean => (t.room.z0 + t.room.z1) / 2 < (sled.z0 + sled.z1) / 2

/** Straight out through the wall, or along the hilt's axis where it lies on it. */
function wayOut(t: Thing, theta: number, far: number): Offset {
  const { up, out, off } = seen(t.room, theta)
  return off < 1 ? [0, far * 2, 0] : [0, (up / off) * far, (out / off) * far]
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
