import type { Body, Shape } from '../body/body.ts'
import type { PartInput } from '../project/schema/part.ts'
import type { QuantityInput } from '../project/schema/quantity.ts'
import { add, combine, exact, least, most, type Quantity, scale, sub } from '../quantity/quantity.ts'
import { type Across, acrossOf } from './across.ts'
import type { Part, Sled } from './assembly.ts'
import { beyondHilt } from './beyond-hilt.ts'
import { type Context, wrong } from './context.ts'
import { type Extent, extentOf } from './extent.ts'
import type { Ends, Heights } from './heights.ts'
import type { Section } from './metal.ts'
import { openSide } from './open-side.ts'
import type { BlockPiece, Local, Piece } from './part-body.ts'
import { contactOf, type PartSizes } from './part-heights.ts'
import { quantityOf } from './quantity.ts'
import { walls } from './rare.ts'
import { isBare } from './typed-limit.ts'

interface World {
  readonly ctx: Context
  readonly heights: Heights
  readonly sizes: PartSizes
  readonly sections: readonly Section[]
  readonly sleds: readonly Sled[]
}

/** What a part sits on: the sled or section it names, the only sled where it names none. */
export function seatOf(ctx: Context, p: PartInput): { sled?: string; section?: string } {
  if (p.on === undefined)
    return ctx.project.sleds.length > 0 ? { sled: (ctx.project.sleds[0] as { id: string }).id } : {}
  const [list, id] = p.on.split('/') as [string, string]
  return list === 'sleds' ? { sled: id } : { section: id }
}

/** Every part with its place and its bodies. */
export function resolveParts(
  ctx: Context,
  heights: Heights,
  sizes: PartSizes,
  sections: readonly Section[],
  sleds: readonly Sled[],
): Part[] {
  const world: World = { ctx, heights, sizes, sections, sleds }
  const places = new Map<string, { across: Across; extent: Extent } | undefined>()
  const open = new Set<string>()
  const placeOf = (p: PartInput, from: string): { across: Across; extent: Extent } | undefined => {
    if (places.has(p.id)) return places.get(p.id)
    if (open.has(p.id))
      return wrong(
        ctx,
        'circular',
        from,
        `parts/${p.id}`,
        'a place that does not lead back to itself',
        'Place one of these parts by numbers.',
      )
    open.add(p.id)
    const found = crossPlace(world, p, placeOf)
    open.delete(p.id)
    places.set(p.id, found)
    return found
  }
  return ctx.project.parts.flatMap((p) => {
    const part = onePart(world, p, placeOf)
    return part ? [part] : []
  })
}

type PlaceOf = (p: PartInput, from: string) => { across: Across; extent: Extent } | undefined

function crossPlace(w: World, p: PartInput, placeOf: PlaceOf): { across: Across; extent: Extent } | undefined {
  const local = w.sizes.of(p)
  const ends = w.heights.ends(`parts/${p.id}`, `parts/${p.id}`)
  if (!local || !ends) return undefined
  const extent = extentOf(local)
  const path = `parts/${p.id}/at`
  const drawn = seatOf(w.ctx, p).section === undefined
  const asked = quantityOf(w.ctx, p.at?.facing, { path: `${path}/facing`, as: 'angle' })
  // A bare number on a sled is how the part will be drawn; in the wall it was set by eye.
  const facing = asked && drawn && isBare(p.at?.facing as QuantityInput) ? exact(asked.nominal) : asked
  const beside = (ref: string, from: string) => {
    const other = w.ctx.project.parts.find((o) => ref === `parts/${o.id}`)
    if (!other)
      return wrong(
        w.ctx,
        'unknown-reference',
        from,
        ref,
        w.ctx.project.parts.map((o) => `parts/${o.id}`).join(', '),
        'Name another part.',
      )
    const found = placeOf(other, from)
    // A sled is drawn once: what the wall truly holds moves nothing in it.
    return found && drawn && seatOf(w.ctx, other).section !== undefined ? asDrawn(found) : found
  }
  const pressed =
    p.at?.across === undefined && p.presses ? beside(p.presses.part, `parts/${p.id}/presses/part`) : undefined
  if (pressed) return { across: pressed.across, extent }
  const across = acrossOf(w.ctx, p.at?.across, {
    path: `${path}/across`,
    extent,
    facing,
    envelope: envelopeAt(w, p, ends),
    drawn,
    beside,
  })
  return across && { across, extent }
}

