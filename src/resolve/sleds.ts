import type { PartInput } from '../project/schema/part.ts'
import type { SledInput } from '../project/schema/sled.ts'
import { exact, least, most, type Quantity } from '../quantity/quantity.ts'
import type { Insertion, PrintProcess, Sled, SledPiece, SledRing } from './assembly.ts'
import { type Context, limitOf, wrong } from './context.ts'
import type { Ends, Heights } from './heights.ts'
import { throatRadius } from './insertions.ts'
import type { Section } from './metal.ts'
import { quantityOf } from './quantity.ts'

/** A sled's diameter is drawn in steps of this, rounded towards the loose side, mm. */
const step = 0.1

/** Tells each sled where it lies: where it says so, else around the parts on it, with its end walls. */
export function placeSleds(ctx: Context, heights: Heights, partsOn: (sled: string) => readonly PartInput[]): void {
  for (const s of ctx.project.sleds) {
    const path = `sleds/${s.id}`
    heights.define(path, () => {
      const rear = s.from === undefined ? undefined : heights.place(s.from, `${path}/from`, true)
      const blade = s.to === undefined ? undefined : heights.place(s.to, `${path}/to`, true)
      if ((s.from !== undefined && !rear) || (s.to !== undefined && !blade)) return undefined
      const around = rear && blade ? undefined : contentsEnds(ctx, heights, s, partsOn(s.id), rear, blade)
      const ends = { rear: rear ?? around?.rear, blade: blade ?? around?.blade }
      if (!ends.rear || !ends.blade) return undefined
      if (ends.blade.nominal - ends.rear.nominal < 1)
        return wrong(
          ctx,
          'contradiction',
          path,
          `from ${ends.rear.nominal} to ${ends.blade.nominal}`,
          'to more than from',
          'Swap them, or correct one.',
        )
      return ends as Ends
    })
  }
}

/** From the first part to the last, the end walls outside. The sled is drawn once: these ends have no spread. */
function contentsEnds(
  ctx: Context,
  heights: Heights,
  s: SledInput,
  parts: readonly PartInput[],
  rear: Quantity | undefined,
  blade: Quantity | undefined,
): Ends | undefined {
  const path = `sleds/${s.id}`
  const within = parts.filter((p) => p.goesIn === undefined || p.goesIn === 'with-sled')
  const ends = within.flatMap((p) => {
    const e = heights.ends(`parts/${p.id}`, path)
    return e ? [e] : []
  })
  if (ends.length === 0) {
    if (within.length === 0)
      wrong(
        ctx,
        'missing',
        `${path}/from`,
        undefined,
        'a height, or parts that sit on it',
        'Give from and to, or put parts on the sled.',
      )
    return undefined
  }
  const wall = limitOf(ctx, 'end-wall')
  const first = ends.reduce((a, b) => (least(b.rear) < least(a.rear) ? b : a)).rear
  const last = ends.reduce((a, b) => (most(b.blade) > most(a.blade) ? b : a)).blade
  return {
    rear: rear ?? exact(Math.floor((least(first) - (s.rearWall ?? wall)) * 10) / 10),
    blade: blade ?? exact(Math.ceil((most(last) + (s.bladeWall ?? wall)) * 10) / 10),
  }
}

/** The sled's outside: typed pieces, a typed diameter, or what the way in leaves at the worst, less clearance and print error. */
export function resolveSled(
  ctx: Context,
  heights: Heights,
  s: SledInput,
  sections: readonly Section[],
  insertions: readonly Insertion[],
  print: PrintProcess,
): Sled | undefined {
  const path = `sleds/${s.id}`
  const ends = heights.ends(path, path)
  if (!ends) return undefined
  const pieces =
    s.bodies && s.bodies.length > 0 ? typedPieces(ctx, heights, s) : onePiece(ctx, s, ends, sections, insertions, print)
  if (!pieces) return undefined
  const rings = (s.rings ?? []).flatMap((r): SledRing[] => {
    const at = heights.place(r.z, `${path}/rings/${r.id}/z`, true)
    const d = quantityOf(ctx, r.diameter, { path: `${path}/rings/${r.id}/diameter`, as: 'outside' })
    if (!at || !d) return []
    const z0 = at.nominal - (r.face === 'blade' ? r.length : r.face === 'middle' ? r.length / 2 : 0)
    return [{ id: r.id, z0, z1: z0 + r.length, radius: d.nominal / 2 }]
  })
  const clocking =
    s.clocking === undefined
      ? undefined
      : quantityOf(ctx, s.clocking, { path: `${path}/clocking`, as: 'offset', min: 0, max: 180 })
  return { id: s.id, name: s.name ?? s.id, input: s, ends, pieces, rings, print, clocking }
}

function typedPieces(ctx: Context, heights: Heights, s: SledInput): SledPiece[] | undefined {
  const list = (s.bodies ?? []).map((b, i): SledPiece | undefined => {
    const path = `sleds/${s.id}/bodies/${i}`
    const [from, to] = [heights.place(b.from, `${path}/from`, true), heights.place(b.to, `${path}/to`, true)]
    const d = quantityOf(ctx, b.diameter, { path: `${path}/diameter`, as: 'outside' })
    if (!from || !to || !d) return undefined
    if (to.nominal - from.nominal < 0.1)
      return wrong(
        ctx,
        'contradiction',
        `${path}/to`,
        to.nominal,
        `more than from, ${from.nominal}`,
        'Swap them, or correct one.',
      )
    return {
      z0: from.nominal,
      z1: to.nominal,
      radius: d.nominal / 2,
      how: 'typed',
      path: `${path}/diameter`,
      source: 'typed',
    }
  })
  return list.every((p) => p !== undefined) ? (list as SledPiece[]) : undefined
}

function onePiece(
  ctx: Context,
  s: SledInput,
  ends: Ends,
  sections: readonly Section[],
  insertions: readonly Insertion[],
  print: PrintProcess,
): SledPiece[] | undefined {
  const [z0, z1] = [ends.rear.nominal, ends.blade.nominal]
  const path = `sleds/${s.id}/diameter`
  if (s.diameter !== undefined) {
    const d = quantityOf(ctx, s.diameter, { path, as: 'outside' })
    return d && [{ z0, z1, radius: d.nominal / 2, how: 'typed', path, source: 'typed' }]
  }
  const radii = insertions
    .filter((i) => i.moves === `sleds/${s.id}`)
    .map((i) => throatRadius(i, sections, i.heading === 'blade' ? z1 : z0, least))
  if (radii.some((r) => r === undefined) || radii.length === 0) {
    ctx.missing.push({
      path,
      what: 'diameter of the sled',
      hint: 'Measure every bore on its way in, or type a diameter.',
      of: `sleds/${s.id}`,
    })
    return undefined
  }
  const room = Math.min(...(radii as number[])) - limitOf(ctx, 'clearance') - most(print.error)
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
  return [
    {
      z0,
      z1,
      radius: Number(d.toFixed(6)) / 2,
      how: 'default',
      path,
      source: `narrowest bore on the way in at its worst, less clearance ${limitOf(ctx, 'clearance')} and print error ${most(print.error)} each side, rounded down to ${step}`,
    },
  ]
}
