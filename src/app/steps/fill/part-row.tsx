import { useEffect, useId } from 'react'
import { partKnownBy, shortSize } from '../../../job/part-forms.ts'
import { endHeight, measuredFrom, placedFace } from '../../../job/place-forms.ts'
import { nominalOf } from '../../../project/nominal.ts'
import { placeWords } from '../../../project/place-words.ts'
import { useSettled } from '../../fields/use-settled.ts'
import { SizeField } from '../../readings/size-field.tsx'
import { goToPath } from '../../work/go-to.ts'
import { useProject, useView, useWork } from '../../work/work-context.ts'
import { kindWords } from './kind-words.ts'
import { PartDetails } from './part-details.tsx'
import { type PartInHand, usePart } from './use-part.ts'

export interface PartRowProps {
  readonly id: string
  readonly open: boolean
  readonly onOpen: (open: boolean) => void
  readonly onRemoved: () => void
  readonly onDuplicated: (id: string) => void
}

/** A part in one line: what it is, its size, where it lies and how its size is known. */
export function PartRow({ id, open, onOpen, onRemoved, onDuplicated }: PartRowProps) {
  const { view } = useWork()
  const lit = useView((v) => v.lit?.startsWith(`parts/${id}/`) === true || v.lit === `parts/${id}`)
  const dark = useView((v) => v.lit === undefined)
  // A field that is left puts its own light out; the part in hand stays lit.
  useEffect(() => {
    if (open && dark) view.setState({ lit: `parts/${id}` })
  }, [open, dark, id, view])
  const hand = usePart(id)
  const region = useId()
  if (!hand) return undefined
  const { part, path, body } = hand
  const by = partKnownBy(part)
  return (
    <li className="fill-part" data-open={open || undefined} data-lit={lit || undefined}>
      <div className="fill-row">
        <button
          id={path}
          type="button"
          className="fill-name"
          aria-expanded={open}
          aria-controls={open ? region : undefined}
          onClick={() => onOpen(!open)}
        >
          <span className="fill-sign" aria-hidden="true" />
          <span>
            {part.name ?? part.id}
            {part.kind !== 'other' && !part.name?.toLowerCase().includes(kindWords[part.kind].toLowerCase()) && (
              <small className="soft"> {kindWords[part.kind].toLowerCase()}</small>
            )}
          </span>
        </button>
        <span className="fill-size number">{body ? shortSize(body) : ''}</span>
        <RowPlace hand={hand} open={open} />
        <span className={`fill-known small ${by === 'assumed' ? 'field-question-plain' : 'soft'}`}>
          <span className="unseen">known by: </span>
          {by}
        </span>
      </div>
      <RowProblem path={path} open={open} />
      {open && (
        <div id={region} className="fill-details">
          <PartDetails hand={hand} onRemoved={onRemoved} onDuplicated={onDuplicated} />
        </div>
      )}
    </li>
  )
}

/** A height from the datum is typed in the row; one that follows from something says so, and is changed in the details. */
function RowPlace({ hand, open }: { readonly hand: PartInHand; readonly open: boolean }) {
  const { part, path, body, place } = hand
  const project = useProject((p) => p)
  const from = measuredFrom(part.at?.z)
  const pressing = part.presses && part.at?.z === undefined
  if (!from && !pressing && !open)
    return (
      <span className="fill-z">
        <SizeField
          path={`${path}/at/z`}
          label={<span className="unseen">{part.name ?? part.id}: at z, mm</span>}
          measured={false}
        />
      </span>
    )
  const by = nominalOf(from?.by) ?? 0
  return (
    <span className="fill-z">
      <span className="number">
        <span className="unseen">at z </span>
        {place ? endHeight(place, placedFace(part, body)).toFixed(1) : '…'}
      </span>
      {from && (
        <small className="soft">
          {by < 0 ? '−' : '+'}
          {Math.abs(by)} from {placeWords(project, from.of)}
        </small>
      )}
      {pressing && <small className="soft">on the {placeWords(project, part.presses?.part ?? '')}</small>}
    </span>
  )
}

/** What is wrong with the part and has no field that is seen; once the hand has come to rest. */
function RowProblem({ path, open }: { readonly path: string; readonly open: boolean }) {
  const { view } = useWork()
  const project = useProject((p) => p)
  const { problems } = useWork().judged
  const own = problems.filter((p) => p.path === path || p.path.startsWith(`${path}/`))
  const shown = open ? own.filter((p) => [path, `${path}/body`, `${path}/at`].includes(p.path)) : own
  const key = shown.map((p) => `${p.path} ${p.hint}`).join('\n')
  const { settled } = useSettled(key)
  const [first] = shown
  if (!first || !settled) return undefined
  const text = `${placeWords(project, first.path)}: ${first.hint}`
  return (
    <output className="fill-problem small field-fault">
      {open ? (
        text
      ) : (
        <button type="button" className="button button-plain" onClick={() => goToPath(view, first.path)}>
          {text}
        </button>
      )}
    </output>
  )
}
