import { useState } from 'react'
import type { SledDimension } from '../../../papers/sled-dimension.ts'
import { type FeatureKind, type FeatureList, featureKinds, newFeature } from '../../../papers/sled-words.ts'
import { freshId, withRecord } from '../../../project/path.ts'
import type { SledInput } from '../../../project/schema/sled.ts'
import { SmallChoice } from '../../fields/small-choice.tsx'
import { useProject, useWork } from '../../work/work-context.ts'
import { FeatureBox } from './feature-box.tsx'
import { seatChoices } from './feature-choices.tsx'
import { openSoon } from './open-soon.ts'

export interface FeatureListProps {
  readonly sled: SledInput
  readonly list: readonly SledDimension[]
}

/** What was put on the sled by itself, and the way to put more. */
export function Features({ sled, list }: FeatureListProps) {
  const { job, view } = useWork()
  const project = useProject((p) => p)
  const [wanted, setWanted] = useState<FeatureList>('windows')
  const kind = featureKinds.find((k) => k.list === wanted) as FeatureKind
  const present = featureKinds.flatMap((k) =>
    recordsOf(sled, k.list).map((r, i) => ({
      kind: k,
      record: r,
      key: typeof r['id'] === 'string' ? r['id'] : String(i),
    })),
  )
  const add = () => {
    const span = spanOf(list)
    if (!span) return
    const seat = wanted === 'seats' ? { against: seatChoices(project)[0]?.value } : {}
    const made = { ...newFeature(wanted, span), ...seat } as Readonly<Record<string, unknown>> & { id: string }
    const path = `sleds/${sled.id}/${wanted}`
    const id = freshId(recordsOf(sled, wanted) as readonly { id?: string }[], made.id)
    job.settle()
    job.edit((p) => withRecord(p, path, { ...made, id }))
    view.setState({ lit: `${path}/${id}` })
    openSoon(`${path}/${id}`)
  }
  return (
    <>
      {present.map(({ kind: k, record, key }) => (
        <FeatureBox key={`${k.list}/${key}`} sled={sled} kind={k} record={record} name={key} list={list} />
      ))}
      <div className="box-add">
        <SmallChoice
          id={`add-to-${sled.id}`}
          label="Put on the sled"
          value={wanted}
          options={featureKinds.map((k) => ({ value: k.list, label: k.word }))}
          onValue={(value) => setWanted(value as FeatureList)}
        />
        <button
          type="button"
          className="button"
          disabled={!spanOf(list) || (wanted === 'seats' && seatChoices(project).length === 0)}
          onClick={add}
        >
          Add {kind.word}
        </button>
        <span className="small soft">{kind.what}</span>
      </div>
    </>
  )
}

const recordsOf = (sled: SledInput, list: FeatureList): readonly Readonly<Record<string, unknown>>[] =>
  (sled[list] ?? []) as readonly Readonly<Record<string, unknown>>[]

/** Where the sled lies and how wide it is, from its own dimensions. */
function spanOf(list: readonly SledDimension[]) {
  const value = (field: string) =>
    list.find((d) => d.path.split('/').length === 3 && d.path.endsWith(`/${field}`))?.value
  const diameter = list.find((d) => d.name.startsWith('body diameter'))?.value
  const [rear, blade] = [value('from'), value('to')]
  return rear === undefined || blade === undefined || diameter === undefined ? undefined : { rear, blade, diameter }
}
