import { type ReactNode, useState } from 'react'
import { reordered } from '../../../job/add-part.ts'
import { withValue } from '../../../project/path.ts'
import type { ChoiceOption } from '../../fields/choice-field.tsx'
import { SmallChoice } from '../../fields/small-choice.tsx'
import { useProject, useWork } from '../../work/work-context.ts'

export interface RecordListProps {
  readonly list: 'wires' | 'insertions' | 'states'
  readonly title: string
  /** What stands there while there is none. */
  readonly none: ReactNode
  readonly add: { readonly label: string; readonly record: () => { readonly id: string }; readonly of?: AddOf }
  /** Whether the order means something. */
  readonly ordered?: boolean
  /** What stands in a record's line. */
  readonly line: (id: string) => ReactNode
  readonly children: (id: string, path: string) => ReactNode
}

/** What a new record is about, chosen before it is added; nothing is added while the value is empty. */
export interface AddOf {
  readonly label: string
  readonly value: string
  readonly options: readonly ChoiceOption[]
  readonly onValue: (value: string) => void
}

/** Records of one list, each a line that opens on its fields. */
export function RecordList({ list, title, none, add, ordered = false, line, children }: RecordListProps) {
  const { job } = useWork()
  const [added, setAdded] = useState<string>()
  const records = useProject((p) => p[list]) as readonly { readonly id: string; readonly name?: string | undefined }[]
  const edit = (change: Parameters<typeof job.edit>[0]) => {
    job.settle()
    job.edit(change)
  }
  return (
    <section aria-labelledby={`fill-${list}`}>
      <h3 id={`fill-${list}`}>{title}</h3>
      {records.length === 0 && <p className="small soft">{none}</p>}
      <ol className="fill-records">
        {records.map((r, i) => (
          <li key={r.id}>
            <details className="fill-record" open={r.id === added || undefined}>
              <summary id={`${list}/${r.id}`}>{line(r.id)}</summary>
              <div className="fill-fields">{children(r.id, `${list}/${r.id}`)}</div>
              <div className="fill-tools">
                {ordered &&
                  ([-1, 1] as const).map((by) => (
                    <button
                      key={by}
                      type="button"
                      className="button fill-button"
                      disabled={by < 0 ? i === 0 : i === records.length - 1}
                      onClick={() =>
                        edit((p) => withValue(p, list, reordered<{ readonly id: string }>(p[list], r.id, by)))
                      }
                    >
                      {by < 0 ? 'Earlier' : 'Later'}
                      <span className="unseen"> in the list: {r.name ?? r.id}</span>
                    </button>
                  ))}
                <button
                  type="button"
                  className="button fill-button"
                  onClick={() => edit((p) => withValue(p, `${list}/${r.id}`, undefined))}
                >
                  Remove<span className="unseen"> {r.name ?? r.id}</span>
                </button>
              </div>
            </details>
          </li>
        ))}
      </ol>
      <div className="fill-add">
        {add.of && (
          <SmallChoice
            id={`${list}-add-of`}
            label={add.of.label}
            value={add.of.value}
            options={add.of.value === '' ? [{ value: '', label: 'choose …' }, ...add.of.options] : add.of.options}
            onValue={add.of.onValue}
          />
        )}
        <button
          type="button"
          className="button fill-button"
          disabled={add.of?.value === ''}
          onClick={() => {
            const record = add.record()
            setAdded(record.id)
            edit((p) => withValue(p, list, [...p[list], record]))
          }}
        >
          {add.label}
        </button>
      </div>
    </section>
  )
}
