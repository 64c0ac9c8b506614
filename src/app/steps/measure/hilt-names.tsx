import { WordsField } from '../../fields/words-field.tsx'
import { nameless } from '../../keeping/kept-job.ts'
import { renamed } from '../../keeping/renamed.ts'
import { useProject, useWork } from '../../work/work-context.ts'

/** What the hilt is called, and with it the job until the two have names of their own; a parcel may hold two hilts. */
export function HiltNames() {
  const { job: store } = useWork()
  const hilts = useProject((p) => p.hilts)
  const job = useProject((p) => p.job[0]?.name ?? '')
  const echo = (name: string) =>
    name === job ? 'the job has the same name' : `the job itself is called ${job || nameless}`
  return (
    <div className={hilts.length > 1 ? 'fields-3' : undefined}>
      {hilts.map((h) => (
        <WordsField
          key={h.id}
          path={`hilts/${h.id}/name`}
          label={hilts.length > 1 ? `Hilt ${h.id}` : 'Name of the hilt'}
          placeholder={h.id}
          echo={hilts.length > 1 ? undefined : echo(h.name ?? '')}
          {...(hilts.length === 1 &&
            (h.name ?? '') === job && {
              onText: (name: string) => void store.edit((p) => renamed(p, name), 'name of the job'),
            })}
        />
      ))}
    </div>
  )
}
