import type { QuickInput } from '../../job/quick.ts'
import type { SledFormat } from '../../job/sled-files.ts'
import { problemText } from '../../problem/problem.ts'
import type { Desk } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { capital } from '../sheet/numbers.ts'
import { saveFile } from '../sheet/save-file.ts'

/** The kernel is fetched at the first file, ms. */
const patience = 60_000

/** Has the sled built, saves its file and says what became of it; undefined where newer numbers came meanwhile. */
export async function sledFile(
  desk: Desk<WorkCalls>,
  input: QuickInput,
  format: SledFormat,
): Promise<string | undefined> {
  const reply = await desk.ask('file', patience, (bench) => bench.file(input, format))
  if (reply.kind === 'overtaken') return undefined
  if (reply.kind !== 'done')
    return reply.kind === 'stuck' ? 'Building took too long and was stopped. Try again.' : reply.message
  if (!reply.value.ok) return `No file. ${reply.value.problems.map(problemText).join(' ')}`
  const made = reply.value.value
  if ('clash' in made) return `No file while there is a clash. ${capital(made.clash.title)}: ${made.clash.why}`
  saveFile(made.name, made.bytes)
  return `${made.name} is saved, in millimetres, the way up it is printed.`
}
