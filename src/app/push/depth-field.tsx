import { useState } from 'react'
import { parseLength } from '../../entry/entry.ts'
import { fixed } from '../sheet/numbers.ts'

interface DepthProps {
  /** What the number is. */
  readonly label: string
  readonly depth: number
  readonly onDepth: (depth: number) => void
}

/** The depth as a number to type. What is being typed stays as it is; the unit goes there on Enter or on leaving. */
export function DepthField({ label, depth, onDepth }: DepthProps) {
  const [text, setText] = useState<string>()
  const read = text === undefined ? undefined : parseLength(signless(text))
  const wrong = read !== undefined && !read.ok && text?.trim() !== ''
  const settle = () => {
    if (text !== undefined && read?.ok) onDepth(/^\s*[-−]/.test(text) ? -read.value.value : read.value.value)
    if (!wrong) setText(undefined)
  }
  return (
    <span className="push-depth">
      <label htmlFor="push-depth" className="soft small">
        {label}
      </label>
      <input
        id="push-depth"
        className="field-input number"
        type="text"
        inputMode="decimal"
        autoComplete="off"
        spellCheck={false}
        value={text ?? fixed(depth, 1)}
        aria-invalid={wrong}
        aria-describedby={wrong ? 'push-depth-note' : undefined}
        onChange={(event) => setText(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === 'Enter') settle()
          if (event.key === 'Escape') setText(undefined)
        }}
        onBlur={settle}
      />
      <span className="soft small">mm</span>
      {wrong && (
        <span id="push-depth-note" className="field-fault small">
          {read.problems[0]?.hint}
        </span>
      )}
    </span>
  )
}

/** Outside the mouth at the rear a depth is below 0; lengths themselves have no sign. */
const signless = (text: string): string => text.replace(/^\s*[-−]/, '')
