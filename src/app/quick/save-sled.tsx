import { useState } from 'react'
import type { Verdict } from '../../checks/verdict.ts'
import type { Layout, QuickInput } from '../../job/quick.ts'
import type { SledFormat } from '../../job/sled-files.ts'
import type { Desk } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'

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
  const save = async (format: SledFormat) => {
    setBusy(format)
    const text = await import('./sled-file.ts').then(
      ({ sledFile }) => sledFile(desk, input, format),
      (error) => `No file. ${error}`,
    )
    setBusy(undefined)
    if (text !== undefined) setSaid({ for: input, text })
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
