import { plausible } from '../../../entry/plausible.ts'
import { sectionRow } from '../../../papers/section-row.ts'
import type { SectionInput } from '../../../project/schema/hilt.ts'
import { useSaid } from '../../fields/use-said.ts'
import { WordsField } from '../../fields/words-field.tsx'
import { SizeField } from '../../readings/size-field.tsx'
import { StepFields, StepMore } from './bore-step.tsx'
import { AddStep, BoreSteps } from './bore-steps.tsx'
import { MaterialField } from './material-field.tsx'
import { OrderButtons } from './order-buttons.tsx'
import { AddOutside, OneOutside, OutsideSteps } from './outside-steps.tsx'
import { RecordCard } from './record-card.tsx'
import { SectionMore } from './section-more.tsx'

/** A section: its three numbers in a line, and all of it when opened. */
export function SectionCard({
  section,
  at,
  count,
  onAdd,
}: {
  readonly section: SectionInput
  readonly at: number
  readonly count: number
  /** Puts another section in on the blade side of it. */
  readonly onAdd: () => void
}) {
  const path = `sections/${section.id}`
  const said = useSaid()
  const name = section.name ?? section.id
  const oneOutside = (section.outside ?? []).length < 2
  const step = section.bore.length === 1 ? section.bore[0] : undefined
  const row = sectionRow(section, (of) => said.size(of))
  return (
    <RecordCard
      path={path}
      group="sections"
      name={name}
      line={
        <span className="section-line">
          <b>{name}</b>
          <Told name="length" text={row.length} />
          <Told name="outside ⌀" text={row.outside} />
          <Told name="bore ⌀" text={row.bore} />
        </span>
      }
      tools={
        <>
          <OrderButtons list="sections" at={at} count={count} name={name} />
          {at < count - 1 && (
            <button type="button" className="button" onClick={onAdd}>
              Add one after it <span className="unseen">(a section after {name})</span>
            </button>
          )}
        </>
      }
    >
      <div className="essentials">
        <SizeField path={`${path}/length`} label="Length" usual={plausible.depth} placeholder="mm or in" narrow />
        {oneOutside && <OneOutside section={section.id} />}
        {step && <StepFields section={section.id} step={step} at={0} count={1} />}
      </div>
      {step && <StepMore section={section.id} step={step} at={0} />}
      {!oneOutside && <OutsideSteps section={section.id} />}
      {!step && <BoreSteps section={section.id} />}
      {(oneOutside || step) && (
        <div className="save-buttons">
          {step && <AddStep section={section.id} />}
          {oneOutside && <AddOutside section={section.id} />}
        </div>
      )}
      <div className="fields-3">
        <WordsField path={`${path}/name`} label="Name" placeholder={section.id} />
        <MaterialField path={`${path}/material`} />
      </div>
      <SectionMore section={section} first={at === 0} />
    </RecordCard>
  )
}

function Told({ name, text }: { readonly name: string; readonly text: string }) {
  return (
    <span className="told">
      <span className="unseen">{name} </span>
      <span className="number">{text}</span>
    </span>
  )
}
