import type { Kernel } from '../../geometry/kernel/manifold.ts'
import type { Finding, NotChecked } from '../checks/finding.ts'
import type { Verdict } from '../checks/verdict.ts'
import { trySled } from '../job/build-sled.ts'
import { type Layout, type QuickAnswer, type QuickInput, quickCheck } from '../job/quick.ts'
import { reportOf } from '../job/report.ts'
import { sledFiles } from '../job/sled-files.ts'
import { type CrossSectionView, crossSectionView } from '../papers/cross-section.ts'
import { type LengthwiseView, lengthwiseView } from '../papers/lengthwise.ts'
import { type Size, sizesOf } from '../papers/sizes.ts'
import { type ContentSolid, solidContents } from '../papers/solid-contents.ts'
import type { Presets } from '../presets/presets.ts'
import { good, type Outcome, type Problem } from '../problem/problem.ts'

/** Where the person looks: the clock angle of the lengthwise section and the height of the cross-section. */
export interface Look {
  readonly theta: number
  /** At the tightest place where left out. */
  readonly z?: number
}

/** The two drawings of one answer. */
export interface Drawings {
  readonly lengthwise: LengthwiseView
  readonly cross: CrossSectionView
}

/** Everything the page shows of a quick check, as plain data. */
export interface QuickReport extends Drawings {
  readonly verdict: Verdict
  readonly layout: Layout
  readonly findings: readonly Finding[]
  readonly notChecked: readonly NotChecked[]
  readonly questions: readonly Problem[]
  readonly assumptions: readonly string[]
  readonly sizes: readonly Size[]
}

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

/** What a held-back file is held back for. */
export interface HeldBack {
  readonly clash: Finding | undefined
  readonly problems: readonly Problem[]
}

/** The calls of the page. Each stands for itself: whoever replaces a stuck worker loses nothing. */
export class Bench {
  readonly #presets: Presets
  readonly #loadKernel: () => Promise<Kernel>
  #kernel: Promise<Kernel> | undefined
  #last: { readonly key: string; readonly answer: Outcome<QuickAnswer> } | undefined

  constructor(presets: Presets, loadKernel: () => Promise<Kernel>) {
    this.#presets = presets
    this.#loadKernel = loadKernel
  }

  check(input: QuickInput, look: Look): Outcome<QuickReport> {
    const answered = this.#answer(input)
    if (!answered.ok) return answered
    const { answer, layout } = answered.value
    const { assembly, verdict, findings, notChecked } = answer
    return good({
      verdict,
      layout,
      findings,
      notChecked,
      questions: assembly.questions,
      assumptions: assembly.assumptions,
      sizes: sizesOf(assembly),
      ...drawings(answered.value, look),
    })
  }

  draw(input: QuickInput, look: Look): Outcome<Drawings> {
    const answered = this.#answer(input)
    return answered.ok ? good(drawings(answered.value, look)) : answered
  }

  async solid(input: QuickInput): Promise<Outcome<SolidView>> {
    const answered = this.#answer(input)
    if (!answered.ok) return answered
    const { assembly } = answered.value.answer
    const built = trySled(await this.#ready(), assembly, 'sled')
    if (!built.ok) return built
    const { bodies, problems } = built.value
    const [first] = bodies
    const { min, max } = first?.report.bounds ?? { min: [0, 0, 0], max: [0, 0, 0] }
    return good({
      bodies: bodies.map(({ id, mesh }) => ({ id, vertices: mesh.vertices, triangles: mesh.triangles })),
      contents: solidContents(assembly, 'sled'),
      size: [max[0] - min[0], max[1] - min[1], max[2] - min[2]],
      volume: bodies.reduce((sum, b) => sum + b.report.volume, 0),
      problems,
    })
  }

  /** The sled's STL, by the same build as the command line's. Held back on a clash and by the gate. */
  async file(input: QuickInput): Promise<Outcome<QuickFile | HeldBack>> {
    const answered = this.#answer(input)
    if (!answered.ok) return answered
    const { answer, project } = answered.value
    if (answer.verdict === 'clash')
      return good({ clash: answer.findings.find((f) => f.status === 'clash'), problems: [] })
    const report = reportOf(answer, { project, unknownFields: [] })
    const base = answer.verdict === 'unsure' ? 'quick-check-unsure' : 'quick-check'
    const made = sledFiles(await this.#ready(), { answer, report, base })
    if (!made.ok) return made
    const stl = made.value.files.find((f) => f.name.endsWith('.stl'))
    return stl && made.value.problems.length === 0
      ? good(stl)
      : good({ clash: undefined, problems: made.value.problems })
  }

  #answer(input: QuickInput): Outcome<QuickAnswer> {
    const key = JSON.stringify(input)
    if (this.#last?.key !== key) this.#last = { key, answer: quickCheck(input, this.#presets) }
    return this.#last.answer
  }

  /** The kernel is fetched when it is first needed; a failed fetch may be tried again. */
  #ready(): Promise<Kernel> {
    this.#kernel ??= this.#loadKernel().catch((error: unknown) => {
      this.#kernel = undefined
      throw error
    })
    return this.#kernel
  }
}

function drawings({ answer }: QuickAnswer, look: Look): Drawings {
  const tightest = answer.findings.find((f) => f.status !== 'advice' && f.at)
  const z = look.z ?? tightest?.at?.z ?? 0
  return {
    lengthwise: lengthwiseView(answer.assembly, look.theta),
    cross: crossSectionView(answer.assembly, z),
  }
}
