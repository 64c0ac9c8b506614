import type { InsertionInput } from '../project/schema/sled.ts'
import type { Insertion } from './assembly.ts'
import { type Context, wrong } from './context.ts'
import type { Section } from './metal.ts'

/** Nominal heights closer than this are one place, mm. */
export const sameHeight = 0.01

/** The moves in order. A sled that nobody says how to insert goes in from the rear; that is an assumption. */
export function insertionsOf(ctx: Context, sections: readonly Section[], sledIds: readonly string[]): Insertion[] {
  const put: string[] = []
  const given = ctx.project.insertions.flatMap((input, order): Insertion[] => {
    const found = oneOf(ctx, sections, input, order)
    const after = [...put]
    if (input.moves.startsWith('sections/')) put.push(input.moves)
    return found ? [{ ...found, after }] : []
  })
  const rear = sections.reduce<Section | undefined>(
    (least, s) => (!least || s.ends.rear.nominal < least.ends.rear.nominal ? s : least),
    undefined,
  )
  const missing = sledIds.filter((id) => !ctx.project.insertions.some((i) => i.moves === `sleds/${id}`))
  if (rear)
    for (const id of missing)
      ctx.assumptions.push(
        `Sled "${id}" is taken to go in from the rear of "${rear.name}", straight towards the blade.`,
      )
  return [
    ...given,
    ...missing.flatMap((id, i): Insertion[] =>
      rear
        ? [
            {
              id: `${id}-in`,
              name: `sled ${id} in`,
              path: 'insertions',
              moves: `sleds/${id}`,
              opening: rear.ends.rear.nominal,
              section: rear.id,
              heading: 'blade',
              lateral: 'floats',
              during: undefined,
              order: given.length + i,
              after: put,
              assumed: true,
            },
          ]
        : [],
    ),
  ]
}

function oneOf(
  ctx: Context,
  sections: readonly Section[],
  input: InsertionInput,
  order: number,
): Omit<Insertion, 'after'> | undefined {
  const path = `insertions/${input.id}`
  const [list, id] = input.moves.split('/') as [string, string]
  const all =
    list === 'sleds'
      ? ctx.project.sleds
      : list === 'parts'
        ? ctx.project.parts
        : list === 'sections'
          ? ctx.project.sections
          : []
  const moved = all.find((o: { id: string }) => o.id === id)
  if (!moved)
    return wrong(
      ctx,
      'unknown-reference',
      `${path}/moves`,
      input.moves,
      [...ctx.project.sleds.map((s) => `sleds/${s.id}`), ...ctx.project.parts.map((p) => `parts/${p.id}`)]
        .slice(0, 8)
        .join(', ') || 'a sled, part or section',
      'Name a sled, part or section of the project.',
    )
  const through = input.through ?? { of: `sections/${sections[0]?.id}`, end: 'rear' as const }
  const section = sections.find((s) => through.of === `sections/${s.id}`)
  // A section that was found wrong has said so itself.
  const told = ctx.problems.length > 0 && ctx.project.sections.some((s) => through.of === `sections/${s.id}`)
  if (!section && told) return undefined
  if (!section)
    return wrong(
      ctx,
      'unknown-reference',
      `${path}/through/of`,
      through.of,
      sections.map((s) => `sections/${s.id}`).join(', '),
      'Name the section whose mouth it goes through.',
    )
  const heading = input.heading ?? (through.end === 'rear' ? 'blade' : 'rear')
  if ((heading === 'blade') !== (through.end === 'rear'))
    return wrong(
      ctx,
      'contradiction',
      `${path}/heading`,
      heading,
      through.end === 'rear' ? 'blade' : 'rear',
      `Through the ${through.end} end it can only head the other way.`,
    )
  if (!opens(ctx, section, through.end, path, input.through !== undefined)) return undefined
  const opening = through.end === 'rear' ? section.ends.rear.nominal : section.ends.blade.nominal
  return {
    id: input.id,
    name: input.name ?? `${moved.name ?? id} in`,
    path,
    moves: input.moves,
    opening,
    section: section.id,
    heading,
    lateral: input.lateral ?? 'floats',
    during: input.during,
    order,
    assumed: input.through === undefined,
  }
}

/** Nothing goes in, or comes out again, through a mouth that is joined for good. */
function opens(ctx: Context, section: Section, end: 'rear' | 'blade', path: string, said: boolean): boolean {
  const shut = ctx.project.joints.find((j) => j.opens === false && (end === 'rear' ? j.blade : j.rear) === section.id)
  if (!shut) return true
  const other = end === 'rear' ? shut.rear : shut.blade
  wrong(
    ctx,
    'contradiction',
    said ? `${path}/through` : path,
    `the ${end} end of ${section.name}, joined to ${other}`,
    'a mouth that opens',
    `Go through a mouth that opens, or let the joint with ${other} open: what goes in must come out again.`,
  )
  return false
}

/** The sections that are there while something goes in: those not on the outer side of the mouth, or put on before. */
export function sectionsDuring(i: Insertion, sections: readonly Section[]): Section[] {
  return sections.filter(
    (s) =>
      i.after.includes(`sections/${s.id}`) ||
      (i.heading === 'blade'
        ? s.ends.rear.nominal >= i.opening - sameHeight
        : s.ends.blade.nominal <= i.opening + sameHeight),
  )
}
