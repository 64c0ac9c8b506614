import type { Body } from '../body/body.ts'
import { isThere } from '../body/there.ts'
import type { BoreBody, Insertion, State } from '../resolve/assembly.ts'
import { sectionsDuring } from '../resolve/insertions.ts'
import type { World } from './world.ts'

export interface Obstacles {
  readonly bores: readonly BoreBody[]
  readonly intrusions: readonly Body[]
}

/** What is around a unit in a state: bores and intrusions of the sections that are there. */
export function around(world: World, state: State): Obstacles {
  const { assembly } = world
  const here = (section: string) => !state.without.has(`sections/${section}`)
  const stays = (b: Body) => isThere(b.states, state.id) && !state.without.has(b.of)
  return {
    bores: assembly.bores.filter((b) => here(b.section) && isThere(b.body.states, state.id)),
    intrusions: [
      ...assembly.intrusions.filter((i) => here(i.section) && i.fitted === 'before').map((i) => i.body),
      ...assembly.parts
        .filter((p) => p.section !== undefined && here(p.section) && p.goesIn === 'before')
        .flatMap((p) => p.bodies),
    ].filter(stays),
  }
}

/**
 * What is there while something goes in: no section outside the mouth, and only what was fitted before. Where no
 * state is named for the move, whatever is there in any state counts as there, and a clamp as closed.
 */
export function during(world: World, insertion: Insertion): Obstacles {
  const { assembly } = world
  const sections = new Set(sectionsDuring(insertion, assembly.sections).map((s) => s.id))
  const state = insertion.during
  const there = (b: Body) => state === undefined || isThere(b.states, state)
  const isIn = isInBefore(world, insertion)
  return {
    bores: assembly.bores.filter((b) => sections.has(b.section) && isThere(b.body.states, state ?? 'assembly')),
    intrusions: [
      ...assembly.intrusions.filter((i) => sections.has(i.section) && isIn(i.body.id, i.fitted)).map((i) => i.body),
      ...assembly.parts
        .filter(
          (p) =>
            p.id !== insertion.moves &&
            // What sits on a sled and goes in by itself is in nobody's wall, and in the way all the same.
            (p.section === undefined ? p.goesIn !== 'with-sled' : sections.has(p.section)) &&
            isIn(p.id, p.goesIn),
        )
        .flatMap((p) => p.bodies),
    ].filter(there),
  }
}

/** Whether something in the wall is there by a move: fitted before any, or put in by an earlier one. */
export function isInBefore(world: World, move: Insertion): (id: string, when: string) => boolean {
  const earlier = world.assembly.insertions.filter((i) => i.order < move.order).map((i) => i.moves)
  return (id, when) => when === 'before' || earlier.includes(id)
}

/** Bores and intrusions in one list. */
export const all = (o: Obstacles): Body[] => [...o.bores.map((b) => b.body), ...o.intrusions]
