import './readings.css'
import { type ReactNode, useState } from 'react'
import { parseAngle } from '../../entry/entry.ts'
import type { Plausible } from '../../entry/plausible.ts'
import type { Size } from '../../papers/sizes.ts'
import { valueAt } from '../../project/path.ts'
import type { QuantityInput } from '../../project/schema/quantity.ts'
import { readingsOf, retyped, textOf } from '../../project/typed-size.ts'
import { LengthField } from '../fields/length-field.tsx'
import { FieldNote, TypedField } from '../fields/typed-field.tsx'
import { useSaid } from '../fields/use-said.ts'
import { stretch } from '../sheet/numbers.ts'
import { useProject, useSetValue, useWork } from '../work/work-context.ts'
import { ReadingsSheet } from './readings-sheet.tsx'

export interface SizeFieldProps {
  /** Of the dimension in the project; it is the field's id, too. */
  readonly path: string
  readonly label: ReactNode
  readonly usual?: Plausible
  readonly kind?: 'length' | 'angle'
  /** An emptied field takes the dimension out of the project. */
  readonly optional?: boolean
  /** Whether it is measured at all: then it has a sheet of readings and says what it was read with. */
  readonly measured?: boolean
  readonly placeholder?: string
  readonly narrow?: boolean
  /** Where the value does not simply go to its path. */
  readonly onValue?: (value: QuantityInput | undefined) => void
}

/** A dimension of the project: typed, or made of readings; with what it came to and how it is known. */
export function SizeField(props: SizeFieldProps) {
  const { path, label, usual, kind = 'length', optional = false, measured = kind === 'length', onValue } = props
  const { view } = useWork()
  const input = useProject((p) => valueAt(p, path)) as QuantityInput | undefined
  const set = useSetValue()
  const said = useSaid()
  const [sheet, setSheet] = useState(false)
  const put = (value: QuantityInput | undefined) => (onValue ? onValue(value) : set(path, value))
  const size = said.size(path)
  const field = {
    id: path,
    label,
    text: textOf(input),
    onText: (text: string) => put(text.trim() === '' && optional ? undefined : retyped(input, text, kind)),
    fault: said.fault(path),
    question: said.question(path),
    onFocusChange: (focused: boolean) => view.setState({ lit: focused ? path : undefined }),
    ...(props.placeholder === undefined ? {} : { placeholder: props.placeholder }),
  }
  const count = readingsOf(input).length
  const several = count > 1
  return (
    <div className="size">
      {several ? (
        <SeveralReadings
          {...field}
          count={count}
          size={size}
          narrow={props.narrow === true}
          onOpen={() => setSheet(true)}
        />
      ) : kind === 'angle' ? (
        <AngleField {...field} />
      ) : (
        <LengthField {...field} size={size} {...(usual && { usual })} {...(props.narrow && { narrow: true })} />
      )}
      {measured && (
        <button type="button" className="size-source" onClick={() => setSheet(true)}>
          <span className="unseen">Readings of {label}: </span>
          {field.text === '' && !several ? 'readings …' : (sourceOf(size, count) ?? 'readings …')}
        </button>
      )}
      {sheet && <ReadingsSheet path={path} onValue={put} onClose={() => setSheet(false)} />}
    </div>
  )
}

/** How it is known, in a word or two; the sheet has the rest. */
function sourceOf(size: Size | undefined, count: number): string | undefined {
  if (size?.source === 'assumed') return 'assumed'
  // Of several places only the readings of the one that governs are in the words.
  return size?.from.split(';')[0]?.replace(/^\d+ readings?, /, count > 1 ? `${count} readings, ` : '')
}

type FieldOf = Parameters<typeof TypedField>[0]

function AngleField(field: FieldOf) {
  const read = parseAngle(field.text, field.id)
  return <TypedField {...field} fault={read.ok ? field.fault : read.problems[0]} />
}

/** Several readings are not typed over: the button in the field's place opens their sheet. */
function SeveralReadings(
  props: FieldOf & {
    readonly count: number
    readonly narrow: boolean
    readonly size: Size | undefined
    readonly onOpen: () => void
  },
) {
  const { id, label, count, size, narrow, fault, question, onOpen } = props
  return (
    <div className="field">
      <span className="field-label" aria-hidden="true">
        {label}
      </span>
      <button
        type="button"
        id={id}
        className="field-input field-readings number"
        aria-describedby={`${id}-note`}
        onClick={onOpen}
        onFocus={() => props.onFocusChange?.(true)}
        onBlur={() => props.onFocusChange?.(false)}
      >
        <span className="unseen">{label}: </span>
        {size ? size.nominal.toFixed(2) : `${count} readings`}
      </button>
      <FieldNote id={`${id}-note`} fault={fault?.hint} question={question?.hint}>
        {size && `${stretch(size.low.toFixed(2), size.high.toFixed(2))}${narrow ? '' : ' mm'}`}
      </FieldNote>
    </div>
  )
}
