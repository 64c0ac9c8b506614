import type { Body } from '../body/body.ts'
import { isThere } from '../body/there.ts'
import type { Part, State } from '../resolve/assembly.ts'
import { outOf } from './frame.ts'
import type { World } from './world.ts'

/** Something that is in the wall, sticks into the bore, or went in by itself. */
export interface WallThing {
  /** `parts/switch`, `features/rivet`, `screws/retention`. */
  readonly id: string
  readonly name: string
  readonly section: string | undefined
  readonly bodies: readonly Body[]
  readonly part: Part | undefined
  /** A lip or boss of the section's own metal: what goes into that metal may go into it. */
  readonly metal: boolean
}

export function wallThings({ assembly }: World): WallThing[] {
  const parts = assembly.parts.filter((p) => p.goesIn !== 'with-sled')
  return [
    ...parts.map((part): WallThing => {
      const sled = assembly.sleds.find((s) => s.id === part.sled)
      const bodies = sled ? part.bodies.map(outOf(sled)) : part.bodies
      return { id: part.id, name: part.name, section: part.section, bodies, part, metal: false }
    }),
    ...assembly.intrusions.map(({ body, section, fitted }): WallThing => {
      const metal = body.of.startsWith('features/') && fitted === 'before' && body.shape.kind !== 'pin'
      return { id: body.of, name: body.name, section, bodies: [body], part: undefined, metal }
    }),
  ]
}

/** The states, of those looked at, in which it is there. */
export function isInState(thing: WallThing, state: State): boolean {
  if (state.without.has(thing.id) || state.without.has(`sections/${thing.section}`)) return false
  return thing.bodies.some((b) => isThere(b.states, state.id))
}

/** States in words. */
export const stateNames = ({ assembly }: World, states: readonly State[]): string =>
  states.length === assembly.states.length ? 'every state' : states.map((s) => s.name).join(', ')
