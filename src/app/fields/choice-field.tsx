import type { ReactNode } from 'react'
import './fields.css'

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
  const noteId = `${id}-note`
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <select
        id={id}
        className="field-input field-select"
        value={value}
        onChange={(event) => onValue(event.target.value)}
        aria-describedby={noteId}
        aria-invalid={fault !== undefined}
      >
        {options.map((o) => (
          <option key={o.value} value={o.value}>
            {o.label}
          </option>
        ))}
      </select>
      <div id={noteId} className="field-note choice-note" aria-live="polite">
        {fault ? (
          <span className="field-fault">{fault}</span>
        ) : question ? (
          <span className="field-question">{question}</span>
        ) : (
          note && <span className="soft">{note}</span>
        )}
      </div>
    </div>
  )
}
