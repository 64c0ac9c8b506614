import { type Judgement, judgeAssembly } from '../checks/judge-assembly.ts'
import type { Presets } from '../presets/presets.ts'
import { bad, good, type Outcome, problem } from '../problem/problem.ts'
import type { Project } from '../project/schema/project.ts'
import type { Assembly } from '../resolve/assembly.ts'
import { resolve } from '../resolve/resolve.ts'

export interface Answer extends Judgement {
  readonly assembly: Assembly
}

export interface AnswerOptions {
  /** Id of one state; every state where left out. */
  readonly state?: string
  /** Id of one hilt of the project; the first where left out. */
  readonly hilt?: string
}

/**
 * The whole answer to a project: what it is, and how it stands. Browser, worker, command line and tests all call
 * this. Fails with the list of what is wrong in the project.
 */
export function answer(project: Project, presets: Presets, options: AnswerOptions = {}): Outcome<Answer> {
  const resolved = resolve(project, presets, options.hilt)
  if (!resolved.ok) return resolved
  const assembly = resolved.value
  const { state } = options
  if (state !== undefined && !assembly.states.some((s) => s.id === state))
    return bad(
      problem(
        'unknown-value',
        'state',
        state,
        assembly.states.map((s) => s.id).join(', '),
        'Name one of these states.',
      ),
    )
  return good({ assembly, ...judgeAssembly(assembly, state) })
}
