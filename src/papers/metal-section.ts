import { radians } from '../../geometry/region/point.ts'
import { isThere } from '../body/there.ts'
import type { Assembly } from '../resolve/assembly.ts'
import type { Section, Step } from '../resolve/metal.ts'
import { type Point2, threadProfile } from './thread-profile.ts'

/** One side of one section's metal, cut lengthwise. Points are [z, height above the axis], mm. */
export interface CutMetal {
  readonly section: string
  readonly name: string
  /** Place of the section in the hilt: neighbours are hatched differently. */
  readonly order: number
  readonly ring: readonly Point2[]
  /** Edges that are there. */
  readonly edges: readonly (readonly Point2[])[]
  /** Where the drawing breaks off: an outside nobody measured, metal that goes on. */
  readonly broken: readonly (readonly Point2[])[]
}

/** Drawn over the widest bore of the hilt where no outside diameter was given, mm. */
export const wallWhereUnknown = 2.6
/** A solid end is broken off after so much of it, or beyond what would lie in it, mm. */
const solidShown = 5

interface Stretch {
  readonly z0: number
  readonly z1: number
  readonly r0: number
  readonly r1: number
  readonly step: Step
  /** Metal that goes on beyond an end. */
  readonly cutOff: 'rear' | 'blade' | undefined
}

/** The metal of all sections on both sides of the axis, cut along the plane at θ, as it is in one state. */
export function metalSection(assembly: Assembly, theta: number, state: string): CutMetal[] {
  return assembly.sections.flatMap((section) =>
    ([1, -1] as const).flatMap((side) =>
      metalTowards(assembly, section, side === 1 ? theta : theta + 180, state, side),
    ),
  )
}

/** The metal of one section towards one clock angle, drawn above the axis (side 1) or below it. */
export function metalTowards(
  assembly: Assembly,
  section: Section,
  angle: number,
  state: string,
  side: 1 | -1 = 1,
): CutMetal[] {
  const unknown = Math.max(...assembly.sections.map(widest)) + wallWhereUnknown
  const order = assembly.sections.indexOf(section)
  return runs(stretches(assembly, section, angle, state)).map((run) => cutMetal(section, order, side, run, unknown))
}

/** The bore wall towards one angle, step by step; through slots leave nothing. */
function stretches(assembly: Assembly, section: Section, angle: number, state: string): Stretch[] {
  const first = assembly.sections[0] === section
  const last = assembly.sections.at(-1) === section
  return section.steps.flatMap((step, i): Stretch[] => {
    if (!step.r0 || !step.r1 || !isThere(step.states, state)) return []
    const whole = { z0: step.z0.nominal, z1: step.z1.nominal, step }
    if (step.kind === 'solid') {
      const solid = { ...whole, r0: 0, r1: 0 }
      const within = reachAlong(assembly)
      const to = Math.max(whole.z0, Math.min(whole.z1, within.z1)) + solidShown
      const from = Math.min(whole.z1, Math.max(whole.z0, within.z0)) - solidShown
      if (last && i === section.steps.length - 1 && to < whole.z1) return [{ ...solid, z1: to, cutOff: 'blade' }]
      if (first && i === 0 && from > whole.z0) return [{ ...solid, z0: from, cutOff: 'rear' }]
      return [{ ...solid, cutOff: undefined }]
    }
    const wall = (r: number) => wallTowards(step, r, angle)
    return slotted(assembly, section, angle, {
      ...whole,
      r0: wall(step.r0.nominal),
      r1: wall(step.r1.nominal),
      cutOff: undefined,
    })
  })
}

/** The stretch that sleds and parts take up. */
function reachAlong(assembly: Assembly): { readonly z0: number; readonly z1: number } {
  const ends = [...assembly.sleds, ...assembly.parts].map((o) => o.ends)
  return {
    z0: Math.min(...ends.map((e) => e.rear.nominal)),
    z1: Math.max(...ends.map((e) => e.blade.nominal)),
  }
}

/** Distance from the hilt's axis to a bore whose own axis may lie beside it. */
function wallTowards(step: Step, r: number, angle: number): number {
  const [c, s] = [Math.cos(radians(angle)), Math.sin(radians(angle))]
  const [x, y] = [step.x.nominal, step.y.nominal]
  const aside = x * s - y * c
  return x * c + y * s + Math.sqrt(Math.max(0, r * r - aside * aside))
}

