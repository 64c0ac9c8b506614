import { isBeside, isPushed, isXy } from '../../src/project/forms.ts'
import type { PartInput } from '../../src/project/schema/part.ts'
import type { QuantityInput } from '../../src/project/schema/quantity.ts'
import { boundsOf, type Local, localOf } from './bodies.ts'
import { type Convex, prism, Rod, Spoke, sectorPieces } from './convex.ts'
import { type DrawnSled, type Ends, type Heights, onSled } from './heights.ts'
import { type Reality, sizeAt } from './sizes.ts'
import { turned } from './turned.ts'
import { atClock, type V2 } from './vec.ts'

/** Where a part's middle lies in the cross-section, and the clock angle it faces. */
interface Spot extends V2 {
  readonly facing: number
}

/** How a sled moves in this draw: along the hilt and aside. */
export interface Shift extends V2 {
  readonly z: number
}

/** A part as it truly is and lies in one draw. */
export interface PartTruth {
  readonly of: string
  readonly input: PartInput
  readonly sled: string | undefined
  readonly section: string | undefined
  readonly goesIn: 'before' | 'with-sled' | 'after'
  readonly solids: readonly Convex[]
  /** In its nest at its true size: where it was drawn, and where its own size puts it. */
  readonly nested: readonly (readonly Convex[])[]
}

export interface LoadWorld {
  readonly r: Reality
  readonly heights: Heights
  readonly drawn: ReadonlyMap<string, DrawnSled>
  readonly shift: (sled: string) => Shift
  readonly turn: (sled: string) => number
  readonly aside: ReadonlyMap<string, V2>
}

/** Every part of the project in one draw; `nominal` is the same world with nothing off. */
export function partsAt(w: LoadWorld, nominal: LoadWorld): PartTruth[] {
  return w.r.project.parts.map((p) => {
    const [list, id] = (p.on ?? `sleds/${w.r.project.sleds[0]?.id}`).split('/') as [string, string]
    const carried = list === 'sleds'
    const shift: Shift = carried ? w.shift(id) : { ...(w.aside.get(id) as V2), z: 0 }
    const turn = carried ? w.turn(id) : 0
    const there = solidsOf(w, p, spotIn(w, nominal, p), w.heights.ends(`parts/${p.id}`), localOf(w.r, p), shift)
    const solids = there.map((s) => turned(s, turn))
    return {
      of: `parts/${p.id}`,
      input: p,
      sled: carried ? id : undefined,
      section: carried ? undefined : id,
      goesIn: p.goesIn ?? (carried ? 'with-sled' : 'before'),
      solids,
      nested: carried ? nestedOf(w, nominal, p) : [solids],
    }
  })
}

function nestedOf(w: LoadWorld, nominal: LoadWorld, p: PartInput): Convex[][] {
  const local = localOf(w.r, p)
  const { rear, blade } = nominal.heights.ends(`parts/${p.id}`)
  // Its rear face stays where it was drawn; a contact fills what is between and is meant to stand on the face behind it.
  const ends = p.presses ? offItsBase(p.presses.end, { rear, blade }) : { rear, blade: rear + local.length }
  const [drawn, own] = [spotIn(nominal, nominal, p), spotIn(nominal, nominal, p, w.r)]
  const spots = drawn.x === own.x && drawn.y === own.y ? [drawn] : [drawn, own]
  return spots.map((spot) => solidsOf(w, p, spot, ends, local, { x: 0, y: 0, z: 0 }))
}

/** Far enough from the face a contact stands on for print error not to reach it, mm. */
const offBase = 0.4

const offItsBase = (pressed: 'rear' | 'blade', { rear, blade }: Ends): Ends =>
  pressed === 'rear' ? { rear: rear + offBase, blade } : { rear, blade: blade - offBase }

