import { duplicatePart, reordered } from '../../../job/add-part.ts'
import { cautions } from '../../../job/cautions.ts'
import { withOwnSizes, withPreset } from '../../../job/part-forms.ts'
import { throughWall } from '../../../job/place-forms.ts'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { useSaid } from '../../fields/use-said.ts'
import { WordsField } from '../../fields/words-field.tsx'
import { useProject, useWork } from '../../work/work-context.ts'
import { AcrossFields } from './across-fields.tsx'
import { AlongFields } from './along-fields.tsx'
import { BodyFields } from './body-fields.tsx'
import { ContactFields } from './contact-fields.tsx'
import { FittingFields } from './fitting-fields.tsx'
import { RemovePart } from './remove-part.tsx'
import type { PartInHand } from './use-part.ts'

export interface PartDetailsProps {
  readonly hand: PartInHand
  readonly onRemoved: () => void
  readonly onDuplicated: (id: string) => void
}

/** Everything that can be said of a part; what does not apply to it is not shown. */
export function PartDetails({ hand, onRemoved, onDuplicated }: PartDetailsProps) {
  const { part, path, body } = hand
  return (
    <>
      <fieldset>
        <legend className="unseen">What it is</legend>
        <div className="fill-fields">
          <div className="fill-whole">
            <PresetField hand={hand} />
          </div>
          <WordsField path={`${path}/name`} label="Name" placeholder={part.id} />
        </div>
        {part.body && <BodyFields hand={hand} body={part.body} />}
        <Cautions hand={hand} />
      </fieldset>
      {part.kind === 'contact' && <ContactFields hand={hand} />}
      <AlongFields hand={hand} />
      {body && <AcrossFields hand={hand} body={body} />}
      <FittingFields hand={hand} />
      <Tools hand={hand} onRemoved={onRemoved} onDuplicated={onDuplicated} />
    </>
  )
}

const own = ''

/** The presets of its kind, or its own sizes. */
function PresetField({ hand }: { readonly hand: PartInHand }) {
  const { part, path, presets, preset, edit, section, placeOf } = hand
  const said = useSaid()
  if (part.kind === 'other') return undefined
  const id = `${path}/preset`
  const known = part.preset === undefined || preset !== undefined || presets.length === 0
  const choose = (value: string) =>
    edit((p) => {
      const next = presets.find((c) => c.id === value)
      if (value === own) return withOwnSizes(p, preset)
      return next ? withPreset(p, next, preset, { section, placeOf }) : p
    })
  return (
    <ChoiceField
      id={id}
      label="Size"
      value={part.body ? own : (part.preset ?? own)}
      onValue={choose}
      options={[
        { value: own, label: 'Own sizes' },
        ...presets.map((c) => ({ value: c.id, label: c.name })),
        ...(known ? [] : [{ value: part.preset ?? '', label: part.preset ?? '' }]),
      ]}
      note={!part.body && preset && `${preset.sizes}. Source: ${preset.source} (${preset.known})`}
      fault={said.fault(id)?.hint}
      question={said.question(id)?.hint}
    />
  )
}

/** What can hurt, at the part that can. */
function Cautions({ hand: { part, body } }: { readonly hand: PartInHand }) {
  const said = [
    ...(part.kind === 'cell' ? [cautions.cell] : []),
    ...(part.kind === 'connector' ? [cautions.strobe] : []),
    ...(throughWall(body) ? [cautions.drilling] : []),
  ]
  return said.map((text) => (
    <p key={text} className="small caution">
      {text}
    </p>
  ))
}

function Tools({ hand, onRemoved, onDuplicated }: PartDetailsProps) {
  const { job } = useWork()
  const { part, placeOf } = hand
  const parts = useProject((p) => p.parts)
  const i = parts.findIndex((p) => p.id === part.id)
  const name = part.name ?? part.id
  const move = (by: -1 | 1) => {
    job.settle()
    job.edit((p) => {
      const next = reordered(p.parts, part.id, by)
      return next && { ...p, parts: next }
    })
  }
  const duplicate = () => {
    const made = duplicatePart(job.get(), part.id, placeOf)
    if (!made) return
    job.settle()
    job.edit(() => made.project)
    onDuplicated(made.id)
  }
  return (
    <div className="fill-tools">
      <button type="button" className="button fill-button" onClick={duplicate}>
        Duplicate<span className="unseen"> {name}</span>
      </button>
      <button type="button" className="button fill-button" disabled={i <= 0} onClick={() => move(-1)}>
        Up<span className="unseen"> in the list: {name}</span>
      </button>
      <button type="button" className="button fill-button" disabled={i >= parts.length - 1} onClick={() => move(1)}>
        Down<span className="unseen"> in the list: {name}</span>
      </button>
      <RemovePart hand={hand} onRemoved={onRemoved} />
    </div>
  )
}
