import { createStore } from 'zustand/vanilla'
import { bad, type Outcome, type Problem, problem } from '../../problem/problem.ts'
import type { Read } from '../../project/read.ts'
import type { Desk } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { readReply } from './found.ts'
import { add } from './job-list.ts'
import { rememberFile } from './shelf.ts'

/** A file that a person has chosen, and its place on the disk where the browser gives one. */
export interface ChosenFile {
  readonly file: File
  readonly handle?: FileSystemFileHandle
}

/** Why a file was not opened; undefined once it has been read. */
export const openTrouble = createStore<{ readonly file: string; readonly problems: readonly Problem[] } | undefined>()(
  () => undefined,
)

/** A project of four million characters has at most as many bytes times four. */
const mostBytes = 16_000_000

/** Paths of unknown fields in the files that were opened here, by job. */
const notices = new Map<string, readonly string[]>()
export const noticesOf = (id: string | undefined): readonly string[] => notices.get(id ?? '') ?? []

/** Opens a file as a job of its own and goes there; what is wrong with it is told instead, and nothing is kept. */
export async function openFile(desk: Desk<WorkCalls>, { file, handle }: ChosenFile): Promise<void> {
  const outcome = await readFile(desk, file)
  if (!outcome.ok) return trouble(file.name, outcome.problems)
  openTrouble.setState(undefined, true)
  const { project, notices: unknown } = outcome.value
  try {
    const id = await add({ project, history: { past: [], future: [] } })
    if (handle) await rememberFile(id, handle)
    notices.set(id, unknown)
    location.hash = `#job/${id}`
  } catch (error) {
    trouble(file.name, [notKept(error)])
  }
}

/** The quick check has no place to tell of it: the list of jobs has. */
function trouble(file: string, problems: readonly Problem[]): void {
  openTrouble.setState({ file, problems }, true)
  if (/^#?(quick|example|answer)?$/.test(location.hash)) location.hash = '#jobs'
}

async function readFile(desk: Desk<WorkCalls>, file: File): Promise<Outcome<Read>> {
  if (file.size > mostBytes)
    return bad(
      problem(
        'too-large',
        '',
        `${Math.round(file.size / 1e6)} MB`,
        `at most ${mostBytes / 1e6} MB`,
        'A project holds numbers and short texts. Is it the right file?',
      ),
    )
  let text: string
  try {
    text = await file.text()
  } catch (error) {
    return bad(problem('file-not-readable', '', said(error), 'a file that can be read', 'Choose it again.'))
  }
  return readReply(await desk.ask('read', 20_000, (calls) => calls.read(text)))
}

const notKept = (error: unknown): Problem =>
  problem(
    'file-not-writable',
    '',
    said(error),
    "room in the browser's database",
    'Delete jobs that are saved as files, or let this page keep data.',
  )

const said = (error: unknown): string => (error instanceof Error ? error.message : String(error))
