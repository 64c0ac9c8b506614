import { problemWords } from '../../papers/problem-words.ts'
import { listNames } from '../../project/format.ts'
import type { Project } from '../../project/schema/project.ts'
import type { Desk } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import type { JobCard } from '../keeping/kept-job.ts'
import { take } from '../keeping/shelf.ts'
import type { JobStore } from '../work/job-store.ts'
import { stepsBack } from './steps-back.ts'

/** What the job can be compared with. */
export interface Rival {
  readonly id: string
  readonly label: string
  readonly group: string
  /** The job, or why it cannot be had, in words. */
  readonly fetch: () => Promise<Project | string>
}

/** A job that cannot be read has no names. */
const nothing = Object.fromEntries(listNames.map((name) => [name, []])) as unknown as Project
/** Reading a file takes no longer, ms. */
const patience = 20_000

/** The job as it was opened and some steps back, the other jobs of this browser, and the demos. */
export function rivalsOf(
  desk: Desk<WorkCalls>,
  job: JobStore,
  others: readonly JobCard[],
  demos: readonly DemoName[],
): readonly Rival[] {
  const steps = stepsBack(job.get(), job.history.getState().pastStates)
  return [
    { id: 'opened', label: 'as it was opened', group: 'This job', fetch: async () => job.initial() },
    ...steps.map(({ project, changed }, i) => ({
      id: `back-${i + 1}`,
      label: `${i + 1} ${i === 0 ? 'step' : 'steps'} back, before: ${changed}`,
      group: 'This job',
      fetch: async () => project,
    })),
    ...others.map(({ id, name }) => ({
      id: `job-${id}`,
      label: name,
      group: 'Your other jobs',
      fetch: async () => (await take(id))?.contents.project ?? 'That job is not there any more.',
    })),
    ...demos.map((d) => ({
      id: `demo-${d.name}`,
      label: d.title,
      group: 'Demos',
      fetch: () => readJob(desk, JSON.stringify(d.project)),
    })),
  ]
}

export interface DemoName {
  readonly name: string
  readonly title: string
  readonly project: unknown
}

/** A job from the text of a file; what is wrong with it in words where it is none. */
export async function readJob(desk: Desk<WorkCalls>, text: string): Promise<Project | string> {
  const reply = await desk.ask('read', patience, (calls) => calls.read(text))
  if (reply.kind === 'stuck') return 'Reading it took too long.'
  if (reply.kind === 'overtaken') return 'Another file was chosen meanwhile.'
  if (reply.kind === 'broken') return reply.message
  return reply.value.ok
    ? reply.value.value.project
    : reply.value.problems.map((p) => problemWords(nothing, p)).join(' ')
}
