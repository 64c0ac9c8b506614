import { type Solid, type Span as Stretch, span } from '../../geometry/solid/solid.ts'
import type { Body } from '../body/body.ts'
import { bestSolids, nominalSolids, type SolidPair, worstCorners } from '../body/gap-at.ts'
import { pairOf } from '../body/pair.ts'
import { roughGap } from '../body/rough.ts'
import { isThere } from '../body/there.ts'
import { inPlace } from '../checks/clearance.ts'
import { besideFitting, fittings } from '../checks/fitted-after.ts'
import type { Demand } from '../checks/group.ts'
import { movingOf } from '../checks/moving.ts'
import { all } from '../checks/obstacles.ts'
import { type Unit, unitOf, type World, worldOf } from '../checks/world.ts'
import type { Assembly, State } from '../resolve/assembly.ts'
import { gapOfSlice, type Near, nearOf } from './nearness.ts'
import { nominalSolid } from './nominal.ts'
import { type OpenSeam, openSeams } from './open-seams.ts'

/**
 * The least gap along the hilt: of each slice of a sled and what it carries to whatever is around it. The same bodies
 * and the same distances as the checks, so that the deepest point of the strip is what the findings say.
 */
export interface GapStripView {
  /** Least gap that is asked for, mm. */
  readonly limit: number
  /** Gaps wider than this are not told apart, mm. */
  readonly widest: number
  readonly runs: readonly GapRun[]
  /** Where the bore is narrowed by thread crests. */
  readonly threads: readonly ThreadStretch[]
  /** Free bore along the axis, mm. */
  readonly bores: readonly FreeBore[]
  /** Where a unit lies in a mouth that the section before or behind it does not fill. */
  readonly seams: readonly OpenSeam[]
}

/** One sled with what it carries. */
export interface GapRun {
  /** `sleds/main`. */
  readonly sled: string
  readonly name: string
  readonly cells: readonly GapCell[]
}

/** A slice of the unit. Gaps in mm, negative where they overlap. */
export interface GapCell {
  readonly z0: number
  readonly z1: number
  readonly worst: number
  /** What is nearest at the worst, where that is something else than as measured. */
  readonly worstTo: string | undefined
  readonly nominal: number
  readonly best: number
  /** Least gap on the way in up to here, as measured; undefined where nobody says how it goes in. */
  readonly way: number | undefined
  /** Least gap that is asked for of the tightest two, mm. */
  readonly limit: number
  /** Names and references of the tightest two, as measured; empty where nothing is near. */
  readonly between: readonly string[]
  readonly ids: readonly string[]
}

export interface ThreadStretch {
  readonly id: string
  readonly name: string
  readonly z0: number
  readonly z1: number
  readonly pitch: number
  /** How far the roots lie behind the crests, mm. */
  readonly depth: number
}

export interface FreeBore {
  readonly id: string
  readonly name: string
  readonly z0: number
  readonly z1: number
  readonly r0: number
  readonly r1: number
}

/** Gaps beyond this are drawn as wide, mm. */
const widest = 3
/** Longest slice, mm. */
const finest = 0.5

interface Meeting {
  readonly demand: Demand
  readonly nominal: Near
  readonly worst: readonly Near[]
  readonly best: Near
}

/** The gap strip of an assembly in a state (the first where left out). */
export function gapStripView(assembly: Assembly, state = assembly.states[0]?.id ?? ''): GapStripView {
  const world = worldOf(assembly)
  const now = assembly.states.find((s) => s.id === state)
  const steps = assembly.sections.flatMap((s) => s.steps).filter((s) => isThere(s.states, state))
  const runs = now ? assembly.sleds.flatMap((sled) => runOf(world, unitOf(world, sled), now)) : []
  return {
    limit: assembly.thresholds.clearance.value,
    widest,
    runs,
    seams: openSeams(assembly, state).filter((s) => runs.some((r) => r.cells.some((c) => c.z0 < s.z1 && c.z1 > s.z0))),
    threads: steps.flatMap((s): ThreadStretch[] =>
      s.thread && s.r0
        ? [
            {
              id: s.id,
              name: s.thread.name,
              z0: s.z0.nominal,
              z1: s.z1.nominal,
              pitch: s.thread.pitch,
              depth: Math.max(0, s.thread.major / 2 - s.r0.nominal),
            },
          ]
        : [],
    ),
    bores: steps.flatMap((s): FreeBore[] =>
      s.kind === 'solid' || !s.r0 || !s.r1
        ? []
        : [{ id: s.id, name: s.name, z0: s.z0.nominal, z1: s.z1.nominal, r0: s.r0.nominal, r1: s.r1.nominal }],
    ),
  }
}

