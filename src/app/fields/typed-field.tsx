import './fields.css'
import type { ReactNode } from 'react'
import type { Problem } from '../../problem/problem.ts'
import { useSettled } from './use-settled.ts'

export interface TypedFieldProps {
  readonly id: string
  readonly label: ReactNode
  /** Exactly what was typed; it is never rewritten. */
  readonly text: string
  readonly onText: (text: string) => void
  /** What makes the text unusable. */
  readonly fault?: Problem | undefined
  /** Asked about a text that is used as it stands. */
  readonly question?: Problem | undefined
  /** What the text was understood as. */
  readonly echo?: string | undefined
  readonly placeholder?: string
  /** It has no meaning as things stand. */
  readonly disabled?: boolean
  readonly onFocusChange?: (focused: boolean) => void
}

/**
 * A text field whose text is the truth. One line below it is kept for what the program makes of it. The browser's own
 * input with its label and description: nothing a component library would add is worth its weight on the first page.
 */
export function TypedField(props: TypedFieldProps) {
  const { id, label, text, onText, fault, question, echo, disabled = false, placeholder, onFocusChange } = props
  const { settled, settle } = useSettled(text)
  const told = settled && text.trim() !== '' && !disabled
  const wrong = told && fault !== undefined
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        className="field-input number"
        type="text"
        value={text}
        placeholder={placeholder}
        disabled={disabled}
        autoComplete="off"
        autoCorrect="off"
        spellCheck={false}
        aria-invalid={wrong}
        aria-describedby={`${id}-note`}
        onChange={(event) => onText(event.target.value)}
        onFocus={() => onFocusChange?.(true)}
        onBlur={() => {
          settle()
          onFocusChange?.(false)
        }}
      />
      <FieldNote id={`${id}-note`} fault={wrong ? fault.hint : undefined} question={told ? question?.hint : undefined}>
        {echo}
      </FieldNote>
    </div>
  )
}

export interface FieldNoteProps {
  readonly id: string
  readonly fault: string | undefined
  readonly question: string | undefined
  /** What stands there when all is well. */
  readonly children: ReactNode
}

/** The line below a field: what is wrong with it, what is asked about it, or what it came to. */
export function FieldNote({ id, fault, question, children }: FieldNoteProps) {
  return (
    <div id={id} className="field-note" aria-live="polite">
      {fault ? (
        <span className="field-fault">{fault}</span>
      ) : question ? (
        <span className="field-question">{question}</span>
      ) : (
        children && <span className="soft">{children}</span>
      )}
    </div>
  )
}
