import type { Project } from '../../project/schema/project.ts'
import type { History } from '../work/job-store.ts'

/** What the list of jobs shows of one, without reading the job itself. */
export interface JobCard {
  readonly id: string
  readonly name: string
  /** When it was last written, ms since 1970. */
  readonly written: number
  /** Size of the job as a file, bytes. */
  readonly size: number
  /** How often it has been written. */
  readonly revision: number
  /** Of the last writing: whoever holds another stamp has not seen it. */
  readonly stamp: string
}

/** A job with all that can be undone in it. */
export interface JobContents {
  readonly project: Project
  readonly history: History
}

/** A job as it is kept. */
export interface KeptJob {
  readonly card: JobCard
  readonly contents: JobContents
}

/** What a job is called where it has no name of its own. */
export const nameless = 'Job without a name'

/** The card of a job at its next writing. */
export function nextCard(
  id: string,
  project: Project,
  before: Pick<JobCard, 'revision'> | undefined,
  stamp: string,
  now: number,
): JobCard {
  return {
    id,
    name: nameOf(project),
    written: now,
    size: new TextEncoder().encode(JSON.stringify(project)).length,
    revision: (before?.revision ?? 0) + 1,
    stamp,
  }
}

export const nameOf = (project: Project): string => project.job[0]?.name?.trim() || nameless

/** The job under another name; its record is made where the file had none. */
export function withName(project: Project, name: string): Project {
  const [first, ...rest] = project.job
  return { ...project, job: [{ id: 'job', ...first, name }, ...rest] }
}

/** `Ferry lantern 2` beside `Ferry lantern`: the first name of its kind that nobody has. */
export function freshName(wanted: string, taken: readonly string[]): string {
  const base = wanted.replace(/ \d+$/, '')
  if (!taken.includes(wanted)) return wanted
  for (let n = 2; ; n++) if (!taken.includes(`${base} ${n}`)) return `${base} ${n}`
}

/** An id for a job, or a stamp for a writing: nobody else has it. */
export const freshStamp = (): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(8)), (b) => b.toString(16).padStart(2, '0')).join('')