function runOf(world: World, unit: Unit, state: State): GapRun[] {
  if (state.without.has(`sleds/${unit.sled.id}`)) return []
  const demands = [...inPlace(world, unit, state).values()].flat().concat(fitted(world, unit, state))
  const bodies = [...unit.outside, ...unit.contents.filter((b) => !state.without.has(b.of))]
  const meetings = demands.filter((d) => roughGap(d.a, d.b) < widest).map(meetingOf)
  const ways = waysIn(world, unit)
  const slices = slicesOf(bodies, [...meetings.map((m) => m.demand.b), ...ways.map((w) => w.b)])
  const named = (b: Body): string => (b.of.startsWith('sleds/') ? unit.sled.name : b.name)
  const cells = slices.map((slice): GapCell => {
    let nominal = widest
    let tight: Meeting | undefined
    for (const m of meetings) {
      const d = gapOfSlice(m.nominal, slice, nominal)
      if (d < nominal) [nominal, tight] = [d, m]
    }
    let worst = nominal
    let last = tight
    for (const m of meetings)
      for (const corner of m.worst) {
        const d = gapOfSlice(corner, slice, worst)
        if (d < worst) [worst, last] = [d, m]
      }
    const best = meetings.reduce((least, m) => gapOfSlice(m.best, slice, least), widest)
    return {
      ...slice,
      worst,
      nominal,
      best: Math.max(nominal, best),
      way: ways.length > 0 ? ways.reduce((least, w) => gapOfSlice(w.near, slice, least), nominal) : undefined,
      limit: tight?.demand.limit ?? world.assembly.thresholds.clearance.value,
      worstTo: last && last.demand.b !== tight?.demand.b ? last.demand.b.name : undefined,
      between: tight ? [named(tight.demand.a), tight.demand.b.name] : [],
      ids: tight ? [tight.demand.a.of, tight.demand.b.of] : [],
    }
  })
  return [{ sled: `sleds/${unit.sled.id}`, name: unit.sled.name, cells }]
}

/** What comes through the wall last stands there too, where the state has it. */
function fitted(world: World, unit: Unit, state: State): Demand[] {
  return fittings(world)
    .filter((f) => !state.without.has(f.id))
    .flatMap((f) => besideFitting(world, f, unit.sled))
    .filter((d) => isThere(d.b.states, state.id) && !state.without.has(d.a.of))
}

function meetingOf(demand: Demand): Meeting {
  const pair = pairOf(demand.a, demand.b)
  const nominal = nominalSolids(pair)
  return {
    demand,
    nominal: nearOf(nominal, undefined),
    worst: worstCorners(pair).map((c) => nearOf(c, undefined)),
    best: nearOf(asLong(bestSolids(pair), nominal), undefined),
  }
}

/** Pieces at their shortest would leave slits between them that are not there: they keep their length. */
const asLong = (best: SolidPair, { a, b }: SolidPair): SolidPair => ({
  a: stretched(best.a, a),
  b: stretched(best.b, b),
})

function stretched(s: Solid, like: Solid): Solid {
  return s.kind === 'radial' || like.kind === 'radial' ? s : { ...s, z0: like.z0, z1: like.z1 }
}

/** What the unit passes on its way in, as measured. */
function waysIn(world: World, unit: Unit): { readonly near: Near; readonly b: Body }[] {
  const own = `sleds/${unit.sled.id}`
  return world.assembly.insertions
    .filter((i) => i.moves === own || i.moves.startsWith('sections/'))
    .flatMap((i) => movingOf(world, i))
    .filter((m) => m.bodies.some((b) => b.of === own))
    .flatMap((m) =>
      m.bodies.flatMap((a) =>
        all(m.obstacles)
          .filter((b) => !m.meant(a, b) && roughGap(a, b, m.heading, 'nominal') < widest)
          .map((b) => ({ near: nearOf(nominalSolids(pairOf(a, b, m.heading)), m.heading), b })),
      ),
    )
}

/** From end to end of the unit, cut wherever something begins or ends, and at least every half millimetre. */
function slicesOf(bodies: readonly Body[], around: readonly Body[]): Stretch[] {
  const ends = bodies.map((b) => span(nominalSolid(b)))
  const [from, to] = [Math.min(...ends.map((e) => e.z0)), Math.max(...ends.map((e) => e.z1))]
  const others = around.map((b) => span(nominalSolid(b)))
  const stations = [...ends, ...others].flatMap((e) => [e.z0, e.z1]).filter((z) => z > from && z < to)
  const cuts = [...new Set([from, ...stations, to])].toSorted((a, b) => a - b)
  return cuts.slice(1).flatMap((z1, i): Stretch[] => {
    const z0 = cuts[i] as number
    if (z1 - z0 < 1e-3) return []
    const n = Math.ceil((z1 - z0) / finest - 1e-9)
    return Array.from({ length: n }, (_, k) => ({
      z0: z0 + ((z1 - z0) * k) / n,
      z1: z0 + ((z1 - z0) * (k + 1)) / n,
    }))
  })
}
