import { type Answer, answer } from '../../../src/job/answer.ts'
import { demos } from '../../../src/job/demos/index.ts'
import { loadPresets } from '../../../src/presets/presets.ts'
import { checkProject } from '../../../src/project/read.ts'
import type { Project, ProjectInput } from '../../../src/project/schema/project.ts'

export function projectOf(input: unknown): Project {
  const read = checkProject(input)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value.project
}

export function answerTo(input: unknown): Answer {
  const judged = answer(projectOf(input), loadPresets())
  if (!judged.ok) throw new Error(JSON.stringify(judged.problems))
  return judged.value
}

/** A demo as a project file holds it, to be changed by a test. */
export function demo(name: string): ProjectInput {
  const found = demos.find((d) => d.name === name)
  if (!found) throw new Error(`no demo ${name}`)
  return structuredClone(found.project) as ProjectInput
}
