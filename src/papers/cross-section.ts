import { reachFromAxis } from '../../geometry/region/farthest.ts'
import type { Region } from '../../geometry/region/region.ts'
import type { Body } from '../body/body.ts'
import { isThere } from '../body/there.ts'
import { during } from '../checks/obstacles.ts'
import { worldOf } from '../checks/world.ts'
import type { Assembly, BoreBody, Insertion, Part } from '../resolve/assembly.ts'
import { type CrossGap, crossGaps, type Obstacle } from './cross-gaps.ts'
import { type SledCross, sledCross, sledRegionsAt } from './cross-sled.ts'
import { wallWhereUnknown } from './metal-section.ts'
import { bodyAt } from './nominal.ts'
import { type Outline, outlinesOf } from './outline.ts'
import { passing } from './passing.ts'
import { bodiesOf } from './plans.ts'

/** The cross-section at one height, as plain numbers: x towards θ = 0, y towards θ = 90°, mm. Seen from the rear. */
export interface CrossSectionView {
  readonly z: number
  /** How far out the drawing goes. */
  readonly reach: number
  /** Radius of the outside; undefined where nobody measured it. */
  readonly outside: number | undefined
  /** What the metal leaves free: paint it over the metal. Empty in solid metal. */
  readonly free: readonly Outline[]
  /** Whether there is metal at this height at all. */
  readonly metal: boolean
  readonly bore: string | undefined
  readonly sleds: readonly (SledCross & { readonly id: string; readonly name: string })[]
  readonly contents: readonly CrossPart[]
  readonly intrusions: readonly CrossPart[]
  /** Outlines of what goes through this height on its way in and stands elsewhere when all is in. */
  readonly passing: readonly Outline[]
  readonly gaps: readonly CrossGap[]
}

export interface CrossPart {
  readonly id: string
  readonly name: string
  readonly kind: Part['kind'] | 'intrusion'
  /** It sits in the wall and passes it by its own hole. */
  readonly inWall: boolean
  readonly outlines: readonly Outline[]
}

/** At which of its own heights a thing is cut, by its reference: `parts/cell`, `sections/body/mouth`. */
type HeightOf = (of: string) => number

/** While something is pushed in: what is there, what is not there yet, and at which height of its own each is cut. */
export interface CutOnTheWay extends Pick<Assembly, 'sections' | 'bores'> {
  readonly absent: ReadonlySet<string>
  readonly at: HeightOf
}

/** The assembly cut across at height z (mm), in a state (the first where left out). */
export function crossSectionView(
  assembly: Assembly,
  z: number,
  state = assembly.states[0]?.id ?? '',
  way?: CutOnTheWay,
): CrossSectionView {
  const at = way?.at ?? (() => z)
  const gone = way?.absent ?? assembly.states.find((s) => s.id === state)?.without
  const here = (body: Body) => (way || isThere(body.states, state)) && !gone?.has(body.of)
  const { bores, sections } = way ?? assembly
  const wall = narrowest(bores, at, state)
  const outer = outsideAt(sections, at)
  const parts = assembly.parts.filter((p) => !gone?.has(p.id))
  const contents = parts.map((p) => ({
    ...partAt(p.id, p.name, p.kind, p.bodies, at),
    inWall: p.section !== undefined,
  }))
  const inTheWay = assembly.intrusions.map((i) => i.body).filter(here)
  const sleds = assembly.sleds
    .filter((sled) => !gone?.has(`sleds/${sled.id}`))
    .map((sled) => {
      const id = `sleds/${sled.id}`
      const [bodies, height] = [bodiesOf(assembly, sled), at(id)]
      return {
        sled,
        regions: sledRegionsAt(bodies, height),
        cut: { id, name: sled.name, ...sledCross(bodies, height) },
      }
    })
  const carried = Math.max(0, ...sleds.flatMap(({ regions }) => regions.map((r) => reachFromAxis(r))))
  const passers = way ? [] : passing(assembly, z, carried)
  const things: Obstacle[] = [
    ...sleds.flatMap(({ sled, regions, cut: { id, name } }) =>
      regions.map(
        (region): Obstacle => ({
          of: id,
          name,
          region,
          role: 'inside',
          meant: onSled(parts, sled.id),
        }),
      ),
    ),
    // What sits in the wall is part of it for all that moves, and passes the metal by its own hole.
    ...parts.flatMap((p) =>
      regionsOf(p.bodies, at).map((r) =>
        obstacle(p, r.body.name, r.region, p.section === undefined ? 'inside' : 'wall'),
      ),
    ),
    ...[...regionsOf(inTheWay, at), ...(wall && wall.r > 0 ? [wall] : [])].map(wallOf),
    ...passers,
    ...assembly.insertions
      .filter((way) => passers.some((p) => p.way === way.id))
      .flatMap((way) => metOn(assembly, way, z)),
  ]
  return {
    z,
    reach: outer ?? Math.max(wall?.r ?? 0, ...assembly.sections.flatMap(radii)) + wallWhereUnknown,
    outside: outer,
    // The boundary of a bore's metal is the outline of what it leaves free, slots included.
    free: wall && wall.r > 0 ? outlinesOf(wall.region) : [],
    metal: wall !== undefined,
    bore: wall?.body.name,
    sleds: sleds.map(({ cut }) => cut),
    contents: contents.filter((c) => c.outlines.length > 0),
    intrusions: inTheWay
      .map((body) => partAt(body.of, body.name, 'intrusion', [body], at))
      .filter((c) => c.outlines.length > 0),
    passing: passers.flatMap(({ region }) => outlinesOf(region)),
    gaps: crossGaps(things, {
      wall: assembly.thresholds.clearance.value,
      part: assembly.thresholds['part-gap'].value,
    }),
  }
}