/** A place and an extent as measured, without their doubts. */
function asDrawn({ across, extent }: Place): Place {
  const fixed = (q: Quantity): Quantity => exact(q.nominal)
  const { halfU, halfV, u, v, round } = extent
  return {
    across: { x: fixed(across.x), y: fixed(across.y), facing: across.facing },
    extent: { halfU: fixed(halfU), halfV: fixed(halfV), u: fixed(u), v: fixed(v), round },
  }
}

/** Least radius of the sled's pieces beside the part. */
function envelopeAt(w: World, p: PartInput, ends: Ends): Quantity | undefined {
  const sled = w.sleds.find((s) => s.id === seatOf(w.ctx, p).sled)
  const beside = (sled?.pieces ?? []).filter((o) => o.z1 > ends.rear.nominal && o.z0 < ends.blade.nominal)
  return beside.length > 0 ? exact(Math.min(...beside.map((o) => o.radius))) : undefined
}

function onePart(w: World, p: PartInput, placeOf: PlaceOf): Part | undefined {
  const { ctx } = w
  const path = `parts/${p.id}`
  const seat = seatOf(ctx, p)
  if (
    p.on !== undefined &&
    !(seat.sled ? ctx.project.sleds : ctx.project.sections).some(
      (o: { id: string }) => o.id === (seat.sled ?? seat.section),
    )
  )
    return wrong(
      ctx,
      'unknown-reference',
      `${path}/on`,
      p.on,
      [...ctx.project.sleds.map((s) => `sleds/${s.id}`), ...ctx.project.sections.map((s) => `sections/${s.id}`)]
        .slice(0, 8)
        .join(', '),
      'Name a sled or a section of the project.',
    )
  if (seat.section && p.goesIn === 'with-sled')
    return wrong(
      ctx,
      'contradiction',
      `${path}/goesIn`,
      'with-sled',
      'before or after',
      'Seat it on a sled, or say when it goes into the wall.',
    )
  const local = w.sizes.of(p)
  const ends = w.heights.ends(path, path)
  const placed = placeOf(p, path)
  if (!local || !ends || !placed) return undefined
  const place = p.presses && !placed.extent.round ? inSlot(w, p, p.presses.part, placed, placeOf) : placed
  outsideHilt(w, p, ends)
  if (local.pieces[0]?.kind !== 'spoke' && isWired(ctx, p)) walls().tellWires(ctx, p)
  const play = w.sections.find((o) => o.id === seat.section)?.play
  const bodies = local.pieces.flatMap((piece, i) => {
    const shape = shapeOf(w, p, piece, alongOf(piece, local, ends), place)
    const sway = swayOf(piece, place, play)
    return shape
      ? [
          {
            ...shape,
            id: i === 0 ? path : `${path}/${piece.name || i}`,
            of: path,
            name: piece.name ? `${piece.name} on ${p.name ?? p.id}` : (p.name ?? p.id),
            ...(sway ? { sway } : {}),
            ...(p.states ? { states: p.states } : {}),
          },
        ]
      : []
  })
  const goesIn = p.goesIn ?? (seat.sled ? 'with-sled' : 'before')
  return {
    id: path,
    name: p.name ?? p.id,
    kind: p.kind,
    input: p,
    sled: seat.sled,
    section: seat.section,
    goesIn,
    ends,
    across: place.across,
    extent: place.extent,
    bodies,
    contact: contactOf(ctx, p, ends),
  }
}

