import type { Kernel } from '../../geometry/kernel/manifold.ts'
import type { Answer } from '../job/answer.ts'
import { trySled } from '../job/build-sled.ts'
import { dimensionsOfItem } from '../papers/dimensions.ts'
import { type HiltSolid, hiltSolid } from '../papers/hilt-solid.ts'
import type { SledDimension } from '../papers/sled-dimension.ts'
import type { Problem } from '../problem/problem.ts'
import type { Project } from '../project/schema/project.ts'
import { type WallHole, wallHoles } from './wall-holes.ts'

/** Everything of a job as solids: typed arrays and numbers only. */
export interface JobSolids {
  readonly hilt: HiltSolid
  readonly sleds: readonly SledSolid[]
  readonly holes: readonly WallHole[]
}

/** One sled as it would be printed. */
export interface SledSolid {
  /** `sleds/main`. */
  readonly id: string
  readonly name: string
  readonly bodies: readonly PrintedSolid[]
  /** What keeps it from leaving as a file. */
  readonly problems: readonly Problem[]
}

export interface PrintedSolid {
  readonly id: string
  readonly name: string
  readonly vertices: Float32Array
  readonly triangles: Uint32Array
  /** For each triangle, which of the makers its face is a piece of. */
  readonly made: Uint16Array
  readonly makers: readonly FaceMaker[]
  readonly min: readonly [number, number, number]
  readonly max: readonly [number, number, number]
  /** mm³. */
  readonly volume: number
}

/** What made a face: the nest, the part that asked for it, and the numbers it was made by. */
export interface FaceMaker {
  readonly nest: string
  /** `parts/cell`, `sleds/main`. */
  readonly by: string
  readonly dimensions: readonly SledDimension[]
}

/** The hilt in a state (the first where left out) and every sled; a sled that cannot be built has no bodies and says why. */
export function solidsOfJob(kernel: Kernel, project: Project, { assembly }: Answer, state?: string): JobSolids {
  return {
    hilt: hiltSolid(assembly, state),
    holes: wallHoles(assembly, state),
    sleds: assembly.sleds.map(({ id, name }): SledSolid => {
      const tried = trySled(kernel, assembly, id)
      if (!tried.ok) return { id: `sleds/${id}`, name, bodies: [], problems: tried.problems }
      const { sled, plan, bodies, problems } = tried.value
      return {
        id: `sleds/${id}`,
        name,
        problems,
        bodies: bodies.map((b): PrintedSolid => {
          const items = plan.bodies.find((p) => p.id === b.id)?.items ?? []
          return {
            id: b.id,
            name: b.name,
            vertices: b.mesh.vertices,
            triangles: b.mesh.triangles,
            made: b.mesh.made,
            makers: items.map((item) => ({
              nest: item.nest,
              by: item.by,
              dimensions: dimensionsOfItem(project, sled, item),
            })),
            min: b.report.bounds.min,
            max: b.report.bounds.max,
            volume: b.report.volume,
          }
        }),
      }
    }),
  }
}