function regionsOf(bodies: readonly Body[], at: HeightOf): { body: Body; region: Region }[] {
  return bodies.flatMap((body) => {
    const region = bodyAt(body, at(body.of))
    return region ? [{ body, region }] : []
  })
}

const partAt = (
  id: string,
  name: string,
  kind: CrossPart['kind'],
  bodies: readonly Body[],
  at: HeightOf,
): CrossPart => ({
  id,
  name,
  kind,
  inWall: kind === 'intrusion',
  outlines: regionsOf(bodies, at).flatMap(({ region }) => outlinesOf(region)),
})

function obstacle(part: Part, name: string, region: Region, role: Obstacle['role']): Obstacle {
  const sled = part.sled === undefined ? [] : [`sleds/${part.sled}`]
  return { of: part.id, name, region, role, meant: [...sled, ...(part.contact ? [part.contact.presses] : [])] }
}

const onSled = (parts: readonly Part[], sled: string): string[] =>
  parts.filter((p) => p.sled === sled && p.goesIn === 'with-sled').map((p) => p.id)

interface Wall {
  readonly body: Body
  readonly region: Region
  readonly r: number
}

/** The metal of a bore at a height. Two steps meet at their common end; the narrower one decides there. */
function narrowest(bores: readonly BoreBody[], at: HeightOf, state: string): Wall | undefined {
  const walls = bores.flatMap(({ body }): Wall[] => {
    const region = isThere(body.states, state) ? bodyAt(body, at(body.of)) : undefined
    return region ? [{ body, region, r: radiusOf(body) }] : []
  })
  return walls.toSorted((a, b) => a.r - b.r)[0]
}

const wallOf = ({ body, region }: { body: Body; region: Region }): Obstacle => ({
  of: body.of,
  name: body.name,
  region,
  role: 'wall',
  meant: [],
})

/** What a move meets at a height: only the sections that are there by then, and what was fitted before. */
function metOn(assembly: Assembly, way: Insertion, z: number): Obstacle[] {
  const { bores, intrusions } = during(worldOf(assembly), way)
  const at = () => z
  const metal = narrowest(bores, at, way.during ?? 'assembly')
  return [...regionsOf(intrusions, at), ...(metal && metal.r > 0 ? [metal] : [])].map((w) => ({
    ...wallOf(w),
    way: way.id,
  }))
}

function outsideAt(sections: Assembly['sections'], at: HeightOf): number | undefined {
  const radii = sections
    .flatMap((s) => s.outside.map((o) => ({ ...o, z: at(`sections/${s.id}`) })))
    .filter(({ z0, z1, z }) => z0.nominal <= z && z <= z1.nominal)
    .map(({ z0, z1, d0, d1, z }) => {
      const t = z1.nominal > z0.nominal ? (z - z0.nominal) / (z1.nominal - z0.nominal) : 0
      return (d0.nominal + t * (d1.nominal - d0.nominal)) / 2
    })
  return radii.length > 0 ? Math.max(...radii) : undefined
}

const radii = (s: Assembly['sections'][number]): number[] =>
  s.steps.flatMap((step) => [step.r0?.nominal ?? 0, step.r1?.nominal ?? 0])

const radiusOf = (body: Body): number =>
  body.shape.kind === 'bore' ? Math.min(body.shape.r0.nominal, body.shape.r1.nominal) : 0