/** A leaf stands as the slot that it slides into was drawn: towards the side its cell goes in by. */
function spotIn(w: LoadWorld, nominal: LoadWorld, p: PartInput, own: Reality = w.r): Spot {
  const spot = spotOf(w, p, own)
  const { parts, sleds } = w.r.project
  const cell = parts.find((o) => p.presses?.part === `parts/${o.id}`)
  if (!cell || !onSled(p) || localOf(w.r, p).round !== undefined) return spot
  const sledOf = (o: PartInput) => o.on ?? `sleds/${sleds[0]?.id}`
  const nests = sleds.find((s) => sledOf(p) === `sleds/${s.id}`)?.nests
  const typed = nests?.find((n) => n.part === p.presses?.part)?.opening
  if (typed !== undefined) return { ...spot, facing: typed }
  const { x, y } = spotOf(nominal, cell)
  // The cell goes in where it lies nearest to the outside; one in the middle, from the side away from the board.
  if (Math.hypot(x, y) > 0.2) return { ...spot, facing: (Math.atan2(y, x) * 180) / Math.PI }
  const board = parts.find(
    (o) => o.kind === 'board' && sledOf(o) === sledOf(p) && (o.goesIn ?? 'with-sled') === 'with-sled',
  )
  return { ...spot, facing: board ? spotOf(nominal, board).facing + 180 : 180 }
}

/** `own` is what the part's own size is taken from. */
function spotOf(w: LoadWorld, p: PartInput, own: Reality = w.r): Spot {
  const across = p.at?.across
  const path = `parts/${p.id}/at/across`
  const drawn = onSled(p)
  const number = (input: QuantityInput, field: string, as: 'offset' | 'angle' = 'offset'): number =>
    sizeAt(w.r, input, { path: `${path}/${field}`, as, drawn })
  const typed =
    p.at?.facing === undefined
      ? undefined
      : sizeAt(w.r, p.at.facing, { path: `parts/${p.id}/at/facing`, as: 'angle', drawn })
  if (across === undefined) {
    const pressed = p.presses && w.r.project.parts.find((o) => p.presses?.part === `parts/${o.id}`)
    return pressed ? spotOf(w, pressed) : { x: 0, y: 0, facing: typed ?? 0 }
  }
  if (isXy(across)) return { x: number(across.x, 'x'), y: number(across.y, 'y'), facing: typed ?? 0 }
  if (isBeside(across))
    return besideSpot(w, p, {
      theta: number(across.theta, 'theta', 'angle'),
      gap: number(across.gap, 'gap'),
      typed,
      own,
    })
  if (isPushed(across))
    return pushedSpot(w, p, {
      theta: number(across.pushed, 'pushed', 'angle'),
      gap: number(across.gap, 'gap'),
      typed,
      own,
    })
  const theta = number(across.theta, 'theta', 'angle')
  return { ...atClock(number(across.r, 'r'), theta), facing: typed ?? theta }
}

/** Placed towards a clock angle with a gap; the facing where it was typed, and what the part's own size is taken from. */
interface Aside {
  readonly theta: number
  readonly gap: number
  readonly typed: number | undefined
  readonly own: Reality
}

function besideSpot(w: LoadWorld, p: PartInput, { theta, gap, typed, own }: Aside): Spot {
  const across = p.at?.across as { beside: string }
  const other = w.r.project.parts.find((o) => across.beside === `parts/${o.id}`) as PartInput
  const from = spotOf(w, other)
  const facing = typed ?? theta
  const d = reachOf(localOf(w.r, other), from.facing - theta) + gap + reachOf(localOf(own, p), facing - theta)
  const by = atClock(d, theta)
  return { x: from.x + by.x, y: from.y + by.y, facing }
}

/** How far a part reaches from its middle, `turn` degrees away from the way it faces. */
function reachOf(l: Local, turn: number): number {
  const b = boundsOf(l)
  if (l.round !== undefined) return l.round
  const t = (turn * Math.PI) / 180
  return Math.abs(Math.cos(t)) * b.halfV + Math.abs(Math.sin(t)) * b.halfU
}

