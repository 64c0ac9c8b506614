import type { NestInput } from '../project/schema/sled.ts'
import { most } from '../quantity/quantity.ts'
import type { Assembly, Part, Sled } from '../resolve/assembly.ts'
import type { ThresholdId } from '../resolve/thresholds.ts'

/** What a nest sees: the sled, all that is known of the hilt, and the part it is for. */
export interface NestJob {
  readonly assembly: Assembly
  readonly sled: Sled
  readonly part: Part
  /** What the person typed for this part's nest. */
  readonly typed: NestInput | undefined
  /** Where a dimension of this nest is typed: `sleds/main/nests/parts/cell/gap`. */
  readonly path: (field: string) => string
}

export function nestJob(assembly: Assembly, sled: Sled, part: Part): NestJob {
  const typed = sled.input.nests?.find((n) => n.part === part.id)
  return { assembly, sled, part, typed, path: (field) => `sleds/${sled.id}/nests/${part.id}/${field}` }
}

export const setting = (job: { readonly assembly: Assembly }, id: ThresholdId): number =>
  job.assembly.thresholds[id].value

/** Largest radius of the sled beside a stretch of the axis, mm. */
export function outerRadius(sled: Sled, z0: number, z1: number): number {
  const beside = sled.pieces.filter((p) => p.z1 > z0 && p.z0 < z1).map((p) => p.radius)
  const rings = sled.rings.filter((r) => r.z1 > z0 && r.z0 < z1).map((r) => r.radius)
  return Math.max(0, ...beside, ...rings)
}

/** Room drawn beyond each end of a part in a closed nest, mm: half the gap that shall be left, and the print error. */
export const axialSlack = (job: NestJob): number => setting(job, 'axial-gap') / 2 + most(job.sled.print.error)

/** How far past the outside a cut goes on, so that it leaves no skin, mm. */
export const beyond = 1
