import { parseAngle, parseLength } from '../entry/entry.ts'
import { isBetween, isFromReadings } from './forms.ts'
import type { QuantityInput } from './schema/quantity.ts'

export type KnownBy = 'measured' | 'preset' | 'computed' | 'assumed'

const readers = { length: parseLength, angle: parseAngle } as const

/**
 * What a dimension is about, mm or degrees, for a line in a list and for saying a place another way; of readings the
 * first. Verdicts take the whole dimension. Undefined where it cannot be read.
 */
export function nominalOf(q: QuantityInput | undefined, as: keyof typeof readers = 'length'): number | undefined {
  if (q === undefined || typeof q === 'number') return q
  if (typeof q === 'string') {
    const read = readers[as](q)
    return read.ok ? read.value.value : undefined
  }
  if (isFromReadings(q)) return nominalOf(q.readings[0]?.value, as)
  return isBetween(q) ? (q.nominal ?? Number(((q.min + q.max) / 2).toFixed(6))) : q.value
}

/** How a dimension is known, by what it says of itself; what says nothing was typed from a reading. */
export const knownBy = (q: QuantityInput): KnownBy => (typeof q === 'object' ? (q.source ?? 'measured') : 'measured')
