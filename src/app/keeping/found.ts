import { newJob } from '../../job/new-job.ts'
import type { Layout, QuickInput } from '../../job/quick.ts'
import { bad, type Outcome, type Problem, problem } from '../../problem/problem.ts'
import type { Read } from '../../project/read.ts'
import type { Project } from '../../project/schema/project.ts'
import type { Desk, Reply } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import type { History } from '../work/job-store.ts'
import { freshName, type JobCard, nameOf, withName } from './kept-job.ts'
import type { Route } from './route.ts'
import { allCards, take } from './shelf.ts'

/** What an address led to. */
export type Found =
  | {
      readonly kind: 'job'
      readonly project: Project
      readonly history?: History
      /** Where it is kept already. */
      readonly card?: JobCard
      /** It is to be kept at once. */
      readonly keep?: boolean
      /** Paths of fields that this version does not know. */
      readonly notices?: readonly string[]
    }
  | { readonly kind: 'nothing'; readonly why: string }
  | { readonly kind: 'wrong'; readonly what: string; readonly problems: readonly Problem[] }

/** Reading is quick; the reader may have to be fetched over a slow line, ms. */
export const patience = 20_000

/** The job that an address asks for. */
export async function find(desk: Desk<WorkCalls>, route: Route): Promise<Found> {
  switch (route.kind) {
    case 'new':
      return { kind: 'job', project: newJob(freshName('New job', await takenNames())), keep: true }
    case 'job':
      return findKept(route.id)
    case 'demo': {
      const { demos } = await import('../../job/demos/index.ts')
      const demo = demos.find((d) => d.name === route.name)
      if (!demo) return { kind: 'nothing', why: `There is no demo called ${route.name}.` }
      return read(desk, 'The demo', JSON.stringify(demo.project))
    }
    case 'link': {
      const reply = await desk.ask('unlink', patience, (calls) => calls.unlink(route.data))
      return fromReply('The link', reply)
    }
    case 'grow': {
      const quick = quickOf(route.text)
      const grown = quick && (await desk.ask('grow', patience, (calls) => calls.grow(quick.input, quick.layout)))
      if (grown?.kind !== 'done') return { kind: 'nothing', why: 'This address holds no quick check to go on with.' }
      const found = await read(desk, 'The quick check', JSON.stringify(grown.value))
      if (found.kind !== 'job') return found
      return {
        ...found,
        project: withName(found.project, freshName(nameOf(found.project), await takenNames())),
        keep: true,
      }
    }
    case 'jobs':
    case 'nothing':
      return { kind: 'nothing', why: 'There is nothing at that address.' }
  }
}

async function findKept(id: string): Promise<Found> {
  try {
    const kept = await take(id)
    if (kept) return { kind: 'job', card: kept.card, ...kept.contents }
    return {
      kind: 'nothing',
      why: 'There is no such job in this browser. It was deleted, or it is kept in another one.',
    }
  } catch (error) {
    return { kind: 'nothing', why: `This browser does not let its database be read (${String(error)}).` }
  }
}

/** A job from the text of a file. */
export async function read(desk: Desk<WorkCalls>, what: string, text: string): Promise<Found> {
  return fromReply(what, await desk.ask('read', patience, (calls) => calls.read(text)))
}

function fromReply(what: string, reply: Reply<Outcome<Read>>): Found {
  const outcome = readReply(reply)
  return outcome.ok ? { kind: 'job', ...outcome.value } : { kind: 'wrong', what, problems: outcome.problems }
}

/** What the worker made of a text; that it gave up is one more thing that may be wrong with the text. */
export function readReply(reply: Reply<Outcome<Read>>): Outcome<Read> {
  if (reply.kind === 'done') return reply.value
  const got = reply.kind === 'stuck' ? `no end after ${reply.afterMs / 1000} s` : reply.kind
  const hint = reply.kind === 'broken' ? `The program said: ${reply.message}.` : 'Try again.'
  return bad(problem('file-not-readable', '', got, 'a project that is read in a moment', hint))
}

interface Quick {
  readonly input: QuickInput
  readonly layout: Layout
}

/** What the quick check hands over; whether it makes a sound job is for the reader to say. */
function quickOf(text: string): Quick | undefined {
  try {
    const given: Partial<Quick> | null = JSON.parse(text)
    return given?.input && given.layout ? { input: given.input, layout: given.layout } : undefined
  } catch {
    return undefined
  }
}

/** The names that the jobs have already; none where the browser does not say. */
const takenNames = (): Promise<string[]> =>
  allCards().then(
    (cards) => cards.map((c) => c.name),
    () => [],
  )
