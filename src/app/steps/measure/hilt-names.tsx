import { WordsField } from '../../fields/words-field.tsx'
import { useProject } from '../../work/work-context.ts'

/** What the hilt is called; a parcel may hold two. */
export function HiltNames() {
  const hilts = useProject((p) => p.hilts)
  return (
    <div className="fields-3">
      {hilts.map((h) => (
        <WordsField
          key={h.id}
          path={`hilts/${h.id}/name`}
          label={hilts.length > 1 ? `Hilt ${h.id}` : 'Name of the hilt'}
          placeholder={h.id}
        />
      ))}
    </div>
  )
}
