import './small-choice.css'
import type { ChoiceOption } from './choice-field.tsx'

export interface SmallChoiceProps {
  readonly id: string
  readonly label: string
  readonly value: string
  readonly options: readonly ChoiceOption[]
  readonly onValue: (value: string) => void
}

/** A choice from a list beside its label. */
export function SmallChoice({ id, label, value, options, onValue }: SmallChoiceProps) {
  return (
    <label className="small-choice" htmlFor={id}>
      <span>{label}</span>
      <select id={id} className="field-input" value={value} onChange={(event) => onValue(event.target.value)}>
        {options.map((o) => (
          <option key={o.value} value={o.value}>
            {o.label}
          </option>
        ))}
      </select>
    </label>
  )
}
