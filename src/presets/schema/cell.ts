import { z } from 'zod'
import { body } from './body.ts'
import { entryOf } from './entry.ts'
import { interval } from './interval.ts'

/** One cylindrical cell with its wrap. Sizes mm, mass g, capacity mAh, current A (continuous). */
export const cell = entryOf('cell', {
  size: z.string().regex(/^\d{5}$/),
  /** What the size code itself says, before wrap and tolerance. */
  nominal: z.strictObject({ diameter: z.number().positive(), length: z.number().positive() }),
  body,
  /** The positive end: a flat cap, or one that stands out. */
  terminal: z.enum(['flat', 'button']),
  protected: z.boolean(),
  chemistry: z.enum(['lithium-ion']),
  mass: interval,
  capacity: interval,
  current: interval,
  /** Taken out and replaced in service: its sizes vary, measuring one cell does not settle them. */
  swapped: z.literal(true),
})
