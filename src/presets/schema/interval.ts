import { z } from 'zod'

/**
 * A size as presets hold it: from least to most, or a value and how far it strays each way. A `nominal` stands where
 * one is published and is not the middle. Never a bare number: a size without its spread is what makes a false tick.
 */
export const interval = z.union([
  z
    .strictObject({ min: z.number(), max: z.number(), nominal: z.number().optional() })
    .refine((i) => i.min <= (i.nominal ?? i.min) && (i.nominal ?? i.min) <= i.max && i.min <= i.max, {
      message: 'min ≤ nominal ≤ max',
    }),
  z.strictObject({ value: z.number(), plus: z.number().min(0), minus: z.number().min(0) }),
])

export type Interval = z.infer<typeof interval>
