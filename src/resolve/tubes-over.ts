import type { Insertion, Sled } from './assembly.ts'
import type { Context } from './context.ts'
import { sameHeight, sectionsDuring } from './insertions.ts'
import type { Section } from './metal.ts'

/**
 * Sections on the outer side of a sled's mouth into which the sled reaches: they can only come over it afterwards. One
 * of which nobody says how is taken to be drawn straight over, after all other moves; that is an assumption.
 */
export function tubesOver(
  ctx: Context,
  sections: readonly Section[],
  sleds: readonly Sled[],
  insertions: readonly Insertion[],
): Insertion[] {
  const tubes = sections.flatMap((s): Insertion[] => {
    if (insertions.some((i) => i.moves === `sections/${s.id}`)) return []
    const first = sleds.map((sled) => wayPast(s, sled, sections, insertions)).find((i) => i !== undefined)
    if (!first) return []
    ctx.assumptions.push(
      `"${s.name}" is taken to be drawn straight over what stands out at its mouth, after all other moves.`,
    )
    const heading = first.heading === 'blade' ? 'rear' : 'blade'
    return [
      {
        id: `${s.id}-over`,
        name: `${s.name} over it`,
        path: 'insertions',
        moves: `sections/${s.id}`,
        // Seen from the tube, what stands there goes in by the tube's own mouth.
        opening: (heading === 'rear' ? s.ends.blade : s.ends.rear).nominal,
        section: s.id,
        heading,
        lateral: first.lateral,
        during: undefined,
        order: 0,
        after: [],
        assumed: true,
      },
    ]
  })
  const last = Math.max(-1, ...insertions.map((i) => i.order))
  return tubes.map((t, i) => ({ ...t, order: last + 1 + i }))
}

/** The move of a sled that ends in a section which is not there yet while it is made. */
function wayPast(
  s: Section,
  sled: Sled,
  sections: readonly Section[],
  insertions: readonly Insertion[],
): Insertion | undefined {
  const move = insertions.find((i) => i.moves === `sleds/${sled.id}`)
  if (!move || sectionsDuring(move, sections).includes(s)) return undefined
  const shared =
    Math.min(s.ends.blade.nominal, sled.ends.blade.nominal) - Math.max(s.ends.rear.nominal, sled.ends.rear.nominal)
  return shared > sameHeight ? move : undefined
}
