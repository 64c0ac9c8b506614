import { WordsField } from '../../fields/words-field.tsx'
import { nameless } from '../../keeping/kept-job.ts'
import { useProject } from '../../work/work-context.ts'

/** What the hilt is called; a parcel may hold two. */
export function HiltNames() {
  const hilts = useProject((p) => p.hilts)
  const job = useProject((p) => p.job[0]?.name ?? '')
  const echo = (name: string) =>
    name === job ? 'named as the job, and follows it' : `the job itself is called ${job || nameless}`
  return (
    <div className="fields-3">
      {hilts.map((h) => (
        <WordsField
          key={h.id}
          path={`hilts/${h.id}/name`}
          label={hilts.length > 1 ? `Hilt ${h.id}` : 'Name of the hilt'}
          placeholder={h.id}
          echo={hilts.length > 1 ? undefined : echo(h.name ?? '')}
        />
      ))}
    </div>
  )
}
