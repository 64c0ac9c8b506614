import type { WallPlace } from '../../geometry/mesh/thickness.ts'
import type { Plan } from '../../geometry/plan/plan.ts'
import { clock } from '../../geometry/region/point.ts'
import { facetError } from '../../geometry/wall.ts'
import type { Where } from '../checks/finding.ts'
import type { Sled } from '../resolve/assembly.ts'
import type { PlacedBody } from './lay-out.ts'
import { orientationText } from './orientation-text.ts'
import { tidy } from './report.ts'

/** Mass of a body printed solid, g: from the lightest to the heaviest its material may be. Less infill weighs less. */
export interface Mass {
  readonly least: number
  readonly most: number
}

/** An item of the plan that made one face of a wall. */
export interface WallSide {
  readonly item: string
  readonly nest: string
  /** Who asked for it. */
  readonly by: string
}

export interface ThinnestWall {
  /** Measured on the mesh, whose facets may take up to `facetError` of what is drawn. */
  readonly thickness: number
  readonly facetError: number
  /** What the process prints, and who says so. */
  readonly limit: number
  readonly limitSource: string
  /** In the frame of the hilt. */
  readonly at: Where
  readonly between: readonly [WallSide, WallSide]
}

/** One printed body as it is told of beside its file. Lengths in mm, volume in mm³, in the frame of the file. */
export interface BodyReport {
  readonly id: string
  readonly name: string
  /** Its own STL file; null where none was asked for. */
  readonly stl: string | null
  readonly volume: number
  readonly bounds: PlacedBody['report']['bounds']
  readonly triangles: number
  /** Shells that hang together: 1 where it passed the gate. */
  readonly pieces: number
  /** Null where no material is known; `massHint` of the sled then says what to name. */
  readonly mass: Mass | null
  /** Null where no wall is thinner than 6 mm, or where the gate refused the body before its walls were measured. */
  readonly thinnestWall: ThinnestWall | null
  /** Null where it lies as in the hilt. */
  readonly orientation: OrientationReport | null
  /** Three rows of a turn and a shift, from the frame of the hilt to that of the file. */
  readonly toFile: PlacedBody['toFile']
  /** What the gate found wrong; empty where it passed. */
  readonly faults: readonly string[]
}

export interface OrientationReport {
  /** What is on the bed: an end, or the side at a clock angle (degrees). */
  readonly down: 'rear end' | 'blade end' | 'side'
  readonly theta: number | null
  readonly why: string
  /** On the bed, and hanging over steeper than 45°; mm². */
  readonly foot: number
  readonly overhang: number
}

export function bodyReport(placed: PlacedBody, sled: Sled, plan: Plan, stl: string | null): BodyReport {
  const { body, report, orientation, toFile } = placed
  const { volume, bounds, triangles, shells } = report
  return {
    id: body.id,
    name: body.name,
    stl,
    volume: tidy(volume),
    bounds,
    triangles,
    pieces: shells,
    mass: massOf(volume, sled),
    thinnestWall: body.report.walls?.thinnest ? wallOf(body.report.walls.thinnest, body.id, sled, plan) : null,
    orientation: orientation
      ? {
          down: typeof orientation.down === 'number' ? 'side' : `${orientation.down} end`,
          theta: typeof orientation.down === 'number' ? orientation.down : null,
          why: orientationText(orientation),
          foot: tidy(orientation.chosen.foot),
          overhang: tidy(orientation.chosen.overhang),
        }
      : null,
    toFile: toFile.map((row) => row.map(tidy)) as unknown as PlacedBody['toFile'],
    faults: [...new Set([...body.report.faults, ...report.faults])],
  }
}

/** mm³ and g/cm³ to g. */
export function massOf(volume: number, { print: { material } }: Sled): Mass | null {
  const density = material?.density
  return density ? { least: tidy((volume * density.min) / 1000), most: tidy((volume * density.max) / 1000) } : null
}

function wallOf(wall: WallPlace, body: string, { print }: Sled, plan: Plan): ThinnestWall | null {
  const items = plan.bodies.find((b) => b.id === body)?.items ?? []
  const [a, b] = wall.made.map((i) => items[i])
  if (!a || !b) return null
  const side = (x: typeof a): WallSide => ({ item: x.id, nest: x.nest, by: x.by })
  const [x, y, z] = wall.at
  return {
    thickness: tidy(wall.thickness),
    facetError,
    limit: print.leastWall,
    limitSource: print.leastWallSource,
    at: { z: tidy(z), theta: tidy(clock({ x, y })), r: tidy(Math.hypot(x, y)) },
    between: [side(a), side(b)],
  }
}
