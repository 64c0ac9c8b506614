import { type Problem, problem } from '../problem/problem.ts'
import type { NestInput } from '../project/schema/nest.ts'
import { most } from '../quantity/quantity.ts'
import type { Assembly, Part, Sled } from '../resolve/assembly.ts'
import type { ThresholdId } from '../resolve/thresholds.ts'

/** What of a job the plan of a sled may depend on, besides the sled itself; nothing else can change it. */
export type Around = Pick<Assembly, 'parts' | 'wires' | 'thresholds' | 'insertions' | 'intrusions'>

/** What every piece of a sled's plan sees; faults gather what cannot be built as asked. */
export interface SledJob {
  readonly assembly: Around
  readonly sled: Sled
  /** Parts that go in with the sled. */
  readonly parts: readonly Part[]
  readonly faults: SledFault[]
}

/** What cannot be built as asked, and by how much, mm or degrees; or how many there are too few or too many. */
export interface SledFault {
  readonly problem: Problem
  readonly lack: number
  readonly isCount: boolean
}

/** What a nest sees besides: its part, and what the person typed for it. */
export interface NestJob extends SledJob {
  readonly part: Part
  readonly typed: NestInput | undefined
  /** Where a dimension of this nest is typed: `sleds/main/nests/parts/cell/gap`. */
  readonly path: (field: string) => string
}

export function sledJob(assembly: Around, sled: Sled): SledJob {
  const parts = assembly.parts.filter((p) => p.sled === sled.id && p.goesIn === 'with-sled')
  return { assembly, sled, parts, faults: [] }
}

export function nestJob(job: SledJob, part: Part): NestJob {
  const typed = job.sled.input.nests?.find((n) => n.part === part.id)
  return { ...job, part, typed, path: (field) => `sleds/${job.sled.id}/nests/${part.id}/${field}` }
}

/** A dimension nothing can be built from: the parameter, the value got, and the nearest that works; `lack` is how far it is off. */
export function cannot(
  job: SledJob,
  path: string,
  got: string,
  limit: string,
  hint: string,
  lack: number,
  isCount = false,
): void {
  const found = problem('does-not-fit', path, inHundredths(got), inHundredths(limit), inHundredths(hint))
  // Two pieces of one sled that ask the same say it once.
  if (job.faults.some(({ problem: o }) => o.path === path && o.got === found.got && o.limit === found.limit)) return
  job.faults.push({ problem: found, lack: Math.abs(lack), isCount })
}

/** Nobody measures finer: 82.9, not what a sum of such numbers is to a computer. */
const inHundredths = (text: string): string => text.replace(/\d+\.\d{3,}/g, (n) => String(Number(Number(n).toFixed(2))))

/** Two heights that leave less than 1 mm between them, or stand the wrong way round. */
export function tooShort(job: SledJob, path: string, z0: number, z1: number): boolean {
  if (z1 - z0 >= 1) return false
  const hint = `The nearest that works is ${(z0 + 1).toFixed(1)}; or swap them.`
  cannot(job, path, `z ${z1}`, `at least 1 mm more than from, ${z0}`, hint, 1 - (z1 - z0))
  return true
}

export const setting = (job: { readonly assembly: Around }, id: ThresholdId): number =>
  job.assembly.thresholds[id].value

/** Length left over at each end of a closed nest, so that the part goes in at the print error's worst, mm. */
export const axialSlack = (job: SledJob): number => setting(job, 'axial-gap') / 2 + most(job.sled.print.error)

/** Largest radius of the sled beside a stretch of the axis, mm. */
export function outerRadius(sled: Sled, z0: number, z1: number): number {
  const beside = sled.pieces.filter((p) => p.z1 > z0 && p.z0 < z1).map((p) => p.radius)
  const rings = sled.rings.filter((r) => r.z1 > z0 && r.z0 < z1).map((r) => r.radius)
  return Math.max(0, ...beside, ...rings)
}

/** Least radius of the sled's body beside a stretch of the axis, mm. */
export function innerRadius(sled: Sled, z0: number, z1: number): number {
  const beside = sled.pieces.filter((p) => p.z1 > z0 && p.z0 < z1).map((p) => p.radius)
  return beside.length > 0 ? Math.min(...beside) : Math.min(...sled.pieces.map((p) => p.radius))
}

/** A height typed inside the sled: where it is drawn. */
export const drawnAt = (sled: Sled, list: string, id: string, field: 'z' | 'from' | 'to'): number | undefined =>
  sled.drawn.get(`sleds/${sled.id}/${list}/${id}/${field}`)

/** How far past the outside a cut goes on, so that it leaves no skin, mm. */
export const beyond = 1
/** Pieces that are one reach into each other by this much, so that no two faces merely touch, mm. */
export const overlap = 0.05
