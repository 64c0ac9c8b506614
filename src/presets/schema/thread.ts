import { z } from 'zod'
import { entryOf } from './entry.ts'

/**
 * A 60° thread by its basic dimensions, mm: definitions, not measured sizes, so plain numbers. `minor` is that of the
 * internal thread, the free bore before its tolerance.
 */
export const thread = entryOf('thread', {
  system: z.enum(['metric', 'unified']),
  designation: z.string().min(2),
  major: z.number().positive(),
  pitch: z.number().positive(),
  minor: z.number().positive(),
  pitchDiameter: z.number().positive().optional(),
  /** Minor diameter of the external thread. */
  root: z.number().positive().optional(),
  /** Largest pitch diameter of a 6H internal thread. */
  pitchDiameterMax6H: z.number().positive().optional(),
  /** mm². */
  stressArea: z.number().positive().optional(),
  tapDrill: z.strictObject({ name: z.string(), diameter: z.number().positive() }).optional(),
  tpi: z.number().positive().optional(),
  /** The same in inches, as published. */
  inch: z
    .strictObject({
      major: z.number().positive(),
      pitchDiameter: z.number().positive().optional(),
      minor: z.number().positive().optional(),
      minorMax2B: z.number().positive().optional(),
    })
    .optional(),
})
