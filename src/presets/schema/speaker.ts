import { z } from 'zod'
import { body } from './body.ts'
import { entryOf } from './entry.ts'
import { interval } from './interval.ts'

/** A round speaker; diameter over the frame, length from its front to the back of the magnet, mm. */
export const speaker = entryOf('speaker', {
  body,
  /** Impedances it is sold with, Ω. */
  impedance: z.array(z.number().positive()).min(1),
  /** W, from rated to the most. */
  power: interval,
  /** Hz, free air. */
  resonance: interval.optional(),
  /** Least gap behind the magnet, mm. */
  backClearance: z.number().min(0),
})
