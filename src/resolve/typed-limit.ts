import { parseAngle, parseLength } from '../entry/entry.ts'
import { isFromReadings } from '../project/forms.ts'
import type { QuantityInput } from '../project/schema/quantity.ts'
import { least, most, type Quantity } from '../quantity/quantity.ts'
import { type Context, wrong } from './context.ts'
import { type Ask, quantityOf } from './quantity.ts'

/**
 * How far something may be off, as typed: a bare number is that limit itself and no reading; what stands beside it as
 * ± or as a range comes on top. Never negative.
 */
export function typedLimit(ctx: Context, input: QuantityInput | undefined, ask: Ask): number | undefined {
  const q = quantityOf(ctx, input, ask)
  if (!q) return undefined
  return hasSpread(input) ? Math.max(Math.abs(least(q)), Math.abs(most(q))) : Math.abs(q.nominal)
}

/** Whether a person wrote a spread beside the number. */
export function hasSpread(input: QuantityInput | undefined): boolean {
  if (typeof input === 'string') return [parseLength(input), parseAngle(input)].some((r) => r.ok && 'plus' in r.value)
  return typeof input === 'object' && ('plus' in input || 'minus' in input || 'min' in input)
}

/** One number and nothing else, however it was written: where something will be drawn it is exact, and no reading. */
export const isBare = (input: QuantityInput): boolean =>
  typeof input === 'number' || (typeof input === 'string' && !hasSpread(input))

/** A size or height of what will be printed: one number, for how far a print strays is the printer's to say. */
export function oneNumber(
  ctx: Context,
  input: QuantityInput,
  q: Quantity | undefined,
  path: string,
): Quantity | undefined {
  const several = typeof input === 'object' && isFromReadings(input)
  if (!q || !(several || (hasSpread(input) && least(q) < most(q)))) return q
  const [from, to] = [least(q), most(q)].map((n) => Number(n.toFixed(3)))
  const hint = 'Give one number: it is drawn once, and the printer’s error says how far a print strays.'
  return wrong(ctx, 'contradiction', path, `${from} to ${to}`, 'one number', hint)
}

export const drawnDiameter = (ctx: Context, input: QuantityInput, path: string): Quantity | undefined =>
  oneNumber(ctx, input, quantityOf(ctx, input, { path, as: 'outside' }), path)
