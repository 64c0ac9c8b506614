import type { Assembly } from '../resolve/assembly.ts'
import type { CutOnTheWay } from './cross-section.ts'
import type { InsertionWay } from './insertion-way.ts'
import { shiftAt } from './way-shift.ts'

/** How far along its way something is. */
export interface PushedTo {
  /** `InsertionWay.id`. */
  readonly way: string
  readonly depth: number
}

/** What the cross-section shows on its way, so that it can say so. */
export interface CutOnWay extends PushedTo {
  /** In words: `sled into the body`. */
  readonly name: string
  /** How far from its place it begins, mm along z: so far beyond the hilt there is something to cut. */
  readonly begins: number
}

/** How the cross-section is asked for while something is pushed in, and what it then shows. */
export interface CutAsked {
  readonly state: string
  readonly way: CutOnTheWay
  readonly pushed: CutOnWay
}

/**
 * What is pushed in and all it carries are cut where they pass the height, the rest where it stands, and what is not
 * there yet is left out. Walls are those that the way in is judged by.
 */
export function pushedCut(assembly: Assembly, z: number, way: InsertionWay, depth: number): CutAsked {
  const by = shiftAt(way, depth)
  const absent = new Set(way.absent)
  return {
    state: assembly.insertions.find((i) => i.id === way.insertion)?.during ?? 'assembly',
    way: {
      absent,
      sections: assembly.sections.filter((s) => !absent.has(`sections/${s.id}`)),
      bores: assembly.bores.filter((b) => !absent.has(`sections/${b.section}`)),
      // A step of a bore moves with its section.
      at: (of) => (way.carries.some((c) => of === c || of.startsWith(`${c}/`)) ? z - by : z),
    },
    pushed: { way: way.id, depth, name: way.name, begins: shiftAt(way, way.from) },
  }
}
