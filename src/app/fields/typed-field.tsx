import './fields.css'
import type { ReactNode } from 'react'
import { FieldError, Input, Label, Text, TextField } from 'react-aria-components'
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
  readonly optional?: boolean
  readonly placeholder?: string
  readonly onFocusChange?: (focused: boolean) => void
}

/** A text field whose text is the truth. One line below it is kept for what the program makes of it. */
export function TypedField(props: TypedFieldProps) {
  const { id, label, text, onText, fault, question, echo, optional, placeholder, onFocusChange } = props
  const { settled, settle } = useSettled(text)
  const told = settled && text.trim() !== ''
  const wrong = told && fault !== undefined
  const asked = told && !wrong && question !== undefined
  return (
    <TextField
      className="field"
      id={id}
      value={text}
      onChange={onText}
      onBlur={settle}
      onFocusChange={(focused) => onFocusChange?.(focused)}
      isInvalid={wrong}
      validationBehavior="aria"
      autoComplete="off"
      spellCheck="false"
    >
      <Label className="field-label">
        {label}
        {optional && <span className="soft"> (optional)</span>}
      </Label>
      <Input className="field-input number" placeholder={placeholder ?? ''} />
      <Text slot="description" className="field-note" aria-live="polite">
        {asked && <span className="field-question">{question.hint}</span>}
        {!wrong && !asked && <span className="soft">{echo}</span>}
      </Text>
      <FieldError className="field-fault">{wrong && fault.hint}</FieldError>
    </TextField>
  )
}
