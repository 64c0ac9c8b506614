import { z } from 'zod'
import { entryOf } from './entry.ts'

/** A twist drill by its nominal diameter, mm; inch sizes with the inch they are defined by. */
export const drill = entryOf('drill', {
  series: z.enum(['metric', 'number', 'letter', 'fraction']),
  diameter: z.number().positive(),
  inch: z.number().positive().optional(),
})
