import type { SledDimension } from '../../../papers/sled-dimension.ts'
import type { FeatureKind } from '../../../papers/sled-words.ts'
import { withValue } from '../../../project/path.ts'
import type { SledInput } from '../../../project/schema/sled.ts'
import { PathRow } from '../../dimensions/path-row.tsx'
import { useProject, useWork } from '../../work/work-context.ts'
import { FeatureChoices } from './feature-choices.tsx'
import { featureTitle } from './feature-title.ts'
import { PlaceRow } from './place-row.tsx'
import { Dimensions } from './sled-numbers.tsx'

export interface FeatureBoxProps {
  readonly sled: SledInput
  readonly kind: FeatureKind
  readonly record: Readonly<Record<string, unknown>>
  /** Its id, or its place in the list. */
  readonly name: string
  readonly list: readonly SledDimension[]
}

/** One feature of a sled: its choices, where it lies, how large it is, and the way to take it off. */
export function FeatureBox({ sled, kind, record, name, list }: FeatureBoxProps) {
  const { job } = useWork()
  const project = useProject((p) => p)
  const title = featureTitle(project, kind, record)
  const base = `sleds/${sled.id}/${kind.list}/${name}`
  const own = list.filter((d) => d.path.startsWith(`${base}/`))
  const asked = kind.fields.map((f) => ({ ...f, path: `${base}/${f.field}` }))
  const more = own.filter((d) => !asked.some((f) => f.path === d.path))
  return (
    <details className="box" id={base}>
      <summary>
        <b>{title.what}</b> {title.called !== undefined && <span className="soft">({title.called})</span>}
        <span className="box-what small soft">{kind.what}</span>
      </summary>
      <FeatureChoices base={base} list={kind.list} record={record} />
      <div className="dim-rows">
        {asked.map((f) => {
          const known = own.find((d) => d.path === f.path)
          const common = { path: f.path, name: f.name, unit: f.unit, known, needed: f.needed }
          return f.text && f.field !== 'diameter' ? (
            <PlaceRow key={f.field} {...common} />
          ) : (
            <PathRow key={f.field} {...common} keeps={f.text ? 'text' : 'number'} />
          )
        })}
      </div>
      <Dimensions list={more} />
      <button
        type="button"
        className="button button-plain"
        onClick={() => {
          job.settle()
          job.edit((p) => withValue(p, base, undefined))
        }}
      >
        Take this {kind.word} off
      </button>
    </details>
  )
}
