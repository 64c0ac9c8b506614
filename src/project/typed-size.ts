import { type Entry, parseAngle, parseLength } from '../entry/entry.ts'
import { isBetween, isFromReadings } from './forms.ts'
import type { QuantityInput, ReadingInput } from './schema/quantity.ts'

/**
 * A dimension as a field shows it and as typing changes it. The text typed is kept in the project as it is; what was
 * known of the value besides (its tool, that it is assumed) stays while another is typed.
 */

/** What stands in the field: the text as typed, else the numbers written as one would type them. */
export function textOf(input: QuantityInput | undefined): string {
  if (input === undefined) return ''
  if (typeof input !== 'object') return String(input)
  if (isFromReadings(input)) return input.readings.length === 1 ? String(input.readings[0]?.value) : (input.text ?? '')
  if (input.text !== undefined) return input.text
  if (isBetween(input)) return `${input.min}..${input.max}`
  const { value, plus, minus } = input
  if (plus === undefined && minus === undefined) return String(value)
  const [above, below] = [plus ?? minus ?? 0, minus ?? plus ?? 0]
  if (above === below) return above === 0 ? String(value) : `${value} ±${above}`
  return `${value} +${above} -${below}`
}

/** The dimension after its text was typed anew. Readings of more than one are not typed over: see `readingsOf`. */
export function retyped(
  input: QuantityInput | undefined,
  text: string,
  as: 'length' | 'angle' = 'length',
): QuantityInput {
  if (typeof input !== 'object') return text
  if (isAssumed(input)) return assumed(text, as)
  const tool = toolOf(input)
  if (tool === undefined && !(isFromReadings(input) && input.jawFlat !== undefined)) return text
  const read = parseLength(text)
  // A spread that is typed is the person's own word on it, and the tool has no more to say.
  if (read.ok && (read.value.plus !== undefined || read.value.minus !== undefined)) return text
  const flat = isFromReadings(input) ? input.jawFlat : undefined
  return fromReadings([{ ...placeOf(input), value: text }], tool, flat)
}

/** A value nobody measured. Text that is no number yet is kept, and found wrong where it stands. */
export function assumed(text: string, as: 'length' | 'angle' = 'length'): QuantityInput {
  const read = as === 'angle' ? parseAngle(text) : parseLength(text)
  if (!read.ok) return { readings: [{ value: text }], source: 'assumed' }
  return { ...sizes(read.value), text, source: 'assumed' }
}

const sizes = ({ value, plus, minus }: Entry) => ({
  value,
  ...(plus === undefined && minus === undefined ? {} : { plus: plus ?? 0, minus: minus ?? 0 }),
})

/** Whether the dimension says of itself that nobody measured it. */
export const isAssumed = (input: QuantityInput | undefined): boolean =>
  typeof input === 'object' && input.source === 'assumed'

/** The tool a dimension was read with, where it names one. */
export function toolOf(input: QuantityInput | undefined): string | undefined {
  return typeof input === 'object' && !isBetween(input) ? input.tool : undefined
}

/** The readings behind a dimension: those it has, or the one value that was typed. */
export function readingsOf(input: QuantityInput | undefined): readonly ReadingInput[] {
  if (typeof input === 'object' && isFromReadings(input)) return input.readings
  const text = textOf(input)
  return text === '' ? [] : [{ value: text }]
}

/** Readings as they go into the project; one alone of the usual tool is just its text, none is nothing. */
export function fromReadings(readings: readonly ReadingInput[], tool?: string, jawFlat?: number): QuantityInput {
  const [first] = readings
  if (!first) return ''
  const plain = first.z === undefined && first.theta === undefined && tool === undefined && jawFlat === undefined
  if (readings.length === 1 && plain) return first.value
  return {
    readings: [...readings],
    ...(tool === undefined ? {} : { tool }),
    ...(jawFlat === undefined ? {} : { jawFlat }),
  }
}

function placeOf(input: QuantityInput): Omit<ReadingInput, 'value'> {
  const first = typeof input === 'object' && isFromReadings(input) ? input.readings[0] : undefined
  const { z, theta } = first ?? {}
  return { ...(z === undefined ? {} : { z }), ...(theta === undefined ? {} : { theta }) }
}
