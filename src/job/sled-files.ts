import type { Kernel } from '../../geometry/kernel/manifold.ts'
import { stl } from '../../geometry/mesh/stl.ts'
import { bad, good, type Outcome, type Problem, problem } from '../problem/problem.ts'
import type { Sled } from '../resolve/assembly.ts'
import type { Answer } from './answer.ts'
import { type BuiltSled, solidProblem, trySled } from './build-sled.ts'
import { type FileLayout, layOut, type PlacedBody } from './lay-out.ts'

/** A sled with its bodies where their files have them. */
export interface PlacedSled extends Pick<BuiltSled, 'sled' | 'plan'> {
  readonly bodies: readonly PlacedBody[]
}

/** Every sled of an answer, ready to leave. */
export interface SledSet {
  readonly layout: FileLayout
  readonly sleds: readonly PlacedSled[]
  /** False in spite of a clash or of the gate: whoever wants files all the same gets them marked. */
  readonly proven: boolean
  /** What the gate has against them. */
  readonly problems: readonly Problem[]
}

export const sledFormats = ['stl', '3mf'] as const
export type SledFormat = (typeof sledFormats)[number]

export interface NamedFile {
  readonly name: string
  readonly bytes: Uint8Array<ArrayBuffer>
  readonly sled: string
  /** The one body it holds; undefined where it holds all of the sled's. */
  readonly body: string | undefined
}

/** Word in the name of a file that was forced out. */
export const unproven = 'UNPROVEN'

/**
 * Every sled of an answer, built and laid out. Fails where there is no sled to draw, or where no body could be made
 * at all.
 */
export function sledSet(kernel: Kernel, answer: Answer, layout: FileLayout = 'printed'): Outcome<SledSet> {
  if (answer.assembly.sleds.length === 0) return bad(...noSled(answer))
  const problems: Problem[] = []
  const sleds: PlacedSled[] = []
  for (const { id } of answer.assembly.sleds) {
    const tried = trySled(kernel, answer.assembly, id)
    if (!tried.ok) return tried
    const { sled, plan } = tried.value
    const bodies = layOut(tried.value, layout)
    problems.push(...tried.value.problems, ...bodies.flatMap((b) => movedFaults(b, sled)))
    sleds.push({ sled, plan, bodies })
  }
  if (sleds.every((s) => s.bodies.length === 0)) return bad(...problems)
  return good({ layout, sleds, proven: answer.verdict !== 'clash' && problems.length === 0, problems })
}

/** What only came of moving a body to its place in the file. */
function movedFaults({ body, report }: PlacedBody, sled: Sled): Problem[] {
  if (body.report.faults.length > 0) return []
  return report.faults.map((fault) => solidProblem(sled, fault, 'laid out, '))
}

export interface SledFilesAsk {
  /** What every file's name begins with. */
  readonly base: string
  /** Title of the job, for readers that show one. */
  readonly job: string
  readonly formats?: readonly SledFormat[]
}

/** The files of a set: for each sled an STL of each body, then one 3MF of them all. Same set, same bytes. */
export async function sledFiles(set: SledSet, ask: SledFilesAsk): Promise<readonly NamedFile[]> {
  const { formats = sledFormats } = ask
  const files: NamedFile[] = []
  for (const s of set.sleds.filter((x) => x.bodies.length > 0)) {
    if (formats.includes('stl')) files.push(...s.bodies.map((b) => stlFile(set, s, b, ask)))
    if (formats.includes('3mf')) files.push(await threeMfFile(set, s, ask))
  }
  return files
}

function stlFile(set: SledSet, { sled }: PlacedSled, { body, mesh }: PlacedBody, { base }: SledFilesAsk): NamedFile {
  return {
    name: `${base}-${stemOf(set, sled.id, body.id)}${ending(set)}.stl`,
    bytes: stl(mesh, marked(set, body.name)),
    sled: sled.id,
    body: body.id,
  }
}

/** A body's id begins with its sled's, so it stands alone, unless a body of another sled is called the same. */
function stemOf({ sleds }: SledSet, sled: string, body: string): string {
  const namesakes = sleds.filter((s) => s.bodies.some((b) => b.body.id === body))
  return namesakes.length === 1 && (body === sled || body.startsWith(`${sled}-`)) ? body : `${sled}-${body}`
}

async function threeMfFile(set: SledSet, { sled, bodies }: PlacedSled, ask: SledFilesAsk): Promise<NamedFile> {
  const { threeMf } = await import('./three-mf.ts')
  const bytes = threeMf({
    title: marked(set, [ask.job, sled.name].filter((t) => t !== '').join(': ')),
    description: set.layout === 'printed' ? 'Sled, laid out to be printed' : 'Sled, as it lies in the hilt',
    objects: bodies.map(({ body, mesh }) => ({ name: marked(set, body.name || body.id), mesh })),
  })
  return { name: `${ask.base}-${sled.id}${ending(set)}.3mf`, bytes, sled: sled.id, body: undefined }
}

const marked = ({ proven }: SledSet, text: string): string => (proven ? text : `${unproven} ${text}`)

/** What every name of a set ends with before its type. */
export const ending = ({ layout, proven }: Pick<SledSet, 'layout' | 'proven'>): string =>
  `${layout === 'assembled' ? '-assembled' : ''}${proven ? '' : `-${unproven}`}`

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
