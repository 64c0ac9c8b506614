import { z } from 'zod'
import { number } from './number.ts'

/**
 * A dimension as it stands in a project file: mm or degrees. Every form may name its source, and keeps the text as
 * typed. Which spread a bare number gets is decided by the tool or source, in `src/resolve/quantity.ts`.
 */
export const sourceKind = z.enum(['measured', 'preset', 'computed', 'assumed'])
export const spreadKind = z.enum(['unknown', 'varies'])
export const distribution = z.enum(['rectangular', 'triangular', 'normal'])

const finite = z.number({ error: 'a number§Give a plain number in mm or degrees.' })
const positive = number.min(0, {
  error: 'a number of 0 or more§A spread is the distance from the value to its end, never negative.',
})

const about = {
  source: sourceKind.optional(),
  kind: spreadKind.optional(),
  distribution: distribution.optional(),
  /** What was typed: `5 1/4 in` stays readable when the file holds 133.35. */
  text: z.string().max(80).optional(),
  /** In words, where it came from: the tool, the sheet, the person. */
  from: z.string().max(200).optional(),
}

export const reading = z.looseObject({
  value: z.union([finite, z.string().max(80)], {
    error: 'a number or a length as text§Give each reading a value in mm, or a text such as "1 1/2 in".',
  }),
  z: number.optional(),
  theta: number.optional(),
})

const withSpread = z.looseObject({
  value: finite,
  plus: positive.optional(),
  minus: positive.optional(),
  tool: z.string().max(80).optional(),
  ...about,
})
const between = z.looseObject({ min: finite, max: finite, nominal: finite.optional(), ...about })
const fromReadings = z.looseObject({
  readings: z.array(reading).min(1, { error: 'at least one reading§Give one or more readings.' }).max(500),
  tool: z.string().max(80).optional(),
  /** Width of the flat on inside jaws, mm. */
  jawFlat: positive.optional(),
  /** A standard uncertainty the person states for the instrument, mm. */
  u: positive.optional(),
  ...about,
})

export const quantity = z.union([finite, z.string().max(80), withSpread, between, fromReadings], {
  error:
    'a number, a text such as "1 1/2 in", {value, plus, minus}, {min, max} or {readings: [{value, theta}], tool}§Give the dimension in one of these forms.',
})

export type QuantityInput = z.infer<typeof quantity>
export type ReadingInput = z.infer<typeof reading>
export type Between = z.infer<typeof between>
export type FromReadings = z.infer<typeof fromReadings>
export type WithSpread = z.infer<typeof withSpread>
