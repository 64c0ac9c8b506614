import type { Presets } from '../presets/presets.ts'
import type { Problem, ProblemCode } from '../problem/problem.ts'
import { problem } from '../problem/problem.ts'
import type { Project } from '../project/schema/project.ts'
import { type ThresholdId, type Thresholds, thresholdDefinitions, thresholdsOf } from './thresholds.ts'

/** Something that is there but not measured: the checks that need it say "not checked". */
export interface Missing {
  readonly path: string
  readonly what: string
  readonly hint: string
  /** Bodies that could not be made for lack of it, by what they would have been of. */
  readonly of: string
}

/** What resolving gathers on its way: problems end it, questions and missing inputs go into the assembly. */
export interface Context {
  readonly project: Project
  readonly presets: Presets
  readonly thresholds: Thresholds
  readonly problems: Problem[]
  readonly questions: Problem[]
  readonly missing: Missing[]
  /** Structural choices nobody made, in words. */
  readonly assumptions: string[]
}

export function contextOf(project: Project, presets: Presets): Context {
  const problems: Problem[] = []
  for (const t of project.thresholds) {
    const known = thresholdDefinitions.find((d) => d.id === t.id)
    if (!known)
      problems.push(
        problem(
          'unknown-value',
          `thresholds/${t.id}`,
          t.id,
          thresholdDefinitions.map((d) => d.id).join(', '),
          'Use one of these settings.',
        ),
      )
    else if (!(t.value >= known.min && t.value <= known.max))
      problems.push(
        problem(
          'out-of-range',
          `thresholds/${t.id}/value`,
          t.value,
          `${known.min} to ${known.max} ${known.unit}`.trim(),
          `The default is ${known.value}.`,
        ),
      )
  }
  return {
    project,
    presets,
    thresholds: thresholdsOf(project.thresholds),
    problems,
    questions: [],
    missing: [],
    assumptions: [],
  }
}

export const limitOf = (ctx: { readonly thresholds: Thresholds }, id: ThresholdId): number => ctx.thresholds[id].value

export function wrong(
  ctx: Context,
  code: ProblemCode,
  path: string,
  got: unknown,
  limit: string,
  hint: string,
): undefined {
  ctx.problems.push(problem(code, path, got, limit, hint))
  return undefined
}

export function ask(ctx: Context, path: string, got: unknown, limit: string, hint: string): void {
  ctx.questions.push(problem('suspicious', path, got, limit, hint))
}
