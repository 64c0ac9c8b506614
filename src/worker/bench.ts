import type { Finding, Fix, NotChecked } from '../checks/finding.ts'
import { fetchRare } from '../checks/rare.ts'
import type { Verdict } from '../checks/verdict.ts'
import { advice } from '../job/advice.ts'
import { answer as answerOf } from '../job/answer.ts'
import { type Layout, type QuickAnswer, type QuickInput, quickCheck, quickProject } from '../job/quick.ts'
import type { SledFormat } from '../job/sled-files.ts'
import { type CrossSectionView, crossSectionView } from '../papers/cross-section.ts'
import { type LengthwiseView, lengthwiseView } from '../papers/lengthwise.ts'
import { type Size, sizesOf } from '../papers/sizes.ts'
import type { Presets } from '../presets/presets.ts'
import { good, type Outcome, type Problem } from '../problem/problem.ts'
import type { Project } from '../project/schema/project.ts'
import type { MadeFile, Press, SolidView } from './press.ts'

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

/** The clash that holds a file back. */
export interface HeldBack {
  readonly clash: Finding
}

/** The calls of the page. Each stands for itself: whoever replaces a stuck worker loses nothing. */
export class Bench {
  readonly #presets: Presets
  readonly #startPress: () => Promise<Press>
  #last: { readonly key: string; readonly answer: Outcome<QuickAnswer> } | undefined

  constructor(presets: Presets, startPress: () => Promise<Press>) {
    this.#presets = presets
    this.#startPress = startPress
  }

  check(input: QuickInput, look: Look): Outcome<QuickReport> {
    const answered = this.#answer(input)
    if (!answered.ok) return answered
    const { answer, layout } = answered.value
    const { assembly, verdict, findings, notChecked } = answer
    return good({
      verdict,
      layout,
      findings: findings.map((f) => ({ ...f, fix: advice(f.fix) })),
      notChecked,
      questions: assembly.questions,
      assumptions: assembly.assumptions,
      sizes: sizesOf(assembly),
      ...drawings(answered.value, look),
    })
  }

  /** The fixes of every finding that does not hold, each tried; undefined where other numbers came meanwhile. */
  async mend(input: QuickInput): Promise<Readonly<Record<string, readonly Fix[]>> | undefined> {
    const answered = this.#answer(input)
    if (!answered.ok) return {}
    const { answer, project } = answered.value
    // A fix may ask for what no quick check has of itself.
    const [{ triedFixes }] = await Promise.all([import('./tried-fixes.ts'), fetchRare()])
    const job = { project, findings: answer.findings, notChecked: answer.notChecked }
    const answerTo = (next: Project) => answerOf(next, this.#presets)
    return triedFixes({ ...job, presets: this.#presets, answerTo }, () => this.#last?.answer !== answered)
  }

  draw(input: QuickInput, look: Look): Outcome<Drawings> {
    const answered = this.#answer(input)
    return answered.ok ? good(drawings(answered.value, look)) : answered
  }

  async solid(input: QuickInput): Promise<Outcome<SolidView>> {
    const answered = this.#answer(input)
    return answered.ok ? (await this.#startPress()).solid(answered.value.answer, 'sled') : answered
  }

  /** The sled as a file. A clash holds it back, and so does the gate. */
  async file(input: QuickInput, format: SledFormat): Promise<Outcome<MadeFile | HeldBack>> {
    const answered = this.#answer(input)
    if (!answered.ok) return answered
    const clash = answered.value.answer.findings.find((f) => f.status === 'clash')
    if (clash) return good({ clash })
    const press = await this.#startPress()
    const made = await press.files(answered.value.answer, { ...quickWish, formats: [format] })
    if (!made.ok) return made
    const [file] = made.value
    return file ? good(file) : { ok: false, problems: [] }
  }

  /** The whole job that these few numbers already are, to go on with. */
  async grow(input: QuickInput, layout: Layout): Promise<Project> {
    const { grown } = await import('../job/grown.ts')
    const answered = this.#answer(input)
    // As it was judged, with the room that it was given; what cannot be judged goes on as it was typed.
    return grown(answered.ok ? answered.value.project : quickProject(input, layout), input, this.#presets)
  }

  #answer(input: QuickInput): Outcome<QuickAnswer> {
    const key = JSON.stringify(input)
    if (this.#last?.key !== key) this.#last = { key, answer: quickCheck(input, this.#presets) }
    return this.#last.answer
  }
}

const quickWish = { base: 'quick-check', job: 'Quick check', layout: 'printed', force: false } as const

function drawings({ answer }: QuickAnswer, look: Look): Drawings {
  const tightest = answer.findings.find((f) => f.status !== 'advice' && f.at)
  const z = look.z ?? tightest?.at?.z ?? 0
  return {
    lengthwise: lengthwiseView(answer.assembly, look.theta),
    cross: crossSectionView(answer.assembly, z),
  }
}
