import { type Problem, problem } from '../problem/problem.ts'
import { referrersOf } from '../project/referrers.ts'
import type { SectionInput } from '../project/schema/hilt.ts'
import type { Project } from '../project/schema/project.ts'
import type { SoFar } from './so-far.ts'

/**
 * The job without the sections, steps, features and screws that were begun and have a size still empty, so that the rest is
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
  return {
    project: withoutSteps(withoutSections(left('screws', left('features', project)), waiting), waiting),
    waiting,
  }
}

type Step = SectionInput['bore'][number]

/** A step just added, of which nothing is told, while it is not told either how long the one before it is. */
function withoutSteps(project: Project, waiting: Problem[]): Project {
  const left = (s: SectionInput, list: 'bore' | 'outside'): SectionInput => {
    const steps: readonly Step[] = s[list] ?? []
    const open = steps.flatMap((step, i) => (isEmpty(step.length) ? [i] : []))
    const [first] = open
    const begun = open.filter((i) => i !== first && isBegun(steps[i] as Step))
    if (first === undefined || begun.length === 0) return s
    const path = `sections/${s.id}/${list}/${steps[first]?.id ?? first}/length`
    waiting.push(waits(path, `the ${list} of ${s.name ?? s.id}`))
    return { ...s, [list]: steps.filter((_, i) => !begun.includes(i)) }
  }
  const sections = project.sections.map((s) => left(left(s, 'bore'), 'outside'))
  return sections.every((s, i) => s === project.sections[i]) ? project : { ...project, sections }
}

const isEmpty = (value: unknown): boolean => value === undefined || value === ''
const isBegun = (step: Step): boolean => isEmpty(step.diameter) && isEmpty(step.thread) && step.kind !== 'solid'

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
