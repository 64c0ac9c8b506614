import { useState } from 'react'
import type { FileLayout } from '../../../job/lay-out.ts'
import type { SledFormat } from '../../../job/sled-files.ts'
import { problemWords } from '../../../papers/problem-words.ts'
import type { Project } from '../../../project/schema/project.ts'
import { capital } from '../../sheet/numbers.ts'
import { saveFile } from '../../sheet/save-file.ts'
import { useProject, useWork } from '../../work/work-context.ts'

/** The kernel is fetched at the first file, ms. */
const patience = 60_000

type What = SledFormat | 'report'

/** What came of asking for files. */
interface Said {
  readonly text: string
  readonly reasons?: readonly string[]
  /** What was asked for, where it was refused and can be forced. */
  readonly refused?: What
}

/** The files of every sled. A clash or a bad mesh holds them back; forced out, their names say that they are unproven. */
export function SaveFiles({ layout }: { readonly layout: FileLayout }) {
  const { desk, judged } = useWork()
  const project = useProject((p) => p)
  const [busy, setBusy] = useState<What>()
  const [said, setSaid] = useState<Said & { readonly of: Project }>()
  const verdict = judged.stand === 'answered' ? judged.report?.verdict : undefined
  const save = async (what: What, force: boolean) => {
    setBusy(what)
    const name = project.job[0]?.name ?? 'sled'
    const wish = {
      base: stem(name),
      job: name,
      formats: what === 'report' ? [] : [what],
      layout,
      force,
      report: what === 'report',
    }
    const reply = await desk.ask('make', patience, (calls) => calls.make(project, wish))
    setBusy(undefined)
    const tell = (text: string, more: Partial<Said> = {}) => setSaid({ text, ...more, of: project })
    if (reply.kind === 'overtaken') return
    if (reply.kind !== 'done')
      return tell(reply.kind === 'stuck' ? 'Building took too long and was stopped. Try again.' : reply.message)
    // What is still empty is named above, with the way to its fields; to force it would not fill it in.
    if (!reply.value.ok && reply.value.problems.every((p) => p.code === 'missing'))
      return tell('No file yet: what is still wanted is named above, under "What is printed".')
    if (!reply.value.ok)
      return tell('No file.', { reasons: reply.value.problems.map((p) => problemWords(project, p)), refused: what })
    const made = reply.value.value
    if ('clash' in made)
      return tell('No file while there is a clash.', {
        reasons: [`${capital(made.clash.title)}: ${made.clash.why}`],
        refused: what,
      })
    for (const file of made) saveFile(file.name, file.bytes)
    const names = made.map((f) => f.name).join(', ')
    tell(`${names} ${made.length === 1 ? 'is' : 'are'} saved, in millimetres.`)
  }
  const shown = said?.of === project ? said : undefined
  return (
    <div className="save-files">
      <div className="save-files-buttons">
        {labels.map(({ what, text }, i) => (
          <button
            key={what}
            type="button"
            className={i === 0 && verdict === 'clear' ? 'button button-strong' : 'button'}
            aria-disabled={busy !== undefined}
            onClick={() => busy === undefined && void save(what, false)}
          >
            {busy === what ? 'Building …' : text}
          </button>
        ))}
      </div>
      {verdict && verdict !== 'clear' && <p className="small soft">{notes[verdict]}</p>}
      <div aria-live="polite">
        {shown && (
          <div className={shown.refused ? 'problems problems-fault' : 'small'}>
            <p>{shown.text}</p>
            {shown.reasons && (
              <ul>
                {shown.reasons.map((r) => (
                  <li key={r}>{r}</li>
                ))}
              </ul>
            )}
            {shown.refused && (
              <button type="button" className="button" onClick={() => shown.refused && void save(shown.refused, true)}>
                Save all the same, marked UNPROVEN
              </button>
            )}
          </div>
        )}
      </div>
    </div>
  )
}

const labels = [
  { what: 'stl', text: 'Save STL' },
  { what: '3mf', text: 'Save 3MF' },
  { what: 'report', text: 'Save report (JSON)' },
] as const

const notes = {
  unsure: 'Not sure to fit: the names of the files say so.',
  clash: 'A clash holds the files back.',
} as const

/** `Pier lantern, hilt 2` is `pier-lantern-hilt-2`: a name that every system takes. */
const stem = (name: string): string =>
  name
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '') || 'sled'
