import { loadKernel } from '../../geometry/kernel/load.ts'
import type { Kernel } from '../../geometry/kernel/manifold.ts'
import type { Answer } from '../job/answer.ts'
import { trySled } from '../job/build-sled.ts'
import type { FileLayout } from '../job/lay-out.ts'
import { reportOf } from '../job/report.ts'
import { type SledFormat, sledFiles, sledSet } from '../job/sled-files.ts'
import { reportFile, type SledReport, sledReport } from '../job/sled-report.ts'
import { type ContentSolid, solidContents } from '../papers/solid-contents.ts'
import { good, type Outcome, type Problem } from '../problem/problem.ts'
import type { Project } from '../project/schema/project.ts'
import { type JobSolids, solidsOfJob } from './job-solids.ts'

/**
 * What needs the kernel: solids and files. Apart from the bench, and fetched with the kernel when the first solid or
 * file is asked for: a verdict waits for none of it.
 */

/** A printed body for the screen: typed arrays only. */
export interface SolidBody {
  readonly id: string
  readonly vertices: Float32Array
  readonly triangles: Uint32Array
}

export interface SolidView {
  readonly bodies: readonly SolidBody[]
  readonly contents: readonly ContentSolid[]
  /** Millimetres, and cubic millimetres. */
  readonly size: readonly [number, number, number]
  readonly volume: number
  /** What keeps the bodies from leaving as a file. */
  readonly problems: readonly Problem[]
}

export interface MadeFile {
  readonly name: string
  readonly bytes: Uint8Array
}

export interface FileWish {
  /** What every name begins with, and the title inside. */
  readonly base: string
  readonly job: string
  readonly formats: readonly SledFormat[]
  readonly layout: FileLayout
  /** Files all the same where a clash or the gate holds them back; their names then say so. */
  readonly force: boolean
  /** The report on them besides, as JSON. */
  readonly report?: boolean
}

export interface Press {
  readonly solid: (answer: Answer, sled: string) => Outcome<SolidView>
  /** The whole hilt with every sled. */
  readonly solids: (project: Project, answer: Answer, state?: string) => JobSolids
  /** Fails with what the gate has against them. A clash is looked at before. */
  readonly files: (answer: Answer, wish: FileWish, project?: Project) => Promise<Outcome<readonly MadeFile[]>>
  /** What the bodies are, laid out: volume, mass, thinnest wall, which way up and why. */
  readonly report: (project: Project, answer: Answer, layout: FileLayout) => Promise<Outcome<SledReport>>
}

/** A press with its kernel. `wasmUrl` tells a browser where the kernel's binary lies. */
export async function startPress(wasmUrl?: string): Promise<Press> {
  const kernel = await loadKernel(wasmUrl)
  return {
    solid: (answer, sled) => solidOf(kernel, answer, sled),
    solids: (project, answer, state) => solidsOfJob(kernel, project, answer, state),
    files: (answer, wish, project) => filesOf(kernel, answer, wish, project),
    report: (project, answer, layout) => reportOn(kernel, project, answer, layout),
  }
}

function solidOf(kernel: Kernel, { assembly }: Answer, sled: string): Outcome<SolidView> {
  const built = trySled(kernel, assembly, sled)
  if (!built.ok) return built
  const { bodies, problems } = built.value
  const bounds = bodies.map((b) => b.report.bounds)
  const extent = (axis: 0 | 1 | 2): number =>
    bounds.length === 0 ? 0 : Math.max(...bounds.map((b) => b.max[axis])) - Math.min(...bounds.map((b) => b.min[axis]))
  return good({
    bodies: bodies.map(({ id, mesh }) => ({ id, vertices: mesh.vertices, triangles: mesh.triangles })),
    contents: solidContents(assembly, sled),
    size: [extent(0), extent(1), extent(2)],
    volume: bodies.reduce((sum, b) => sum + b.report.volume, 0),
    problems,
  })
}

async function reportOn(
  kernel: Kernel,
  project: Project,
  answer: Answer,
  layout: FileLayout,
): Promise<Outcome<SledReport>> {
  const made = sledSet(kernel, answer, layout)
  return made.ok ? good(await sledReport(made.value, [], reportOf(answer, { project, unknownFields: [] }))) : made
}

/** By the same build as the command line's; what is not sure to fit says so in its name. */
async function filesOf(
  kernel: Kernel,
  answer: Answer,
  wish: FileWish,
  project: Project | undefined,
): Promise<Outcome<readonly MadeFile[]>> {
  const { base, job, formats, layout, force, report } = wish
  const made = sledSet(kernel, answer, layout)
  if (!made.ok) return made
  if (!made.value.proven && !force) return { ok: false, problems: made.value.problems }
  const named = answer.verdict === 'unsure' ? `${base}-unsure` : base
  const files = await sledFiles(made.value, { base: named, job, formats })
  const told =
    report && project
      ? [reportFile(await sledReport(made.value, files, reportOf(answer, { project, unknownFields: [] })), named)]
      : []
  return good([...files.map(({ name, bytes }) => ({ name, bytes })), ...told])
}
