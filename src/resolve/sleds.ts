import type { PartInput } from '../project/schema/part.ts'
import type { ZPlaceInput } from '../project/schema/place.ts'
import type { SledInput } from '../project/schema/sled.ts'
import { exact, least, most, type Quantity } from '../quantity/quantity.ts'
import type { Insertion, PrintProcess, Sled } from './assembly.ts'
import { beyondHilt } from './beyond-hilt.ts'
import { type Context, limitOf, wrong } from './context.ts'
import type { Ends, Heights } from './heights.ts'
import type { Section } from './metal.ts'
import { walls } from './rare.ts'
import { seamSlack } from './seam.ts'
import { outsideOf } from './sled-outside.ts'
import { typedLimit } from './typed-limit.ts'

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

/** A sled with its outside and all its typed heights as drawn numbers. */
export function resolveSled(
  ctx: Context,
  heights: Heights,
  s: SledInput,
  sections: readonly Section[],
  insertions: readonly Insertion[],
  print: PrintProcess,
): Sled | undefined {
  const path = `sleds/${s.id}`
  const found = heights.ends(path, path)
  if (!found) return undefined
  const ends: Ends = { rear: exact(found.rear.nominal), blade: exact(found.blade.nominal) }
  const out = beyondHilt(sections, ends, seamSlack)
  if (out)
    ctx.missing.push({
      path: `${path}/${out.end === 'rear' ? 'from' : 'to'}`,
      what: `what ${s.name ?? s.id} reaches into past the hilt’s ${out.end} end`,
      hint: `It lies at ${out.got}, the hilt at ${out.hilt}: add the section around it, or correct a height.`,
      of: path,
    })
  const moves = s.seats !== undefined || s.from !== undefined
  const shift = moves ? walls().sledShift(ctx, heights, s, ends, sections, print) : exact(0)
  const own = insertions.filter((i) => i.moves === path)
  const outside = outsideOf({ ctx, heights, input: s, ends, sections, insertions: own, print })
  if (!outside) return undefined
  const clocking = typedLimit(ctx, s.clocking, { path: `${path}/clocking`, as: 'angle', min: 0, max: 180 })
  const float = typedLimit(ctx, s.float, { path: `${path}/float`, as: 'offset', min: 0, max: 20 })
  const drawn = drawnHeights(heights, s)
  return { id: s.id, name: s.name ?? s.id, input: s, ends, shift, ...outside, print, clocking, float, drawn }
}

/** Every height typed inside the sled, by its path: where it is drawn. */
function drawnHeights(heights: Heights, s: SledInput): ReadonlyMap<string, number> {
  const found = new Map<string, number>()
  const lists = ['bulkheads', 'discs', 'keys', 'towers', 'splits', 'marks', 'channels', 'windows'] as const
  for (const list of lists) {
    for (const record of (s[list] ?? []) as readonly {
      id: string
      z?: ZPlaceInput
      from?: ZPlaceInput
      to?: ZPlaceInput
    }[]) {
      for (const field of ['z', 'from', 'to'] as const) {
        const path = `sleds/${s.id}/${list}/${record.id}/${field}`
        const at = record[field] === undefined ? undefined : heights.place(record[field], path, true)
        if (at) found.set(path, at.nominal)
      }
    }
  }
  return found
}
