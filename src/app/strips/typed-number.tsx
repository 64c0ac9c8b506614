import { useState } from 'react'

export interface TypedNumberProps {
  readonly id: string
  readonly label: string
  readonly unit: string
  readonly value: number
  readonly places: number
  readonly min: number
  readonly max: number
  readonly step: number
  readonly onValue: (value: number) => void
}

/** A slider for the hand, and beside it the value to type. The wheel changes neither. */
export function TypedNumber({ id, label, unit, value, places, min, max, step, onValue }: TypedNumberProps) {
  const [typed, setTyped] = useState<string>()
  const shown = value.toFixed(places)
  const take = (text: string) => {
    const number = Number(text.trim().replace(',', '.'))
    if (text.trim() !== '' && number >= min && number <= max) onValue(number)
  }
  return (
    <span className="typed-number">
      <label htmlFor={id}>{label}</label>
      <input
        type="range"
        aria-label={`${label}, slider`}
        min={min}
        max={max}
        step={step}
        value={value}
        onChange={(event) => onValue(Number(event.target.value))}
      />
      <input
        id={id}
        type="text"
        inputMode="decimal"
        className="field-input number"
        autoComplete="off"
        value={typed ?? shown}
        onFocus={() => setTyped(shown)}
        onBlur={() => setTyped(undefined)}
        onChange={(event) => {
          setTyped(event.target.value)
          take(event.target.value)
        }}
      />
      <span aria-hidden="true">{unit}</span>
    </span>
  )
}
