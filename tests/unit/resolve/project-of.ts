import { loadPresets } from '../../../src/presets/presets.ts'
import type { Problem } from '../../../src/problem/problem.ts'
import { checkProject } from '../../../src/project/read.ts'
import type { ProjectInput } from '../../../src/project/schema/project.ts'
import type { Assembly } from '../../../src/resolve/assembly.ts'
import { resolve } from '../../../src/resolve/resolve.ts'

/** A plain tube of 30 × 180 with whatever is given on top. */
export function tube(extra: Partial<ProjectInput> = {}): ProjectInput {
  return {
    format: 'sledwright',
    version: 1,
    sections: [
      { id: 'body', name: 'body', length: 180, outside: [{ diameter: 35 }], bore: [{ id: 'main', diameter: 30 }] },
    ],
    ...extra,
  }
}

export function assemblyOf(project: ProjectInput): Assembly {
  const found = tryResolve(project)
  if (!found.ok) throw new Error(found.problems.map((p) => `${p.path}: ${p.code} ${p.hint}`).join('\n'))
  return found.value
}

export function problemsOf(project: ProjectInput): readonly Problem[] {
  const found = tryResolve(project)
  return found.ok ? [] : found.problems
}

function tryResolve(project: ProjectInput) {
  const read = checkProject(project)
  return read.ok ? resolve(read.value.project, loadPresets()) : read
}
