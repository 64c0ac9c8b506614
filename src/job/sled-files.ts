import type { Kernel } from '../../geometry/kernel/manifold.ts'
import type { GateReport } from '../../geometry/mesh/gate.ts'
import { stl } from '../../geometry/mesh/stl.ts'
import type { Dimension, Plan } from '../../geometry/plan/plan.ts'
import { bad, good, type Outcome, type Problem, problem } from '../problem/problem.ts'
import type { Answer } from './answer.ts'
import { type PrintedBody, trySled } from './build-sled.ts'
import { asPrinted } from './printed.ts'
import type { Report } from './report.ts'

/** One printed body as it is told of beside its file. Lengths in mm, volume in mm³, in the frame of the file. */
export interface BodyReport {
  readonly sled: string
  readonly body: string
  readonly name: string
  readonly file: string
  readonly volume: number
  readonly bounds: GateReport['bounds']
  readonly triangles: number
  readonly pieces: number
  /** What was added to its heights in the hilt so that it stands on z = 0. */
  readonly raised: number
  /** What the gate found wrong; empty where it passed. */
  readonly faults: readonly string[]
}

/** A dimension of the plan, with the nest it belongs to and the part that asked for it. */
export interface PlannedDimension extends Dimension {
  readonly sled: string
  readonly nest: string
  readonly by: string
}

/** What stands in the JSON file beside the bodies. */
export interface SledReport {
  readonly format: 'sledwright-sled-report'
  readonly version: 1
  readonly units: 'mm'
  readonly layout: string
  /** False where the files were forced out in spite of a clash or of the gate. */
  readonly proven: boolean
  readonly bodies: readonly BodyReport[]
  readonly dimensions: readonly PlannedDimension[]
  /** What the gate had against the bodies that were forced out. */
  readonly problems: readonly Problem[]
  readonly report: Report
}

export interface NamedFile {
  readonly name: string
  readonly bytes: Uint8Array
}

export interface SledFiles {
  /** The bodies as binary STL, and the report last. */
  readonly files: readonly NamedFile[]
  readonly report: SledReport
  /** What the gate has against them. */
  readonly problems: readonly Problem[]
}

export interface SledFilesAsk {
  readonly answer: Answer
  readonly report: Report
  /** What every file's name begins with. */
  readonly base: string
}

/** Word in the name of a file that was forced out. */
export const unproven = 'UNPROVEN'

/**
 * The files of every sled of an answer, as printed, and the report on them. Fails where there is no sled to draw, or
 * where no body could be made at all.
 */
export function sledFiles(kernel: Kernel, ask: SledFilesAsk): Outcome<SledFiles> {
  const { answer, base, report } = ask
  if (answer.assembly.sleds.length === 0) return bad(...noSled(answer))
  const problems: Problem[] = []
  const dimensions: PlannedDimension[] = []
  const bodies: { sled: string; body: PrintedBody }[] = []
  for (const { id } of answer.assembly.sleds) {
    const tried = trySled(kernel, answer.assembly, id)
    if (!tried.ok) return tried
    problems.push(...tried.value.problems)
    dimensions.push(...dimensionsOf(tried.value.plan))
    bodies.push(...tried.value.bodies.map((body) => ({ sled: id, body })))
  }
  if (bodies.length === 0) return bad(...problems)
  const placed = bodies.map(({ sled, body }) => ({ sled, body, ...asPrinted(body) }))
  for (const { sled, body, report: gated } of placed)
    if (body.report.faults.length === 0) problems.push(...gated.faults.map((fault) => standing(sled, fault)))
  const proven = report.verdict !== 'clash' && problems.length === 0
  const ending = proven ? '' : `-${unproven}`
  const made = placed.map(({ sled, body, mesh, report: gated, raised }) => {
    const name = sled === body.id ? `${base}-${sled}` : `${base}-${sled}-${body.id}`
    const file = `${name}${ending}.stl`
    const { volume, bounds, triangles, shells, faults } = gated
    const told: BodyReport = {
      sled,
      body: body.id,
      name: body.name,
      file,
      volume,
      bounds,
      triangles,
      pieces: shells,
      raised,
      faults: [...new Set([...body.report.faults, ...faults])],
    }
    return { told, file: { name: file, bytes: stl(mesh, proven ? body.name : `${unproven} ${body.name}`) } }
  })
  const full: SledReport = {
    format: 'sledwright-sled-report',
    version: 1,
    units: 'mm',
    layout: 'as printed: standing on the rear end, which lies on z = 0',
    proven,
    bodies: made.map((m) => m.told),
    dimensions,
    problems,
    report,
  }
  const text = new TextEncoder().encode(`${JSON.stringify(full, null, 2)}\n`)
  return good({
    files: [...made.map((m) => m.file), { name: `${base}${ending}.sled.json`, bytes: text }],
    report: full,
    problems,
  })
}

const standing = (sled: string, fault: string): Problem =>
  problem(
    'solid-failed',
    `sleds/${sled}`,
    `as printed, ${fault}`,
    'one closed body of the planned size',
    'Change a dimension of the sled a little and try again.',
  )

/** Why there is no sled: none in the project, or one that cannot be drawn for lack of a reading. */
function noSled({ assembly }: Answer): Problem[] {
  const lacking = assembly.missing.filter((m) => m.of.startsWith('sleds/'))
  if (lacking.length === 0)
    return [
      problem(
        'missing',
        'sleds',
        'no sled',
        'at least one sled',
        'Add one, for example "sleds": [{"id": "main", "name": "sled"}].',
      ),
    ]
  return lacking.map((m) => problem('missing', m.path, undefined, m.what, m.hint))
}

/** Each dimension once, in the order of the plan. */
function dimensionsOf(plan: Plan): PlannedDimension[] {
  const seen = new Set<string>()
  return plan.bodies
    .flatMap((b) => b.items)
    .flatMap((item) => item.dimensions.map((d) => ({ ...d, sled: plan.id, nest: item.nest, by: item.by })))
    .filter((d) => {
      const key = JSON.stringify([d.by, d.nest, d.name, d.path, d.value])
      return !seen.has(key) && seen.add(key)
    })
}
