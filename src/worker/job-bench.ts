import type { Finding, Fix, NotChecked } from '../checks/finding.ts'
import { overall, type Verdict } from '../checks/verdict.ts'
import { advice } from '../job/advice.ts'
import { type Answer, answer } from '../job/answer.ts'
import type { FileLayout } from '../job/lay-out.ts'
import type { SledReport } from '../job/sled-report.ts'
import { soFar } from '../job/so-far.ts'
import { type Comparison, compare } from '../papers/compare.ts'
import { type CrossSectionView, crossSectionView } from '../papers/cross-section.ts'
import { dimensionsOf } from '../papers/dimensions.ts'
import { type GapStripView, gapStripView } from '../papers/gap-strip.ts'
import type { InsertionWay } from '../papers/insertion-way.ts'
import { type LengthwiseView, lengthwiseView } from '../papers/lengthwise.ts'
import { type PartHandle, partHandles } from '../papers/part-handles.ts'
import { type Place, placesOf } from '../papers/places.ts'
import type { CutOnWay, PushedTo } from '../papers/pushed-cross.ts'
import { type ReadingsView, readingsView } from '../papers/readings-sheet.ts'
import { type PrintFigures, printFiguresOf, type Setting, settingsOf } from '../papers/settings.ts'
import { type Size, sizesOf } from '../papers/sizes.ts'
import type { SledDimension } from '../papers/sled-dimension.ts'
import { typedSizes } from '../papers/typed-sizes.ts'
import { type UnrolledView, unrolledView } from '../papers/unrolled.ts'
import { type PresetChoices, presetChoices } from '../presets/preset-choices.ts'
import type { Presets } from '../presets/presets.ts'
import { good, type Outcome, type Problem } from '../problem/problem.ts'
import type { Read } from '../project/read.ts'
import type { Project } from '../project/schema/project.ts'
import type { Assembly } from '../resolve/assembly.ts'
import type { HeldBack } from './bench.ts'
import type { JobSolids } from './job-solids.ts'
import type { FileWish, MadeFile, Press } from './press.ts'

/** Where the person looks: clock angle of the section, and the state. */
export interface JobLook {
  readonly theta: number
  /** The first state where left out. */
  readonly state?: string
}

/** The drawing that comes with the verdict. */
export interface JobViews {
  readonly lengthwise: LengthwiseView
}

/** What the strips below the section show: they follow the verdict. */
export interface JobStrips {
  readonly gap: GapStripView
  readonly unrolled: UnrolledView
  readonly handles: readonly PartHandle[]
}

/** The cross-section at the cursor. */
export interface JobCross {
  readonly view: CrossSectionView
  readonly handles: readonly PartHandle[]
  /** What is pushed in it, and how far; undefined where all is in its place. */
  readonly pushed?: CutOnWay
}

/** Everything the page shows of a job, as plain data. */
export interface JobReport {
  readonly verdict: Verdict
  readonly findings: readonly Finding[]
  readonly notChecked: readonly NotChecked[]
  readonly questions: readonly Problem[]
  readonly assumptions: readonly string[]
  readonly sizes: readonly Size[]
  /** Where things lie, so that a place can be said another way. */
  readonly places: readonly Place[]
  readonly states: readonly { readonly id: string; readonly name: string }[]
  readonly views: JobViews
}

export interface JobSettings {
  readonly settings: readonly Setting[]
  /** One for each sled that could be drawn. */
  readonly printing: readonly PrintFigures[]
}

/** The parts of the worker that are fetched when they are first needed. */
export interface Fetched {
  readonly presets: () => Promise<Presets>
  readonly press: () => Promise<Press>
  readonly reader: () => Promise<(text: string) => Outcome<Read>>
}

/** The calls of the work page. Each stands for itself: whoever replaces a stuck worker loses nothing. */
export class JobBench {
  readonly #fetched: Fetched
  #last: { readonly key: string; readonly answer: Outcome<Answer> } | undefined
  #ways: { readonly of: Assembly; readonly ways: readonly InsertionWay[] } | undefined

