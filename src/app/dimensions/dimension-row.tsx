import './dimensions.css'
import { type ReactNode, useState } from 'react'
import { useSettled } from '../fields/use-settled.ts'
import { capital } from '../sheet/numbers.ts'
import { type Keeps, keptValue, typedText, type Unit } from './typed-text.ts'

export interface DimensionRowProps {
  /** The field's path in the project. */
  readonly id: string
  readonly name: string
  readonly unit: Unit
  /** What the project holds at the path. */
  readonly stored: unknown
  /** What holds where nothing is typed. */
  readonly usual?: number | undefined
  readonly kind: 'typed' | 'default' | 'derived' | 'needed'
  /** Where the value comes from. */
  readonly source: string
  readonly keeps?: Keeps
  readonly onValue: (value: number | string | undefined) => void
  readonly onLit?: () => void
  /** What the program has against it. */
  readonly fault?: string | undefined
  readonly children?: ReactNode
}

/** One dimension on a line: its value, typed over the default; whether it is typed, default or derived; its source. */
export function DimensionRow(props: DimensionRowProps) {
  const { id, name, unit, stored, usual, kind, source, keeps = 'number', onValue, onLit, fault, children } = props
  const { text, setText } = useTyped(stored, unit, keeps)
  const { settled, settle } = useSettled(text)
  const read = keptValue(text, unit, keeps)
  const wrong = settled && (!read.ok ? read.problems[0]?.hint : fault)
  const typed = text.trim() !== ''
  return (
    <div className="dim-row" data-kind={typed ? 'typed' : kind}>
      <label htmlFor={id}>{capital(name)}</label>
      <span className="dim-entry">
        <input
          id={id}
          className="field-input number"
          type="text"
          inputMode="text"
          value={text}
          placeholder={usual === undefined ? undefined : shown(usual)}
          autoComplete="off"
          spellCheck={false}
          aria-invalid={wrong ? true : undefined}
          aria-describedby={`${id}-note`}
          onFocus={onLit}
          onChange={(event) => {
            const next = event.target.value
            setText(next)
            const value = keptValue(next, unit, keeps)
            if (value.ok) onValue(value.value)
          }}
          onBlur={settle}
        />
        <span className="dim-unit">{unit}</span>
      </span>
      <span id={`${id}-note`} className="dim-note" aria-live="polite">
        {wrong ? (
          <span className="field-fault">{wrong}</span>
        ) : (
          <>
            <b>{kindWords[typed ? 'typed' : kind]}</b>
            {!typed && source !== '' && <span> · {source}</span>}
          </>
        )}
      </span>
      {children}
    </div>
  )
}

/** A dimension that only follows from others. */
export function DerivedRow({
  name,
  value,
  unit,
  source,
}: {
  name: string
  value: number
  unit: string
  source: string
}) {
  return (
    <div className="dim-row" data-kind="derived">
      <span>{capital(name)}</span>
      <span className="dim-entry number">
        <span className="dim-value">{shown(value)}</span>
        <span className="dim-unit">{unit}</span>
      </span>
      <span className="dim-note">
        <b>{kindWords.derived}</b> · {source}
      </span>
    </div>
  )
}

const kindWords = { typed: 'typed', default: 'default', derived: 'derived', needed: 'needed' } as const

/** At most thousandths. */
const shown = (n: number): string => String(Number(n.toFixed(3))).replace('-', '−')

/** The text in a field: the person's own while it means what the project holds, else what the project holds. */
function useTyped(stored: unknown, unit: Unit, keeps: Keeps) {
  const [text, setText] = useState(() => typedText(stored))
  const [seen, setSeen] = useState(stored)
  if (seen !== stored) {
    setSeen(stored)
    const read = keptValue(text, unit, keeps)
    if (!read.ok || read.value !== stored) setText(typedText(stored))
  }
  return { text, setText }
}
