import { loadKernel } from '../../geometry/kernel/load.ts'
import type { Kernel } from '../../geometry/kernel/manifold.ts'
import { trySled } from '../job/build-sled.ts'
import type { QuickAnswer } from '../job/quick.ts'
import { type SledFormat, sledFiles, sledSet } from '../job/sled-files.ts'
import { type ContentSolid, solidContents } from '../papers/solid-contents.ts'
import { good, type Outcome, type Problem } from '../problem/problem.ts'

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

export interface QuickFile {
  readonly name: string
  readonly bytes: Uint8Array
}

export interface Press {
  readonly solid: (quick: QuickAnswer) => Outcome<SolidView>
  /** Fails with what the gate has against it. */
  readonly file: (quick: QuickAnswer, format: SledFormat) => Promise<Outcome<QuickFile>>
}

/** A press with its kernel. `wasmUrl` tells a browser where the kernel's binary lies. */
export async function startPress(wasmUrl?: string): Promise<Press> {
  const kernel = await loadKernel(wasmUrl)
  return { solid: (quick) => solidOf(kernel, quick), file: (quick, format) => fileOf(kernel, quick, format) }
}

function solidOf(kernel: Kernel, { answer }: QuickAnswer): Outcome<SolidView> {
  const built = trySled(kernel, answer.assembly, 'sled')
  if (!built.ok) return built
  const { bodies, problems } = built.value
  const { min, max } = bodies[0]?.report.bounds ?? { min: [0, 0, 0], max: [0, 0, 0] }
  return good({
    bodies: bodies.map(({ id, mesh }) => ({ id, vertices: mesh.vertices, triangles: mesh.triangles })),
    contents: solidContents(answer.assembly, 'sled'),
    size: [max[0] - min[0], max[1] - min[1], max[2] - min[2]],
    volume: bodies.reduce((sum, b) => sum + b.report.volume, 0),
    problems,
  })
}

/** By the same build as the command line's; what is not sure to fit says so in its name. */
async function fileOf(kernel: Kernel, { answer }: QuickAnswer, format: SledFormat): Promise<Outcome<QuickFile>> {
  const made = sledSet(kernel, answer)
  if (!made.ok) return made
  if (!made.value.proven) return { ok: false, problems: made.value.problems }
  const base = answer.verdict === 'unsure' ? 'quick-check-unsure' : 'quick-check'
  const [file] = await sledFiles(made.value, { base, job: 'Quick check', formats: [format] })
  return file ? good({ name: file.name, bytes: file.bytes }) : { ok: false, problems: made.value.problems }
}
