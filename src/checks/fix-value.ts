import { parseLength } from '../entry/entry.ts'
import { isBetween, isFromReadings, isRelative } from '../project/forms.ts'
import type { ZPlaceInput } from '../project/schema/place.ts'
import type { QuantityInput } from '../project/schema/quantity.ts'

/** Numbers offered are rounded to this, towards the side that works, mm. */
export const step = 0.05

const steps = (n: number, round: (n: number) => number): number => Number((round(n / step) * step).toFixed(4))

export const upTo = (n: number): number => steps(n, (k) => Math.ceil(k - 1e-9))
export const downTo = (n: number): number => steps(n, (k) => Math.floor(k + 1e-9))

/** The nominal of a dimension as it stands in a project; undefined for readings and for what cannot be read. */
export function nominalOf(input: QuantityInput | undefined): number | undefined {
  if (input === undefined || typeof input === 'number') return input
  if (typeof input === 'string') {
    const read = parseLength(input)
    return read.ok ? read.value.value : undefined
  }
  if (isFromReadings(input)) return undefined
  return isBetween(input) ? (input.nominal ?? (input.min + input.max) / 2) : input.value
}

/** Where to type a height that lies `by` farther, and what: measured from something, what is added to that. */
export function heightFix(
  path: string,
  input: ZPlaceInput | undefined,
  now: number,
  by: number,
): { readonly path: string; readonly value: number } | undefined {
  const round = by < 0 ? downTo : upTo
  if (input === undefined || !isRelative(input)) return { path, value: round(now + by) }
  const added = input.by === undefined ? 0 : nominalOf(input.by)
  return added === undefined ? undefined : { path: `${path}/by`, value: round(added + by) }
}
