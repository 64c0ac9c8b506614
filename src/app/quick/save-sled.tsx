import { useState } from 'react'
import type { Verdict } from '../../checks/verdict.ts'
import type { Layout, QuickInput } from '../../job/quick.ts'
import type { SledFormat } from '../../job/sled-files.ts'
import { problemText } from '../../problem/problem.ts'
import type { Desk } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { capital } from '../sheet/numbers.ts'
import { saveFile } from '../sheet/save-file.ts'

/** The kernel is fetched at the first file, ms. */
const patience = 60_000

export interface SaveSledProps {
  readonly desk: Desk<WorkCalls>
  readonly input: QuickInput
  readonly layout: Layout
  readonly verdict: Verdict
}

/** What one takes away from a quick check. The sled's file, STL or 3MF: from the worker, by the same build as the command line's. A clash holds it back. Or
 * all of it, to go on with. */
export function SaveSled({ desk, input, layout, verdict }: SaveSledProps) {
  const [said, setSaid] = useState<{ readonly for: QuickInput; readonly text: string }>()
  const [busy, setBusy] = useState<SledFormat>()
  const tell = (text: string) => setSaid({ for: input, text })
  const save = async (format: SledFormat) => {
    setBusy(format)
    const reply = await desk.ask('file', patience, (bench) => bench.file(input, format))
    setBusy(undefined)
    if (reply.kind === 'overtaken') return
    if (reply.kind !== 'done')
      return tell(reply.kind === 'stuck' ? 'Building took too long and was stopped. Try again.' : reply.message)
    if (!reply.value.ok) return tell(`No file. ${reply.value.problems.map(problemText).join(' ')}`)
    const made = reply.value.value
    if ('bytes' in made) {
      saveFile(made.name, made.bytes)
      return tell(`${made.name} is saved, in millimetres, the way up it is printed.`)
    }
    tell(`No file while there is a clash. ${capital(made.clash.title)}: ${made.clash.why}`)
  }
  return (
    <>
      <div className="save">
        <div>
          <div className="save-buttons">
            {labels.map(({ format, text }, i) => (
              <button
                key={format}
                type="button"
                className={i === 0 && verdict === 'clear' ? 'button button-strong' : 'button'}
                aria-describedby="save-note"
                aria-disabled={busy !== undefined}
                onClick={() => busy === undefined && void save(format)}
              >
                {busy === format ? 'Building …' : text}
              </button>
            ))}
          </div>
          <p id="save-note" className="small save-note">
            {notes[verdict]}
          </p>
        </div>
        <a className="button" href={`#grow/${encodeURIComponent(JSON.stringify({ input, layout }))}`}>
          Go on as a full job
        </a>
      </div>
      <p className={said?.for === input ? 'small verdict-note' : 'unseen'} aria-live="polite">
        {said?.for === input && said.text}
      </p>
    </>
  )
}

const labels = [
  { format: 'stl', text: 'Save the sled (STL)' },
  { format: '3mf', text: 'Save as 3MF' },
] as const

const notes = {
  clear: '',
  unsure: 'Not sure to fit; its name says so.',
  clash: 'Held back by the clash.',
} as const
