import { type Problem, problem } from '../problem/problem.ts'
import { referrersOf } from '../project/referrers.ts'
import type { Project } from '../project/schema/project.ts'
import type { SoFar } from './so-far.ts'

/**
 * The job without the sections, features and screws that were begun and have a size still empty, so that the rest is
 * drawn and judged while they are typed. What something else names stays, and is found wrong like any other; so does
 * the only section.
 */
export function withoutUnfinished(project: Project): SoFar {
  const waiting: Problem[] = []
  const left = (list: 'features' | 'screws', before: Project): Project => {
    const gone = before[list].filter((record) => {
      const at = emptyIn(record, `${list}/${record.id}`)
      if (at === undefined || referrersOf(before, `${list}/${record.id}`).length > 0) return false
      waiting.push(waits(at, record.name ?? record.id))
      return true
    })
    return gone.length === 0 ? before : { ...before, [list]: before[list].filter((r) => !gone.some((g) => g === r)) }
  }
  return { project: withoutSections(left('screws', left('features', project)), waiting), waiting }
}

function withoutSections(project: Project, waiting: Problem[]): Project {
  const gone = project.sections.filter(
    (s) => s.length === '' && referrersOf(project, `sections/${s.id}`).every((ref) => ref.startsWith('joints/')),
  )
  if (gone.length === 0 || gone.length === project.sections.length) return project
  const ids = gone.map((s) => s.id)
  waiting.push(...gone.map((s) => waits(`sections/${s.id}/length`, s.name ?? s.id)))
  return {
    ...project,
    sections: project.sections.filter((s) => !gone.includes(s)),
    joints: project.joints.filter((j) => !ids.includes(j.rear) && !ids.includes(j.blade)),
  }
}

const waits = (path: string, name: string): Problem =>
  problem(
    'missing',
    path,
    `${name}, sizes still empty`,
    'its sizes',
    `Type what is still empty of ${name}: then it counts.`,
  )

/** The path of the first empty text in a record. */
function emptyIn(value: unknown, path: string): string | undefined {
  if (value === '') return path
  if (value === null || typeof value !== 'object') return undefined
  for (const [key, inner] of Object.entries(value)) {
    const at = emptyIn(inner, `${path}/${key}`)
    if (at !== undefined) return at
  }
  return undefined
}
