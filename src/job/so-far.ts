import { type Problem, problem } from '../problem/problem.ts'
import type { Project } from '../project/schema/project.ts'
import { withoutUnfinished } from './unfinished.ts'

/** A job that is still being put together, as far as it goes. */
export interface SoFar {
  readonly project: Project
  /** What was left out of it, and what it waits for. Nothing of it is judged. */
  readonly waiting: readonly Problem[]
}

/**
 * The job without what was begun and not measured, and without the sleds that have no two ends and no part yet to take them from, so that a hilt can be drawn while
 * it is measured. A sled that anything but its own move names stays, and is found wrong like any other.
 */
export function soFar(whole: Project): SoFar {
  const { project, waiting: unfinished } = withoutUnfinished(whole)
  const { sleds, parts, wires } = project
  const named = (sled: string): boolean =>
    parts.some((p) => (p.on ?? `sleds/${sleds[0]?.id}`) === `sleds/${sled}`) || wires.some((w) => w.sled === sled)
  const waiting = sleds.filter((s) => (s.from === undefined || s.to === undefined) && !named(s.id))
  if (waiting.length === 0) return { project, waiting: unfinished }
  const moves = waiting.map((s) => `sleds/${s.id}`)
  return {
    project: {
      ...project,
      sleds: sleds.filter((s) => !waiting.includes(s)),
      insertions: project.insertions.filter((i) => !moves.includes(i.moves)),
    },
    waiting: [
      ...unfinished,
      ...waiting.map((s) =>
        problem(
          'missing',
          'parts',
          `${s.name ?? s.id}, with nothing on it`,
          'a first part, or its two ends',
          `Put the first part on ${s.name ?? s.id}: it grows around what it carries.`,
        ),
      ),
    ],
  }
}