/** A stretch less the slots that the plane meets: through ones take the metal, others set it back to their floor. */
function slotted(assembly: Assembly, section: Section, angle: number, whole: Stretch): Stretch[] {
  const met = assembly.openings.filter(({ section: of, opening, z0, z1 }) => {
    const turn = radians(angle - opening.theta)
    const aside = Math.abs(Math.sin(turn)) * Math.max(whole.r0, whole.r1)
    return (
      of === section.id &&
      Math.cos(turn) > 0 &&
      aside < opening.halfWidth.nominal &&
      z1.nominal > whole.z0 &&
      z0.nominal < whole.z1
    )
  })
  const cuts = met.flatMap((o) => [o.z0.nominal, o.z1.nominal]).filter((z) => z > whole.z0 && z < whole.z1)
  const stations = [whole.z0, ...cuts.toSorted((a, b) => a - b), whole.z1]
  return stations.slice(1).flatMap((z1, i): Stretch[] => {
    const z0 = stations[i] as number
    const here = met.filter((o) => o.z0.nominal < (z0 + z1) / 2 && o.z1.nominal > (z0 + z1) / 2)
    if (here.some((o) => o.opening.floor === undefined)) return []
    const floor = Math.max(0, ...here.map((o) => o.opening.floor?.nominal ?? 0))
    const at = (z: number) =>
      Math.max(floor, whole.r0 + ((z - whole.z0) / (whole.z1 - whole.z0)) * (whole.r1 - whole.r0))
    return [{ ...whole, z0, z1, r0: at(z0), r1: at(z1) }]
  })
}

/** Stretches that follow each other without a break. */
function runs(list: readonly Stretch[]): Stretch[][] {
  const out: Stretch[][] = []
  for (const s of list) {
    const run = out.at(-1)
    if (run && Math.abs((run.at(-1) as Stretch).z1 - s.z0) < 1e-6) run.push(s)
    else out.push([s])
  }
  return out
}

function cutMetal(section: Section, order: number, side: number, run: readonly Stretch[], unknown: number): CutMetal {
  const inner = run.flatMap(innerEdge)
  const [start, end] = [run[0] as Stretch, run.at(-1) as Stretch]
  const known = section.outside.length > 0
  const outer = known
    ? outsideEdge(section, start.z0, end.z1)
    : ([start.z0, end.z1] as const).map((z): Point2 => [z, unknown])
  const flip = (points: readonly Point2[]): Point2[] => points.map(([z, r]) => [z, side * r])
  const face = (i: Point2, o: Point2) => flip([i, o])
  const [rear, blade] = [
    face(inner[0] as Point2, outer[0] as Point2),
    face(inner.at(-1) as Point2, outer.at(-1) as Point2),
  ]
  return {
    section: section.id,
    name: section.name,
    order,
    ring: flip([...inner, ...outer.toReversed()]),
    edges: [
      ...innerLines(run).map(flip),
      ...(known ? [flip(outer)] : []),
      ...(start.cutOff === 'rear' ? [] : [rear]),
      ...(end.cutOff === 'blade' ? [] : [blade]),
    ],
    broken: [
      ...(known ? [] : [flip(outer)]),
      ...(start.cutOff === 'rear' ? [rear] : []),
      ...(end.cutOff === 'blade' ? [blade] : []),
    ],
  }
}

function innerEdge(s: Stretch): Point2[] {
  const { thread } = s.step
  if (thread && s.r0 === s.r1 && thread.major / 2 > s.r0)
    return threadProfile(s.z0, s.z1, s.r0, thread.major / 2, thread.pitch)
  return [
    [s.z0, s.r0],
    [s.z1, s.r1],
  ]
}

/** The inner edge as one sees it: no line along the axis through solid metal. */
function innerLines(run: readonly Stretch[]): Point2[][] {
  const lines: Point2[][] = [[]]
  for (const s of run) {
    if (s.step.kind === 'solid') {
      lines.at(-1)?.push([s.z0, 0])
      lines.push([[s.z1, 0]])
    } else lines.at(-1)?.push(...innerEdge(s))
  }
  return lines.filter((l) => l.length > 1)
}

const widest = (section: Section): number =>
  Math.max(...section.steps.map((s) => Math.max(s.r0?.nominal ?? 0, s.r1?.nominal ?? 0, (s.thread?.major ?? 0) / 2)))

function outsideEdge(section: Section, z0: number, z1: number): Point2[] {
  return section.outside.flatMap((o): Point2[] => {
    const [a, b] = [Math.max(z0, o.z0.nominal), Math.min(z1, o.z1.nominal)]
    if (b <= a) return []
    const at = (z: number) =>
      (o.d0.nominal + ((z - o.z0.nominal) / (o.z1.nominal - o.z0.nominal)) * (o.d1.nominal - o.d0.nominal)) / 2
    return [
      [a, at(a)],
      [b, at(b)],
    ]
  })
}
