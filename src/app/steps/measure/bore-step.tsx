import { plausible } from '../../../entry/plausible.ts'
import { withValue } from '../../../project/path.ts'
import type { BoreStepInput } from '../../../project/schema/hilt.ts'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { WordsField } from '../../fields/words-field.tsx'
import { SizeField } from '../../readings/size-field.tsx'
import { useWork } from '../../work/work-context.ts'
import { OrderButtons } from './order-buttons.tsx'
import { TakeOut } from './record-card.tsx'
import { formOf, inForm, type StepForm } from './step-form.ts'
import { ThreadField } from './thread-field.tsx'

const forms: readonly { readonly value: StepForm; readonly label: string }[] = [
  { value: 'plain', label: 'plain' },
  { value: 'taper', label: 'taper' },
  { value: 'thread', label: 'thread' },
  { value: 'closed', label: 'closed' },
]

export interface BoreStepProps {
  readonly section: string
  readonly step: BoreStepInput
  readonly at: number
  readonly count: number
}

/** One step of a bore: how long, how wide, and which thread. */
export function BoreStep({ section, step, at, count }: BoreStepProps) {
  const list = `sections/${section}/bore`
  const path = `${list}/${step.id ?? at}`
  const name = step.name ?? `step ${at + 1}`
  return (
    <li className="step">
      {count > 1 && (
        <div className="step-head">
          <WordsField path={`${path}/name`} label={`Step ${at + 1}`} placeholder="name" />
          <div className="step-tools">
            <OrderButtons list={list} at={at} count={count} name={name} />
            <TakeOut path={path} name={name} label="×" />
          </div>
        </div>
      )}
      <div className="essentials">
        <StepFields section={section} step={step} at={at} count={count} />
      </div>
      <StepMore section={section} step={step} at={at} />
    </li>
  )
}

/** The sizes of a step: its form, how wide it is, how long. */
export function StepFields({ section, step, at, count }: BoreStepProps) {
  const { job } = useWork()
  const path = `sections/${section}/bore/${step.id ?? at}`
  const form = formOf(step)
  return (
    <>
      <ChoiceField
        id={`${path}/kind`}
        label="Form"
        value={form}
        onValue={(next) => void job.edit((p) => withValue(p, path, inForm(step, next as StepForm)))}
        options={forms}
      />
      {form === 'thread' && <ThreadField path={`${path}/thread`} crests={`${path}/diameter`} />}
      {form !== 'closed' && (
        <SizeField
          path={`${path}/diameter`}
          label={form === 'taper' ? '⌀ at the rear' : form === 'thread' ? 'Crests ⌀' : 'Bore ⌀'}
          usual={plausible.bore}
          optional
          placeholder={form === 'thread' ? 'computed' : 'mm or in'}
          narrow
        />
      )}
      {form === 'taper' && (
        <SizeField path={`${path}/diameterEnd`} label="⌀ at the blade end" usual={plausible.bore} narrow />
      )}
      {(count > 1 || step.length !== undefined) && (
        <SizeField path={`${path}/length`} label="Length" optional placeholder="what is left" narrow />
      )}
    </>
  )
}

/** What narrows a bore, and how closely its thread was cut. */
export function StepMore({ section, step, at }: Omit<BoreStepProps, 'count'>) {
  const path = `sections/${section}/bore/${step.id ?? at}`
  const form = formOf(step)
  if (form === 'closed') return undefined
  return (
    <details className="more">
      <summary>Coating{form === 'thread' ? ', tolerance class' : ''}</summary>
      <div className="fields-3">
        <SizeField path={`${path}/allowance`} label="Coating or burr, each side" optional measured={false} narrow />
        {form === 'thread' && <WordsField path={`${path}/threadClass`} label="Tolerance class" placeholder="6H, 2B" />}
      </div>
    </details>
  )
}
