import './fields.css'
import type { ReactNode } from 'react'
import { FieldNote } from './typed-field.tsx'

export interface ChoiceOption {
  readonly value: string
  readonly label: string
}

export interface ChoiceFieldProps {
  readonly id: string
  readonly label: ReactNode
  readonly value: string
  readonly onValue: (value: string) => void
  readonly options: readonly ChoiceOption[]
  readonly note?: ReactNode
  readonly fault?: string | undefined
  readonly question?: string | undefined
}

/** A choice from a list. The system's own control: known to every hand, thumb and screen reader. */
export function ChoiceField({ id, label, value, onValue, options, note, fault, question }: ChoiceFieldProps) {
  return (
    <div className="field field-choice">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <select
        id={id}
        className="field-input"
        value={value}
        onChange={(event) => onValue(event.target.value)}
        aria-describedby={`${id}-note`}
        aria-invalid={fault !== undefined}
      >
        {options.map((o) => (
          <option key={o.value} value={o.value}>
            {o.label}
          </option>
        ))}
      </select>
      <FieldNote id={`${id}-note`} fault={fault} question={question}>
        {note}
      </FieldNote>
    </div>
  )
}
