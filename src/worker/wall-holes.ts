import type { Assembly } from '../resolve/assembly.ts'

/** A round hole through the wall of a section, as measured: its middle and radius, mm, and its clock angle, degrees. */
export interface WallHole {
  /** `features/port-hole`. */
  readonly id: string
  /** `sections/body`. */
  readonly section: string
  readonly z: number
  readonly theta: number
  readonly radius: number
}

/** The round holes that there are in a state (the first where left out). */
export function wallHoles(assembly: Assembly, state = assembly.states[0]?.id): readonly WallHole[] {
  const gone = assembly.states.find((s) => s.id === state)?.without
  return assembly.roundHoles
    .filter((h) => h.through && !gone?.has(h.id))
    .map(({ id, section, ends, theta, radius }) => ({
      id,
      section: `sections/${section}`,
      z: (ends.rear.nominal + ends.blade.nominal) / 2,
      theta: theta.nominal,
      radius: radius.nominal,
    }))
}
