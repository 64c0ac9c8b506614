import { type Problem, problem } from '../problem/problem.ts'
import type { Project } from './schema/project.ts'

/**
 * The most a project may hold before a verdict on it would take minutes: several times the largest hilt anybody
 * builds. Every list also has its own limit in the schema.
 */
const most = {
  steps: 1000,
  parts: 200,
  /** Parts with their components and the corners of their outlines. */
  pieces: 1000,
  /** Insertions and states: each is looked at for itself. */
  moments: 60,
  /** Pieces × what they can meet × moments. */
  meetings: 200_000,
}

/** What is too much in a project, so that no file can keep the program busy for ever. */
export function tooMuch(p: Project): Problem[] {
  const steps = sum(p.sections, (s) => s.bore.length)
  const pieces = sum(p.parts, ({ body }) =>
    body?.shape === 'outline' ? body.outline.length + (body.components?.length ?? 0) : 1,
  )
  const moments = p.insertions.length + p.states.length
  // A slot in the wall divides the bore beside it into two pieces.
  const obstacles = steps + 2 * p.features.length + p.screws.length
  const meetings = pieces * obstacles * Math.max(1, moments)
  return [
    over('sections', 'steps of all bores', steps, most.steps),
    over('parts', 'parts', p.parts.length, most.parts),
    over('parts', 'pieces of all parts', pieces, most.pieces),
    over('insertions', 'insertions and states', moments, most.moments),
    over('', 'pieces × obstacles × insertions and states', meetings, most.meetings),
  ].flatMap((found) => found ?? [])
}

const sum = <T>(list: readonly T[], of: (item: T) => number): number => list.reduce((n, item) => n + of(item), 0)

function over(path: string, what: string, got: number, limit: number): Problem | undefined {
  return got <= limit
    ? undefined
    : problem(
        'too-large',
        path,
        `${got} ${what}`,
        `at most ${limit}`,
        'A hilt has far fewer. Is a list repeated? Else split the project.',
      )
}
