import { type Grid, gridOver, middleOf, thetaStep } from '../../geometry/map/grid.ts'
import { type Profile, profileOf } from '../../geometry/map/profile.ts'
import { planarGap } from '../../geometry/region/planar-gap.ts'
import { isStraight, sliceAt } from '../../geometry/solid/slice.ts'
import { type Solid, span } from '../../geometry/solid/solid.ts'
import type { Body } from '../body/body.ts'
import { isThere } from '../body/there.ts'
import { fittings } from '../checks/fitted-after.ts'
import { outOf } from '../checks/frame.ts'
import { around } from '../checks/obstacles.ts'
import { unitOf, worldOf } from '../checks/world.ts'
import type { Assembly, State } from '../resolve/assembly.ts'
import { type ContourRing, contourRings } from './contours.ts'
import { nominalSolid } from './nominal.ts'
import { type UnrolledMark, unrolledMarks } from './unrolled-marks.ts'

/** The hilt unrolled, seen from outside: z along it, θ from 0° down to 360°. As measured. */
export interface UnrolledView {
  readonly z0: number
  readonly z1: number
  /** Where the gap is at least so wide, mm; narrower and narrower ground lies under it. */
  readonly bands: readonly UnrolledBand[]
  /** Where they overlap. */
  readonly overlap: readonly UnrolledRing[]
  /** Stretches of the axis that a sled or its contents take up. */
  readonly units: readonly { readonly name: string; readonly z0: number; readonly z1: number }[]
  /** Where one section ends and the next begins. */
  readonly seams: readonly { readonly z: number; readonly name: string }[]
  readonly marks: readonly UnrolledMark[]
  readonly table: RadiusTable
}

export interface UnrolledBand {
  readonly level: number
  readonly rings: readonly UnrolledRing[]
}

/** Points are [z, θ]. */
export type UnrolledRing = readonly (readonly [number, number])[]

/** Free and filled radius over the unrolled hilt, mm; row by row along z, θ fastest. */
export interface RadiusTable {
  readonly grid: Grid
  /** Infinity where nothing is around. */
  readonly free: Float32Array
  /** 0 where nothing is. */
  readonly filled: Float32Array
  /** What is left between the two; open ground where nothing is inside. */
  readonly left: Float32Array
  /** Which of the names set them; `nobody` where none. */
  readonly freeBy: Uint16Array
  readonly filledBy: Uint16Array
  readonly freeNames: readonly string[]
  readonly filledNames: readonly string[]
}

const nobody = 0xffff
/** Steps of the map: finer than one can see at any usual width. */
const step = { z: 1, theta: 3 }
/** Contours of the gap above the clearance that is asked for, mm. Wider than the last is open ground. */
const contours = [0.3, 0.5, 1, 2]
const open = 4

/** The unrolled map of an assembly in a state (the first where left out). */
export function unrolledView(assembly: Assembly, state = assembly.states[0]?.id ?? ''): UnrolledView {
  const now = assembly.states.find((s) => s.id === state)
  const { z0, z1 } = wholeOf(assembly)
  const grid = gridOver(z0, z1, step.z, step.theta)
  const { inside, outside, units } = now ? bodiesOf(assembly, now) : { inside: [], outside: [], units: [] }
  const table = tableOf(grid, inside, outside)
  const limit = assembly.thresholds.clearance.value
  const levels = [limit, ...contours.filter((c) => c > limit)]
  const gapAt = (c: number, r: number): number => Math.min(open, leftAt(table, c, r))
  return {
    z0,
    z1,
    bands: levels.map((level) => ({ level, rings: rings(grid, gapAt, level) })),
    overlap: rings(grid, (c, r) => -gapAt(c, r), 1e-6),
    units,
    seams: assembly.sections.slice(1).map((s) => ({ z: s.ends.rear.nominal, name: s.name })),
    marks: now ? unrolledMarks(assembly, now) : [],
    table,
  }
}

function wholeOf(assembly: Assembly): { readonly z0: number; readonly z1: number } {
  const ends = [...assembly.sections, ...assembly.sleds].map((o) => o.ends)
  return {
    z0: Math.min(...ends.map((e) => e.rear.nominal)),
    z1: Math.max(...ends.map((e) => e.blade.nominal)),
  }
}

/** What is inside and what is around it, where each truly lies. */
function bodiesOf(assembly: Assembly, state: State) {
  const world = worldOf(assembly)
  const { bores, intrusions } = around(world, state)
  const later = fittings(world)
    .filter((f) => !state.without.has(f.id))
    .flatMap((f) => f.bodies)
    .filter((b) => isThere(b.states, state.id))
  const present = assembly.sleds.filter((s) => !state.without.has(`sleds/${s.id}`))
  const carried = present.map((sled) => {
    const unit = unitOf(world, sled)
    const contents = unit.contents.filter((b) => !state.without.has(b.of))
    const named = unit.outside.map((b): Body => ({ ...b, name: sled.name }))
    return { name: sled.name, bodies: [...named, ...contents].map(outOf(sled)) }
  })
  return {
    inside: carried.flatMap((u) => u.bodies),
    outside: [...bores.map((b) => b.body), ...intrusions, ...later],
    units: carried.map(({ name, bodies }) => {
      const spans = bodies.map((b) => span(nominalSolid(b)))
      return { name, z0: Math.min(...spans.map((s) => s.z0)), z1: Math.max(...spans.map((s) => s.z1)) }
    }),
  }
}

