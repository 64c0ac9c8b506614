import type { QuantityInput } from '../project/schema/quantity.ts'
import type { SledInput } from '../project/schema/sled.ts'
import { least, most } from '../quantity/quantity.ts'
import type { Insertion, PrintProcess, SledPiece, SledRing } from './assembly.ts'
import { type Context, limitOf, wrong } from './context.ts'
import type { Ends, Heights } from './heights.ts'
import { sectionsDuring } from './insertions.ts'
import type { Section } from './metal.ts'
import { walls } from './rare.ts'
import { drawnDiameter } from './typed-limit.ts'

/** A sled's diameter is drawn in steps of this, rounded towards the loose side, mm. */
const step = 0.1

export interface OutsideAsk {
  readonly ctx: Context
  readonly heights: Heights
  readonly input: SledInput
  readonly ends: Ends
  readonly sections: readonly Section[]
  /** The moves that take this sled in. */
  readonly insertions: readonly Insertion[]
  readonly print: PrintProcess
}

export interface Outside {
  readonly pieces: readonly SledPiece[]
  readonly rings: readonly SledRing[]
}

/** The sled's outside: typed pieces or diameter, else what the way in leaves; straight, stepped with it, or slim with rings. */
export function outsideOf(ask: OutsideAsk): Outside | undefined {
  const { input } = ask
  const rings = input.rings?.length ? walls().typedRings(ask) : []
  if (input.bodies?.length) {
    const pieces = walls().typedPieces(ask)
    return pieces && { pieces, rings }
  }
  const whole = input.diameter === undefined ? stepped(ask) : typedWhole(ask)
  if (!whole) return undefined
  if (input.outside === 'slim') return walls().slim(ask, whole, rings)
  if (input.outside === 'throat') return { pieces: whole, rings }
  return { pieces: [straight(ask, whole)], rings }
}

/** One width over the whole length: the least of the steps. */
function straight({ ends }: OutsideAsk, pieces: readonly SledPiece[]): SledPiece {
  const narrowest = pieces.reduce((a, b) => (b.radius < a.radius ? b : a))
  return { ...narrowest, z0: ends.rear.nominal, z1: ends.blade.nominal }
}

function typedWhole({ ctx, input, ends }: OutsideAsk): SledPiece[] | undefined {
  const path = `sleds/${input.id}/diameter`
  const d = drawnDiameter(ctx, input.diameter as QuantityInput, path)
  return (
    d && [{ z0: ends.rear.nominal, z1: ends.blade.nominal, radius: d.nominal / 2, how: 'typed', path, source: 'typed' }]
  )
}

interface Room {
  readonly z0: number
  readonly z1: number
  readonly room: number
  /** The bore that leaves it. */
  readonly by: string
}

/**
 * What the way in leaves at each height of the sled: at the narrowest bore it has to pass to get there, at its worst,
 * less clearance and print error. A wider stretch ends a clearance before the shoulder it must not meet.
 */
function stepped({ ctx, input, ends, sections, insertions, print }: OutsideAsk): SledPiece[] | undefined {
  const path = `sleds/${input.id}/diameter`
  const away = limitOf(ctx, 'clearance') + most(print.error)
  const [z0, z1] = [ends.rear.nominal, ends.blade.nominal]
  const seats = (input.seats ?? []).filter((x) => x.face !== 'around').map((x) => x.against)
  const onTheWay = insertions.map((i) => roomsOf(i, sections, seats, z0, z1, away))
  const rooms = [...onTheWay, inPlace(sections, seats, away)]
    .flatMap((r) => r ?? [])
    .filter((r) => r.z1 > z0 && r.z0 < z1)
  if (onTheWay.some((r) => r === undefined) || onTheWay.length === 0 || rooms.length === 0) {
    ctx.missing.push({
      path,
      what: 'diameter of the sled',
      hint: 'Measure every bore on its way in, or type a diameter.',
      of: `sleds/${input.id}`,
    })
    return undefined
  }
  const inner = rooms.flatMap((r) => [r.z0, r.z1]).filter((z) => z > z0 && z < z1)
  const cuts = [...new Set([z0, ...inner, z1])].sort((a, b) => a - b)
  const source = `narrowest bore on the way in at its worst, less clearance ${limitOf(ctx, 'clearance')} and print error ${most(print.error)} each side, rounded down to ${step}`
  const pieces: SledPiece[] = []
  for (let i = 1; i < cuts.length; i++) {
    const [a, b] = [cuts[i - 1] as number, cuts[i] as number]
    const { room, by } = roomAt(rooms, (a + b) / 2)
    const d = Math.floor((2 * room + 1e-9) / step) * step
    if (!(d > 2))
      return wrong(
        ctx,
        'does-not-fit',
        path,
        `${(2 * room).toFixed(2)} mm left`,
        'more than 2 mm',
        'The bore on the way in is too narrow for any sled. Read it again.',
      )
    const radius = Number(d.toFixed(6)) / 2
    const last = pieces.at(-1)
    if (last && last.radius === radius) pieces[pieces.length - 1] = { ...last, z1: b }
    else pieces.push({ z0: a, z1: b, radius, how: 'default', path, source, by })
  }
  return pieces
}

/** A stretch that stands out of every bore is as wide as its narrowest neighbours. */
function roomAt(list: readonly Room[], z: number): Room {
  const here = list.filter((r) => z > r.z0 && z < r.z1)
  return (here.length > 0 ? here : list).reduce((a, b) => (b.room < a.room ? b : a))
}

/**
 * What a tube leaves of what lies in it, also of what does not pass it on its way: the tube may be brought to it later.
 * One that was not measured is told by the checks.
 */
const inPlace = (sections: readonly Section[], seats: readonly string[], away: number): Room[] =>
  sections
    .flatMap((s) => s.steps)
    .filter((s) => s.kind !== 'solid' && !seats.includes(s.id) && s.r0 && s.r1)
    .map((s) => ({ z0: least(s.z0) - away, z1: most(s.z1) + away, room: roomIn(s, away), by: s.name }))

const roomIn = (s: Section['steps'][number], away: number): number =>
  Math.min(least(s.r0 as never), least(s.r1 as never)) - away

/** Stretches of the sled with the room each has; undefined where a bore on the way was not measured. */
function roomsOf(
  i: Insertion,
  sections: readonly Section[],
  seats: readonly string[],
  z0: number,
  z1: number,
  away: number,
): Room[] | undefined {
  const steps = sectionsDuring(i, sections)
    .flatMap((s) => s.steps)
    .filter((s) => s.kind !== 'solid' && !seats.includes(s.id))
    .filter((s) =>
      i.heading === 'blade'
        ? s.z1.nominal > i.opening && s.z0.nominal < z1
        : s.z0.nominal < i.opening && s.z1.nominal > z0,
    )
  if (steps.some((s) => !s.r0 || !s.r1)) return undefined
  return steps.map((s) => {
    const room = roomIn(s, away)
    // Whatever passes this step must pass it on its whole way beyond, and a little before it too.
    return i.heading === 'blade'
      ? { z0: least(s.z0) - away, z1: z1 + 1, room, by: s.name }
      : { z0: z0 - 1, z1: most(s.z1) + away, room, by: s.name }
  })
}
