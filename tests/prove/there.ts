import type { InsertionInput } from '../../src/project/schema/sled.ts'
import type { StateTruth } from './demand.ts'
import type { Heading } from './gaps.ts'
import type { PartTruth } from './load.ts'
import type { Intrusion, Metal } from './metal.ts'
import type { SledTruth, World } from './world.ts'

/**
 * The moves in order; a sled nobody says how to insert goes in last, from the rear, and a section it then lies in that
 * nobody brings over it is drawn straight over it after all else.
 */
export function insertions(w: World): InsertionInput[] {
  const said = ofSleds(w)
  const tubes = w.r.project.sections.flatMap(({ id }): InsertionInput[] => {
    if (said.some((i) => i.moves === `sections/${id}`)) return []
    const move = w.sleds.flatMap((s) => said.find((i) => i.moves === `sleds/${s.id}` && standsOutIn(w, i, s, id)) ?? [])
    const first = move[0]
    if (!first) return []
    const end = headingOf(first) === 'blade' ? ('blade' as const) : ('rear' as const)
    return [{ id: `${id}-over`, moves: `sections/${id}`, through: { of: `sections/${id}`, end } }]
  })
  return [...said, ...tubes]
}

function standsOutIn(w: World, move: InsertionInput, sled: SledTruth, section: string): boolean {
  const mouth = (move.through?.of ?? `sections/${w.r.project.sections[0]?.id}`).split('/')[1] as string
  if (sectionsFrom(w, mouth, headingOf(move)).has(section)) return false
  const tube = w.heights.ends(`sections/${section}`)
  return Math.min(tube.blade, sled.built.blade) - Math.max(tube.rear, sled.built.rear) > 0.01
}

function ofSleds(w: World): InsertionInput[] {
  const { project } = w.r
  const unsaid = project.sleds.filter((s) => !project.insertions.some((i) => i.moves === `sleds/${s.id}`))
  const first = project.sections[0]?.id
  return [
    ...project.insertions,
    ...unsaid.map(
      (s): InsertionInput => ({
        id: `${s.id}-in`,
        moves: `sleds/${s.id}`,
        through: { of: `sections/${first}`, end: 'rear' },
      }),
    ),
  ]
}

export const headingOf = (i: InsertionInput): Heading => ((i.through?.end ?? 'rear') === 'rear' ? 'blade' : 'rear')

export interface There {
  readonly metals: readonly Metal[]
  readonly intrusions: readonly Intrusion[]
  readonly parts: readonly PartTruth[]
  readonly sleds: readonly string[]
}

/** What is there while something goes in: no section outside the mouth, what was fitted before, what went in earlier. */
export function duringOf(w: World, i: InsertionInput, order: number): There {
  const mouth = i.through?.of ?? `sections/${w.r.project.sections[0]?.id}`
  const section = mouth.split('/')[1] as string
  const sections = sectionsFrom(w, section, headingOf(i))
  const earlier = insertions(w)
    .slice(0, order)
    .map((e) => e.moves)
  const here = (s: string | undefined): boolean => s !== undefined && sections.has(s)
  // Where no state is named for the move, what is there in any state is there, and a clamp is closed.
  const there = (states: readonly string[] | undefined): boolean => i.during === undefined || thereIn(states, i.during)
  return {
    metals: w.hilt.metals.filter((m) => here(m.section) && thereIn(m.states, i.during ?? 'assembly')),
    intrusions: w.hilt.intrusions.filter(
      (o) => here(o.section) && there(o.states) && (o.fitted === 'before' || earlier.includes(o.of)),
    ),
    parts: w.parts.filter(
      (p) =>
        p.of !== i.moves &&
        ((here(p.section) && (p.goesIn === 'before' || earlier.includes(p.of))) ||
          (p.sled !== undefined &&
            p.goesIn === 'with-sled' &&
            (i.moves.startsWith('parts/') || (i.moves !== `sleds/${p.sled}` && earlier.includes(`sleds/${p.sled}`))))),
    ),
    sleds: w.sleds
      .map((s) => `sleds/${s.id}`)
      .filter((s) => s !== i.moves && (earlier.includes(s) || i.moves.startsWith('parts/')))
      .map((s) => s.slice(6)),
  }
}

/** Sections on the inner side of a mouth, in the order of the hilt. */
export function sectionsFrom(w: World, mouth: string, heading: Heading): Set<string> {
  const ids = w.r.project.sections.map((s) => s.id)
  const at = ids.indexOf(mouth)
  return new Set(heading === 'blade' ? ids.slice(at) : ids.slice(0, at + 1))
}

/** A list of states names those in which it is there; with "!" those in which it is not; none means always. */
export function thereIn(states: readonly string[] | undefined, state: string): boolean {
  if (!states || states.length === 0) return true
  return states.every((s) => s.startsWith('!')) ? !states.includes(`!${state}`) : states.includes(state)
}

export function aroundOf(w: World, state: StateTruth): Omit<There, 'sleds'> {
  const here = (section: string | undefined): boolean =>
    section !== undefined && !state.without.has(`sections/${section}`)
  return {
    metals: w.hilt.metals.filter((m) => here(m.section) && thereIn(m.states, state.id)),
    intrusions: w.hilt.intrusions.filter(
      (o) => here(o.section) && o.fitted === 'before' && thereIn(o.states, state.id) && !state.without.has(o.of),
    ),
    parts: w.parts.filter((p) => here(p.section) && p.goesIn === 'before' && !state.without.has(p.of)),
  }
}