  constructor(fetched: Fetched) {
    this.#fetched = fetched
  }

  /** All states are judged; the drawings show the one looked at. */
  async judge(project: Project, look: JobLook): Promise<Outcome<JobReport>> {
    const { project: standing, waiting } = soFar(project)
    const answered = await this.#answer(standing)
    if (!answered.ok) return { ok: false, problems: withoutFollowers([...waiting, ...answered.problems]) }
    const { assembly, findings } = answered.value
    const taken = sizesOf(assembly)
    const typed = typedSizes(project, await this.#fetched.presets())
    const notChecked = [...answered.value.notChecked, ...waiting.map(notYet)]
    return good({
      verdict: waiting.length > 0 ? overall([answered.value.verdict, 'not-checked']) : answered.value.verdict,
      findings: findings.map((f) => ({ ...f, fix: advice(f.fix) })),
      notChecked,
      questions: assembly.questions,
      assumptions: assembly.assumptions,
      sizes: [...taken, ...typed.filter(({ path }) => !taken.some((s) => s.path === path))],
      places: placesOf(assembly),
      states: assembly.states.map(({ id, name }) => ({ id, name })),
      views: viewsOf(answered.value, look),
    })
  }

  /**
   * The fixes of every finding that does not hold, tried one after the other; undefined where the job has changed
   * meanwhile. Whoever types on waits for one trial at most.
   */
  async fixes(project: Project): Promise<Readonly<Record<string, readonly Fix[]>> | undefined> {
    const { project: standing } = soFar(project)
    const answered = await this.#answer(standing)
    if (!answered.ok) return {}
    const presets = await this.#fetched.presets()
    const { triedFixes } = await import('./tried-fixes.ts')
    const { findings, notChecked } = answered.value
    const answerTo = (next: Project) => answer(next, presets)
    return triedFixes(
      { project: standing, presets, findings, notChecked, answerTo },
      () => this.#last?.answer !== answered,
    )
  }

  /** The drawings alone: only the eye has moved. */
  async look(project: Project, look: JobLook): Promise<Outcome<JobViews>> {
    const answered = await this.#answer(soFar(project).project)
    return answered.ok ? good(viewsOf(answered.value, look)) : answered
  }

  /** The least gap along the hilt, the unrolled map, and by what parts can be taken hold of. */
  async strips(project: Project, state?: string): Promise<Outcome<JobStrips>> {
    const answered = await this.#answer(soFar(project).project)
    if (!answered.ok) return answered
    const { assembly } = answered.value
    return good({
      gap: gapStripView(assembly, state),
      unrolled: unrolledView(assembly, state),
      handles: partHandles(assembly),
    })
  }

  /** The cross-section at a height, and by what parts can be taken hold of in it: none while something is pushed in. */
  async cross(project: Project, z: number, state?: string, pushed?: PushedTo): Promise<Outcome<JobCross>> {
    const answered = await this.#answer(soFar(project).project)
    if (!answered.ok) return answered
    const { assembly } = answered.value
    const way = pushed && (await this.#waysOf(assembly)).find((w) => w.id === pushed.way)
    const cut = way && (await import('../papers/pushed-cross.ts')).pushedCut(assembly, z, way, pushed.depth)
    return good({
      view: crossSectionView(assembly, z, cut?.state ?? state, cut?.way),
      handles: cut ? [] : partHandles(assembly),
      ...(cut && { pushed: cut.pushed }),
    })
  }

  /** The whole hilt with every sled, in a state (the first where left out). */
  async solids(project: Project, state?: string): Promise<Outcome<JobSolids>> {
    const answered = await this.#answer(soFar(project).project)
    return answered.ok ? good((await this.#fetched.press()).solids(project, answered.value, state)) : answered
  }

  /** Every move of the insertion list with its gaps and touches. The dearest call of all: ask when the hands rest. */
  async ways(project: Project): Promise<Outcome<readonly InsertionWay[]>> {
    const answered = await this.#answer(soFar(project).project)
    return answered.ok ? good(await this.#waysOf(answered.value.assembly)) : answered
  }

  /** The files of every sled. A clash holds them back unless they are forced, and then their names say so. */
  async make(project: Project, wish: FileWish): Promise<Outcome<readonly MadeFile[] | HeldBack>> {
    const answered = await this.#answer(project)
    if (!answered.ok) return answered
    const clash = answered.value.findings.find((f) => f.status === 'clash')
    return clash && !wish.force ? good({ clash }) : (await this.#fetched.press()).files(answered.value, wish, project)
  }

  /** What the printed bodies of every sled are. */
  async report(project: Project, layout: FileLayout): Promise<Outcome<SledReport>> {
    const answered = await this.#answer(project)
    return answered.ok ? (await this.#fetched.press()).report(project, answered.value, layout) : answered
  }

  /** What the readings of one dimension come to, taken by itself. */
  async readings(project: Project, path: string): Promise<Outcome<ReadingsView>> {
    return readingsView(project, await this.#fetched.presets(), path)
  }

  /** What the page offers from presets: parts, wires, tools, processes, materials. */
  async choices(): Promise<PresetChoices> {
    return presetChoices(await this.#fetched.presets())
  }

  /** Every dimension of every sled. */
  async dimensions(project: Project): Promise<Outcome<readonly SledDimension[]>> {
    const answered = await this.#answer(soFar(project).project)
    return answered.ok ? good(dimensionsOf(project, answered.value.assembly)) : answered
  }

  /** The limits that everything is compared with, and what each sled is printed with. */
  async settings(project: Project): Promise<Outcome<JobSettings>> {
    const answered = await this.#answer(soFar(project).project)
    if (!answered.ok) return answered
    const { assembly } = answered.value
    return good({ settings: settingsOf(assembly), printing: printFiguresOf(assembly) })
  }

  /** What differs between two jobs, and what came of it. Fails with what is wrong in either. */
  async compare(before: Project, after: Project): Promise<Outcome<Comparison>> {
    const was = await this.#answer(soFar(before).project)
    if (!was.ok) return was
    const is = await this.#answer(soFar(after).project)
    if (!is.ok) return is
    const presets = await this.#fetched.presets()
    const called = (id: string) => presets.byId(id)?.name
    return good(compare({ ...was.value, project: before }, { ...is.value, project: after }, called))
  }

  /** A project from the text of a file. */
  async read(text: string): Promise<Outcome<Read>> {
    return (await this.#fetched.reader())(text)
  }

  async #waysOf(assembly: Assembly): Promise<readonly InsertionWay[]> {
    const { insertionWays } = await import('../papers/insertion-way.ts')
    if (this.#ways?.of !== assembly) this.#ways = { of: assembly, ways: insertionWays(assembly) }
    return this.#ways.ways
  }

  async #answer(project: Project): Promise<Outcome<Answer>> {
    const key = JSON.stringify(project)
    if (this.#last?.key !== key) this.#last = { key, answer: answer(project, await this.#fetched.presets()) }
    return this.#last.answer
  }
}

const notYet = ({ path, got, limit, hint }: Problem): NotChecked => ({
  id: `waiting:${path}`,
  check: 'inputs',
  title: `Not there yet: ${got.replaceAll('"', '')}`,
  parts: [],
  missing: limit,
  path,
  hint,
})

const viewsOf = ({ assembly }: Answer, { theta, state }: JobLook): JobViews => ({
  lengthwise: lengthwiseView(assembly, theta, state),
})

/** While a section's length is empty, much lies outside the hilt: that goes with it, and is not told besides. */
function withoutFollowers(problems: readonly Problem[]): readonly Problem[] {
  const short = problems.some((p) => p.code === 'missing' && /^sections\/[^/]+\/length$/.test(p.path))
  return short ? problems.filter((p) => p.code !== 'outside-hilt') : problems
}
