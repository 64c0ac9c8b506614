import type { ReactNode } from 'react'
import { type Entry, parseLength } from '../../entry/entry.ts'
import type { Plausible } from '../../entry/plausible.ts'
import { suspectSize } from '../../entry/suspicion.ts'
import type { Size } from '../../papers/sizes.ts'
import type { Problem } from '../../problem/problem.ts'
import { stretch } from '../sheet/numbers.ts'
import { TypedField, type TypedFieldProps } from './typed-field.tsx'

export interface LengthFieldProps extends Omit<TypedFieldProps, 'fault' | 'question' | 'echo' | 'label'> {
  readonly label: ReactNode
  /** What is usual here; outside it the entry is asked about. */
  readonly usual?: Plausible
  /** What the program found wrong with the value, or asks about it, in the light of everything else. */
  readonly fault?: Problem | undefined
  readonly question?: Problem | undefined
  /** The interval it came to. */
  readonly size?: Size | undefined
  /** No room for the unit beside the echo. */
  readonly narrow?: boolean
}

/** A length as people type it: `25.4`, `25,4`, `1 1/2"`, `25.4 ±0.05`, `25.4..25.6`. Says in mm what it understood. */
export function LengthField({ usual, fault, question, size, narrow, text, ...rest }: LengthFieldProps) {
  const read = parseLength(text, rest.id)
  const found = read.ok && usual ? suspectSize(read.value.value, usual, rest.id) : undefined
  // A size that was typed with its unit is what it says.
  const own = found?.code === 'suspicious' && /[a-z"″”']/i.test(text) ? undefined : found
  return (
    <TypedField
      {...rest}
      text={text}
      fault={read.ok ? (own?.code === 'out-of-range' ? own : fault) : read.problems[0]}
      question={own ?? question}
      echo={read.ok ? echoOf(read.value, size, narrow ? '' : ' mm') : undefined}
    />
  )
}

/** `33.06–33.34 mm`, or before the program has answered what the text alone says. */
function echoOf(entry: Entry, size: Size | undefined, unit: string): string | undefined {
  if (size) return `${stretch(short(size.low), short(size.high))}${unit}`
  if (entry.plus !== undefined || entry.minus !== undefined)
    return `${stretch(short(entry.value - (entry.minus ?? 0)), short(entry.value + (entry.plus ?? 0)))}${unit}`
  return entry.unit === 'mm' && !entry.text.includes(',') ? undefined : `${short(entry.value)}${unit}`
}

const short = (n: number): string => String(Number(n.toFixed(2)))
