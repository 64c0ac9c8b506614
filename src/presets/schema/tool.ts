import { z } from 'zod'
import { entryOf } from './entry.ts'

/** A measuring tool, in the numbers the rules take of it, mm. */
export const tool = entryOf('tool', {
  measures: z.array(z.enum(['outside', 'thickness', 'bore', 'depth', 'length'])).min(1),
  /** The true size lies within ±mpe of the reading. */
  mpe: z.number().positive(),
  /** Step of the display or scale. */
  resolution: z.number().positive(),
  /** Flat inside jaws, which read a chord. */
  jaws: z.boolean(),
})