/** Out towards θ until `gap` is left between its farthest corner and the sled's outside. */
function pushedSpot(w: LoadWorld, p: PartInput, { theta, gap, typed, own }: Aside): Spot {
  const facing = typed ?? theta
  const { rear, blade } = w.heights.ends(`parts/${p.id}`)
  const sled = w.drawn.get(sledOf(w, p)) as DrawnSled
  const beside = sled.pieces.filter((o) => o.blade > rear && o.rear < blade)
  const inside = Math.min(...beside.map((o) => o.radius)) - gap
  const l = localOf(own, p)
  if (l.round !== undefined) return { ...atClock(inside - l.round, theta), facing }
  const b = boundsOf(l)
  const turned = ((facing - theta) * Math.PI) / 180
  const [out, side] = [
    Math.abs(Math.cos(turned)) * b.halfV + Math.abs(Math.sin(turned)) * b.halfU,
    Math.abs(Math.sin(turned)) * b.halfV + Math.abs(Math.cos(turned)) * b.halfU,
  ]
  return { ...atClock(Math.sqrt(inside * inside - side * side) - out, theta), facing }
}

const sledOf = (w: LoadWorld, p: PartInput): string =>
  p.on === undefined ? (w.r.project.sleds[0]?.id as string) : (p.on.split('/')[1] as string)

function solidsOf(
  w: LoadWorld,
  p: PartInput,
  spot: Spot,
  ends: { readonly rear: number; readonly blade: number },
  local: Local,
  shift: Shift,
): Convex[] {
  const [rear, blade] = [ends.rear + shift.z, ends.blade + shift.z]
  const at: V2 = { x: spot.x + shift.x, y: spot.y + shift.y }
  if (local.round !== undefined) return [new Rod(at, local.round, rear, blade)]
  if (local.spoke) return [throughWall(w, p, local.spoke, (rear + blade) / 2, shift)]
  if (local.sector) {
    const { inner, outer, half } = local.sector
    return sectorPieces(inner, outer, spot.facing, Math.min(half, 180), rear, blade, shift)
  }
  const b = boundsOf(local)
  const u = atClock(1, spot.facing)
  const place = (across: number, out: number): V2 => ({
    x: at.x + (out - b.v) * u.x - (across - b.u) * u.y,
    y: at.y + (out - b.v) * u.y + (across - b.u) * u.x,
  })
  return local.slabs.map((s) => {
    const corners = ([lo, hi]: readonly [number, number]) => [
      place(lo, s.v0),
      place(lo, s.v1),
      place(hi, s.v1),
      place(hi, s.v0),
    ]
    const straight = s.rear[0] === s.blade[0] && s.rear[1] === s.blade[1]
    const z1 = p.presses ? blade : rear + s.z1
    return straight
      ? prism(corners(s.rear), rear + s.z0, z1)
      : prism(corners(s.rear), rear + s.z0, z1, corners(s.blade))
  })
}

/** From its outer end inwards, tags and the bend of the wire behind it. */
function throughWall(
  w: LoadWorld,
  p: PartInput,
  body: { readonly radius: number; readonly depth: number },
  z: number,
  aside: V2,
): Convex {
  const path = `parts/${p.id}`
  const preset = p.preset === undefined ? undefined : (w.r.presets.byId(p.preset) as unknown as Record<string, never>)
  const theta = p.at?.theta === undefined ? 0 : sizeAt(w.r, p.at.theta, { path: `${path}/at/theta`, as: 'angle' })
  const outer =
    p.at?.outer === undefined ? outsideAt(w, p, z) : sizeAt(w.r, p.at.outer, { path: `${path}/at/outer`, as: 'offset' })
  const room = (field: 'tags' | 'wireBend'): number => {
    const own = p[field] ?? preset?.[field]
    return own === undefined
      ? 0
      : sizeAt(w.r, own, { path: `${path}/${field}`, as: 'offset', preset: p[field] === undefined })
  }
  return new Spoke(theta, z, body.radius, outer - body.depth - room('tags') - room('wireBend'), outer, aside)
}

function outsideAt(w: LoadWorld, p: PartInput, z: number): number {
  const id = p.on?.split('/')[1] as string
  const s = w.r.project.sections.find((o) => o.id === id)
  const i = 0
  const o = s?.outside?.[i]
  if (!o || o.length !== undefined || o.diameterEnd !== undefined)
    throw new Error(`the generator gives every section one plain outside: ${id} at ${z}`)
  return sizeAt(w.r, o.diameter, { path: `sections/${id}/outside/${i}/diameter`, as: 'outside' }) / 2
}