function tableOf(grid: Grid, inside: readonly Body[], outside: readonly Body[]): RadiusTable {
  const n = grid.nz * grid.nTheta
  const free = new Float32Array(n).fill(Number.POSITIVE_INFINITY)
  const filled = new Float32Array(n)
  const freeBy = new Uint16Array(n).fill(nobody)
  const filledBy = new Uint16Array(n).fill(nobody)
  const [around, within] = [outside.map(nominalSolid), inside.map(nominalSolid)]
  for (const [k, s] of around.entries())
    along(s, grid, ({ inner }, row) => {
      for (let j = 0; j < grid.nTheta; j++)
        if ((inner[j] as number) < (free[row + j] as number)) {
          free[row + j] = inner[j] as number
          freeBy[row + j] = k
        }
    })
  for (const [k, s] of within.entries())
    along(s, grid, ({ outer }, row) => {
      for (let j = 0; j < grid.nTheta; j++)
        if ((outer[j] as number) > (filled[row + j] as number)) {
          filled[row + j] = outer[j] as number
          filledBy[row + j] = k
        }
    })
  const left = Float32Array.from(free, (f, at) => ((filled[at] as number) > 0 ? f - (filled[at] as number) : open))
  const exact = slices(grid, within, around)
  for (let at = 0; at < n; at++) {
    // Two radii say nothing of a pin that stands in a window: there the cross-sections themselves are asked.
    if ((left[at] as number) < 0)
      left[at] = exact(filledBy[at] as number, freeBy[at] as number, Math.floor(at / grid.nTheta))
  }
  const [freeNames, filledNames] = [outside.map((b) => b.name), inside.map((b) => b.name)]
  return { grid, free, filled, left, freeBy, filledBy, freeNames, filledNames }
}

/** The distance of two solids in one row of the map, each asked once. */
function slices(grid: Grid, within: readonly Solid[], around: readonly Solid[]) {
  const known = new Map<string, number>()
  return (body: number, obstacle: number, row: number): number => {
    const key = `${body} ${obstacle} ${row}`
    let d = known.get(key)
    if (d === undefined) {
      const z = middleOf(grid, row)
      const [a, b] = [within[body] as Solid, around[obstacle] as Solid]
      const [p, q] = [sliceAt(a, z), sliceAt(b, z)]
      d = p && q ? planarGap(p, q).d - a.grow - b.grow : open
      known.set(key, d)
    }
    return d
  }
}

/** The profile of a solid at the middle of every row that meets it: straight solids have one for all. */
function along(s: Solid, grid: Grid, draw: (p: Profile, row: number) => void): void {
  const { z0, z1 } = span(s)
  const first = Math.max(0, Math.ceil((z0 - grid.z0) / grid.dz - 0.5))
  let kept: Profile | undefined
  for (let i = first; i < grid.nz && middleOf(grid, i) <= z1; i++) {
    const region = kept ? undefined : sliceAt(s, middleOf(grid, i))
    const profile = kept ?? (region && profileOf(region, grid.nTheta, s.grow))
    if (!profile) continue
    if (isStraight(s)) kept = profile
    draw(profile, i * grid.nTheta)
  }
}

/** The field on beyond the ends, and on around. */
function leftAt({ grid, left }: RadiusTable, c: number, r: number): number {
  const i = Math.min(grid.nz - 1, Math.max(0, c))
  const j = (r + grid.nTheta) % grid.nTheta
  return left[i * grid.nTheta + j] as number
}

/** Contours in mm and degrees. The field reaches one point beyond each end and once more around, to be cut off. */
function rings(grid: Grid, value: (c: number, r: number) => number, level: number): UnrolledRing[] {
  const field = {
    columns: grid.nz + 2,
    rows: grid.nTheta + 2,
    at: (c: number, r: number) => value(c - 1, r - 1),
  }
  return contourRings(field, level).map((ring: ContourRing) =>
    ring.map(([c, r]) => [grid.z0 + (c - 0.5) * grid.dz, (r - 0.5) * thetaStep(grid)] as const),
  )
}

/** What is free and what is filled at a place of the map; undefined beyond its ends. */
export interface RadiiHere {
  /** Infinity where nothing is around. */
  readonly free: number
  readonly filled: number
  readonly freeBy: string | undefined
  readonly filledBy: string | undefined
}

export function radiiAt(table: RadiusTable, z: number, theta: number): RadiiHere | undefined {
  const { grid, freeNames, filledNames } = table
  const i = Math.floor((z - grid.z0) / grid.dz)
  if (i < 0 || i >= grid.nz) return undefined
  const j = Math.floor((((theta % 360) + 360) % 360) / thetaStep(grid)) % grid.nTheta
  const at = i * grid.nTheta + j
  return {
    free: table.free[at] as number,
    filled: table.filled[at] as number,
    freeBy: freeNames[table.freeBy[at] as number],
    filledBy: filledNames[table.filledBy[at] as number],
  }
}
