import type { SledDimension } from '../../../papers/sled-dimension.ts'
import { choicesOf } from '../../../project/choice-words.ts'
import type { NestInput } from '../../../project/schema/nest.ts'
import type { Project } from '../../../project/schema/project.ts'
import type { SledInput } from '../../../project/schema/sled.ts'
import { useSetValues } from '../../dimensions/use-set-values.ts'
import { SmallChoice } from '../../fields/small-choice.tsx'
import { capital } from '../../sheet/numbers.ts'
import { useProject, useSetValue } from '../../work/work-context.ts'
import { Dimensions } from './sled-numbers.tsx'

/** The nest of each part on the sled: its choices and every dimension. */
export function NestList({ sled, list }: { readonly sled: SledInput; readonly list: readonly SledDimension[] }) {
  const project = useProject((p) => p)
  const parts = partsOn(project, sled)
  if (parts.length === 0) return <p className="small soft">No part lies on this sled yet. Put parts on it in Fill.</p>
  return parts.map((p) => {
    const own = list.filter((d) => d.part === p.id && d.path.includes('/nests/'))
    return <NestBox key={p.id} sled={sled} part={p.id} name={p.name} own={own} />
  })
}

interface NestBoxProps {
  readonly sled: SledInput
  readonly part: string
  readonly name: string
  readonly own: readonly SledDimension[]
}

const fits = [{ value: '', label: 'as the part is held' }, ...choicesOf('nests/fit')]

function NestBox({ sled, part, name, own }: NestBoxProps) {
  const setValue = useSetValue()
  const setValues = useSetValues()
  const nest: NestInput | undefined = sled.nests?.find((n) => n.part === part)
  const path = (field: string) => `sleds/${sled.id}/nests/${part}/${field}`
  const typed = own.filter((d) => d.kind === 'typed').length
  // Only a round part that lies along the axis has a pocket, and only that can be a cradle.
  const round = own.some((d) => d.path.endsWith('/openingWidth') || d.path.endsWith('/wrap'))
  const notch = nest !== undefined && notchFields.some((f) => nest[f] !== undefined)
  return (
    <details className="box" id={`sleds/${sled.id}/nests/${part}`}>
      <summary>
        <b>{capital(name)}</b> <span className="soft">{own[0]?.nest ?? 'no nest of its own'}</span>
        {typed > 0 && <span className="box-typed">{typed} typed</span>}
      </summary>
      <div className="box-choices">
        {round && (
          <SmallChoice
            id={path('style')}
            label="Style"
            value={nest?.style ?? 'pocket'}
            options={choicesOf('nests/style')}
            onValue={(value) => setValue(path('style'), value)}
          />
        )}
        <SmallChoice
          id={path('fit')}
          label="Fit"
          value={nest?.fit ?? ''}
          options={fits}
          onValue={(value) => setValue(path('fit'), value === '' ? undefined : value)}
        />
        {round && (
          <label className="box-check">
            <input
              type="checkbox"
              checked={notch}
              onChange={(event) => {
                if (event.target.checked) return setValue(path('notchWidth'), usualNotch)
                setValues(Object.fromEntries(notchFields.map((field) => [path(field), undefined])))
              }}
            />{' '}
            notch to lift it out by
          </label>
        )}
      </div>
      <Dimensions list={own} />
    </details>
  )
}

const notchFields = ['notchWidth', 'notchDepth', 'notchAt'] as const
/** As wide as a tool needs, with room to spare, mm. */
const usualNotch = 8

interface OnSled {
  readonly id: string
  readonly name: string
}

/** Parts that go in with the sled; on the only or first one where they do not say. */
function partsOn(project: Project, sled: SledInput): OnSled[] {
  const first = project.sleds[0]?.id
  return project.parts
    .filter((p) => (p.on ?? `sleds/${first}`) === `sleds/${sled.id}` && (p.goesIn ?? 'with-sled') === 'with-sled')
    .map((p) => ({ id: `parts/${p.id}`, name: p.name ?? p.id }))
}
