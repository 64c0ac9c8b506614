import type { Insertion, Part, Sled } from './assembly.ts'
import type { Context } from './context.ts'
import type { Ends } from './heights.ts'
import { sameHeight, sectionsDuring } from './insertions.ts'
import type { Section } from './metal.ts'

/** How a section comes over what stands out: which way that travels, seen from the section, and when. */
interface Over {
  readonly heading: Insertion['heading']
  readonly lateral: Insertion['lateral']
  readonly when: 'after' | 'before'
}

/**
 * Sections on the outer side of a sled's mouth into which the sled reaches can only come over it afterwards; one into
 * which a part in the wall of another reaches comes over that, before any sled. One of which nobody says how is taken to
 * be drawn straight over; that is an assumption.
 */
export function tubesOver(
  ctx: Context,
  sections: readonly Section[],
  sleds: readonly Sled[],
  parts: readonly Part[],
  insertions: readonly Insertion[],
): Insertion[] {
  const last = Math.max(-1, ...insertions.map((i) => i.order))
  let after = 0
  return sections.flatMap((s) => {
    if (insertions.some((i) => i.moves === `sections/${s.id}`)) return []
    const first = sleds.map((sled) => wayPast(s, sled, sections, insertions)).find((i) => i !== undefined)
    const sled: Over[] = first
      ? [{ heading: first.heading === 'blade' ? 'rear' : 'blade', lateral: first.lateral, when: 'after' }]
      : []
    return [...sled, ...overParts(s, parts, sections, sled)].map(({ heading, lateral, when }): Insertion => {
      ctx.assumptions.push(
        `"${s.name}" is taken to be drawn straight over what stands out at its mouth, ${when} all other moves.`,
      )
      return {
        id: when === 'after' ? `${s.id}-over` : `${s.id}-over-${heading}`,
        name: `${s.name} over it`,
        path: 'insertions',
        moves: `sections/${s.id}`,
        // Seen from the tube, what stands there goes in by the tube's own mouth.
        opening: (heading === 'rear' ? s.ends.blade : s.ends.rear).nominal,
        section: s.id,
        heading,
        lateral,
        during: undefined,
        order: when === 'after' ? last + 1 + after++ : -1,
        after: [],
        assumed: true,
      }
    })
  })
}

/** The ways on which parts in the walls of other sections come into this one, but those a sled comes on too. */
function overParts(
  s: Section,
  parts: readonly Part[],
  sections: readonly Section[],
  told: readonly Over[],
): readonly Over[] {
  const ways = parts.flatMap((p) => {
    const own = sections.find((o) => o.id === p.section)
    if (!own || own === s || p.goesIn !== 'before' || shared(s, p) <= sameHeight) return []
    return own.ends.rear.nominal < s.ends.rear.nominal ? 'blade' : 'rear'
  })
  return [...new Set(ways)]
    .filter((w) => !told.some((o) => o.heading === w))
    .map((heading) => ({ heading, lateral: 'floats', when: 'before' }))
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
  return shared(s, sled) > sameHeight ? move : undefined
}

/** How much of the axis two things share, as measured, mm. */
const shared = (a: { readonly ends: Ends }, b: { readonly ends: Ends }): number =>
  Math.min(a.ends.blade.nominal, b.ends.blade.nominal) - Math.max(a.ends.rear.nominal, b.ends.rear.nominal)
