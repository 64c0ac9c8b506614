import type { Place } from '../papers/places.ts'
import type { Project } from '../project/schema/project.ts'
import type { PlaceOf } from './place-forms.ts'
import { usualLayout } from './usual-layout.ts'

/** Where something of a length is put: from so far on, behind the part that it is measured from. */
export interface FreeStretch {
  readonly rear: number
  /** The last part before it; undefined where it is the first, or lies over others. */
  readonly after: Place | undefined
  /** No stretch has room: it lies at the end of where it may be, over what is there. */
  readonly fits: boolean
  /** The section it lies in. */
  readonly section: string
}

interface Stretch {
  readonly rear: number
  readonly blade: number
}

/** So far from the ends of a section, mm: what goes through a wall needs the wall. */
const fromEnd = 1

/**
 * The first stretch from the rear in which so many mm fit with the usual distance to every part before and behind, in
 * a section's own wall where it goes through one. Undefined where somebody's place is not known yet.
 */
export function freeStretch(
  project: Project,
  long: number,
  inWall: boolean,
  mouth: string,
  placeOf: PlaceOf,
): FreeStretch | undefined {
  const taken = project.parts.flatMap((p) => placeOf(`parts/${p.id}`) ?? [])
  const sections = project.sections.flatMap((s) => placeOf(`sections/${s.id}`) ?? [])
  if (taken.length < project.parts.length || sections.length < project.sections.length) return undefined
  const whole = roomOf(project, mouth, sections, placeOf)
  const rooms = inWall
    ? sections.map((s) => ({
        rear: Math.max(whole.rear, s.rear + fromEnd),
        blade: Math.min(whole.blade, s.blade - fromEnd),
      }))
    : [whole]
  const found = rooms.flatMap((room) => firstIn(room, taken, long) ?? [])[0] ?? {
    rear: Math.max(whole.rear, whole.blade - long),
    after: undefined,
    fits: false,
  }
  const section = sections.find((s) => s.rear <= found.rear && found.rear <= s.blade)?.ref ?? mouth
  return { ...found, section }
}

/** Where parts may lie: in a sled whose ends are typed between these; else it grows, from its mouth to the hilt's end. */
function roomOf(project: Project, mouth: string, sections: readonly Place[], placeOf: PlaceOf): Stretch {
  const sled = project.sleds[0]
  const own = sled && placeOf(`sleds/${sled.id}`)
  const rear = sections.find((s) => s.ref === mouth)?.rear ?? 0
  const blade = Math.max(0, ...sections.map((s) => s.blade))
  const { endWall } = usualLayout
  return {
    rear: own && sled.from !== undefined ? own.rear + endWall : rear + usualLayout.mouth + endWall,
    blade: own && sled.to !== undefined ? own.blade - endWall : blade - endWall,
  }
}

function firstIn(room: Stretch, taken: readonly Place[], long: number): Omit<FreeStretch, 'section'> | undefined {
  let rear = room.rear
  let after: Place | undefined
  for (const part of taken.toSorted((a, b) => a.rear - b.rear)) {
    if (part.rear - usualLayout.between >= rear + long) break
    if (part.blade + usualLayout.between > rear) [rear, after] = [part.blade + usualLayout.between, part]
  }
  return rear + long <= room.blade + 1e-9 ? { rear, after, fits: true } : undefined
}
