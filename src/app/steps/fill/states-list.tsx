import { freshId, withValue } from '../../../project/path.ts'
import { placeWords } from '../../../project/place-words.ts'
import type { StateInput } from '../../../project/schema/project.ts'
import { WordsField } from '../../fields/words-field.tsx'
import { useProject, useSetValue, useWork } from '../../work/work-context.ts'
import { RecordList } from './record-list.tsx'

/** The moments of the hilt's life, and what is not there in each. */
export function StatesList() {
  const { job, judged } = useWork()
  const own = useProject((p) => p.states.length > 0)
  const usual = judged.report?.states ?? []
  const name = () => {
    job.settle()
    job.edit((p) => withValue(p, 'states', usual))
  }
  return (
    <details className="fill-more" open={own || undefined}>
      <summary>
        <h3>States</h3>{' '}
        <span className="small soft">{own ? 'what is away in each' : 'the usual ones, with nothing away'}</span>
      </summary>
      {own ? (
        <RecordList
          list="states"
          title="What is away"
          none=""
          line={(id) => <StateLine id={id} />}
          add={{
            label: 'Add a state',
            record: (): StateInput => ({ id: freshId(job.get().states, 'state'), name: 'new state' }),
          }}
        >
          {(id, path) => <StateFields id={id} path={path} />}
        </RecordList>
      ) : (
        <>
          <p className="small">{usual.map((s) => s.name).join(', ')}.</p>
          <button type="button" className="button fill-button" disabled={usual.length === 0} onClick={name}>
            Say what is away in them
          </button>
        </>
      )}
    </details>
  )
}

const lists = ['sections', 'sleeves', 'screws', 'features', 'parts'] as const

function StateLine({ id }: { readonly id: string }) {
  const project = useProject((p) => p)
  const state = project.states.find((s) => s.id === id)
  const away = state?.without ?? []
  return (
    <>
      <b>{state?.name ?? id}</b>
      <span className="soft">
        {away.length === 0 ? 'nothing away' : `away: ${away.map((ref) => placeWords(project, ref)).join(', ')}`}
      </span>
    </>
  )
}

function StateFields({ id, path }: { readonly id: string; readonly path: string }) {
  const project = useProject((p) => p)
  const set = useSetValue()
  const state = project.states.find((s) => s.id === id)
  if (!state) return undefined
  const away = state.without ?? []
  const things = lists.flatMap((list) => project[list].map((r) => `${list}/${r.id}`))
  const tick = (ref: string, on: boolean) => {
    const next = on ? [...away, ref] : away.filter((r) => r !== ref)
    set(`${path}/without`, next.length > 0 ? next : undefined)
  }
  return (
    <>
      <WordsField path={`${path}/name`} label="State" placeholder={id} />
      <div className="fill-ticks" id={`${path}/without`}>
        {things.map((ref) => (
          <label key={ref} className="tick">
            <input type="checkbox" checked={away.includes(ref)} onChange={(event) => tick(ref, event.target.checked)} />
            <span>{placeWords(project, ref)}</span>
          </label>
        ))}
      </div>
    </>
  )
}