/** A leaf lies as the slot does that it slides into: open to the side its cell goes in by. */
function inSlot(w: World, p: PartInput, pressed: string, place: Place, placeOf: PlaceOf): Place {
  const { sled } = seatOf(w.ctx, p)
  if (sled === undefined) return place
  if (p.at?.facing !== undefined) walls().refuseFacing(w.ctx, p)
  const { parts } = w.ctx.project
  const typed = w.sleds.find((s) => s.id === sled)?.input.nests?.find((n) => n.part === pressed)?.opening
  const board = parts.find(
    (o) => o.kind === 'board' && seatOf(w.ctx, o).sled === sled && (o.goesIn ?? 'with-sled') === 'with-sled',
  )
  const cell = parts.find((o) => pressed === `parts/${o.id}`)
  const around = cell && placeOf(cell, pressed)
  const facing = typed ?? (around && openSide(around.across, board && placeOf(board, pressed)?.across))
  return facing === undefined ? place : { ...place, across: { ...place.across, facing } }
}

function outsideHilt(w: World, p: PartInput, ends: Ends): void {
  const out = beyondHilt(w.sections, ends, 1e-6)
  if (out)
    wrong(
      w.ctx,
      'outside-hilt',
      `parts/${p.id}/at/z`,
      out.got,
      `inside the hilt, ${out.hilt}`,
      'Correct its height, or a section’s length.',
    )
}

type Made = Pick<Body, 'shape' | 'turn'>

/**
 * Where a piece lies along the axis. One that is as long as its part, because its length is the part's, ends where the
 * part ends: a contact's where it stands. One that only happens to end there keeps its own length.
 */
function alongOf(piece: Piece, local: Local, ends: Ends): Ends {
  return { rear: add(ends.rear, piece.z0), blade: piece.z1 === local.length ? ends.blade : add(ends.rear, piece.z1) }
}

/** How far a piece may stand aside: with its section, and with its corners where nobody knows quite how it is turned. */
function swayOf(piece: Piece, { across, extent }: Place, play: Quantity | undefined): Quantity | undefined {
  const all = [play, across.sway].filter((q) => q !== undefined)
  if (piece.kind !== 'block' || !across.turn) return all.length > 0 ? add(...all) : undefined
  const [u, v] = [most(sub(piece.u, extent.u)), most(sub(piece.v, extent.v))]
  const [left, low] = [least(sub(piece.u, extent.u)), least(sub(piece.v, extent.v))]
  const corner = Math.hypot(Math.max(u, -left) + most(piece.halfU), Math.max(v, -low) + most(piece.halfV))
  return add(...all, scale(across.turn, (corner * Math.PI) / 180))
}

type Place = { readonly across: Across; readonly extent: Extent }

function shapeOf(w: World, p: PartInput, piece: Piece, ends: Ends, { across, extent }: Place): Made | undefined {
  if (piece.kind === 'spoke') return walls().throughWall(w.ctx, w.sections, p, piece, ends)
  const along = { z0: ends.rear, z1: ends.blade }
  if (piece.kind === 'round')
    return { shape: { kind: 'round', x: across.x, y: across.y, r0: piece.radius, r1: piece.radius, ...along } }
  if (piece.kind === 'sector')
    return {
      shape: { kind: 'sector', rIn: piece.inner, rOut: piece.outer, theta: across.facing, half: piece.half, ...along },
      ...(across.turn ? { turn: across.turn } : {}),
    }
  return { shape: block(piece, across, extent, along) }
}

/** A block of a part whose middle is at `across`: its own frame turned so that v looks along the facing. */
function block(piece: BlockPiece, across: Across, extent: Extent, along: { z0: Quantity; z1: Quantity }): Shape {
  const [u, v] = [sub(piece.u, extent.u), sub(piece.v, extent.v)]
  const [c, s] = [Math.cos((across.facing * Math.PI) / 180), Math.sin((across.facing * Math.PI) / 180)]
  const x = combine([
    [across.x, 1],
    [v, c],
    [u, -s],
  ])
  const y = combine([
    [across.y, 1],
    [v, s],
    [u, c],
  ])
  return { kind: 'box', x, y, halfWidth: piece.halfU, halfHeight: piece.halfV, facing: across.facing, ...along }
}

/** Whether anything stands behind it: only few parts have tags or stiff wires. */
function isWired({ presets }: Context, p: PartInput): boolean {
  const preset = p.preset === undefined ? undefined : presets.byId(p.preset)
  return [p, preset ?? {}].some((o) => 'tags' in o || 'wireBend' in o)
}
