import { z } from 'zod'
import { entryOf } from './entry.ts'
import { interval } from './interval.ts'

/** Stranded copper wire by gauge and insulation. mm, mm², Ω/km at 20 °C, A. */
export const wire = entryOf('wire', {
  gauge: z.number().int(),
  insulation: z.enum(['silicone', 'fluoropolymer']),
  /** Over the insulation. */
  outside: interval,
  conductor: z.strictObject({ diameter: z.number().positive(), area: z.number().positive() }),
  resistance: z.number().positive(),
  /** A single wire in free air, and the cautious figure for long runs. */
  current: z.strictObject({ chassis: z.number().positive(), transmission: z.number().positive() }),
})
