import { isThere } from '../body/there.ts'
import type { Assembly } from '../resolve/assembly.ts'
import type { Section, Step } from '../resolve/metal.ts'

/**
 * A stretch beside the seam of two sections where the bore is wider than on both its sides: a mouth made for the other
 * section, which does not reach so far in. The gap rises there, and one wants to know why.
 */
export interface OpenSeam {
  readonly z0: number
  readonly z1: number
  /** Name of the wide stretch. */
  readonly name: string
  /** Names of the two sections, from the rear. */
  readonly sections: readonly [string, string]
  /** How far they engage, mm; undefined where nobody said so, which counts as not at all. */
  readonly engaged: number | undefined
}

/** Steps nearer to each other than this are one, mm. */
const same = 0.02

/** The open stretches at the seams of neighbouring sections, as measured, in a state. */
export function openSeams(assembly: Assembly, state: string): OpenSeam[] {
  const gone = assembly.states.find((s) => s.id === state)?.without
  const sections = assembly.sections.filter((s) => !gone?.has(`sections/${s.id}`))
  return sections.slice(1).flatMap((blade, i) => openSeam(assembly, sections[i] as Section, blade, state))
}

interface Stretch {
  readonly z0: number
  readonly z1: number
  readonly r: number
  readonly by: Step
}

function openSeam(assembly: Assembly, rear: Section, blade: Section, state: string): OpenSeam[] {
  const steps = [...rear.steps, ...blade.steps].filter((s) => isThere(s.states, state))
  // What nobody measured may be as wide as it likes.
  if (steps.some((s) => s.kind !== 'solid' && !s.r0)) return []
  const free = freeBore(steps)
  const joint = assembly.project.joints.find((j) => j.rear === rear.id && j.blade === blade.id)
  const shared = rear.ends.blade.nominal - blade.ends.rear.nominal
  const at = [rear.ends.blade.nominal, blade.ends.rear.nominal]
  return free.flatMap((s, k): OpenSeam[] => {
    const [before, after] = [free[k - 1], free[k + 1]]
    const beside = at.some((z) => Math.abs(s.z0 - z) < same || Math.abs(s.z1 - z) < same)
    if (!before || !after || !beside || s.r - before.r < same || s.r - after.r < same) return []
    return [
      {
        z0: s.z0,
        z1: s.z1,
        name: s.by.name,
        sections: [rear.name, blade.name],
        engaged: joint?.engagement === undefined ? undefined : Math.max(0, shared),
      },
    ]
  })
}

/** The bore that is left where steps lie over each other, from the rear; neighbours of one width are one stretch. */
function freeBore(steps: readonly Step[]): Stretch[] {
  const stations = [...new Set(steps.flatMap((s) => [s.z0.nominal, s.z1.nominal]))].toSorted((a, b) => a - b)
  const out: Stretch[] = []
  for (const [i, z1] of stations.slice(1).entries()) {
    const z0 = stations[i] as number
    if (z1 - z0 < same) continue
    const here = steps.filter((s) => s.z0.nominal < z1 - same / 2 && s.z1.nominal > z0 + same / 2)
    const by = here.toSorted((a, b) => radius(a) - radius(b))[0]
    if (!by) continue
    const last = out.at(-1)
    if (last && Math.abs(last.r - radius(by)) < same) out[out.length - 1] = { ...last, z1 }
    else out.push({ z0, z1, r: radius(by), by })
  }
  return out
}

const radius = (s: Step): number =>
  s.kind === 'solid'
    ? 0
    : Math.min(s.r0?.nominal ?? Number.POSITIVE_INFINITY, s.r1?.nominal ?? Number.POSITIVE_INFINITY)
