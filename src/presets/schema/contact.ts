import { z } from 'zod'
import { body } from './body.ts'
import { entryOf } from './entry.ts'
import { interval } from './interval.ts'

/**
 * What touches a cell's end. Lengths along the axis, mm: `free` with nothing pressing, `working` where it presses as it
 * should, `solid` fully compressed. The body is the room it takes while working. Force N at the working length.
 */
export const contact = entryOf('contact', {
  style: z.enum(['leaf', 'coil', 'pin']),
  body,
  free: interval,
  working: z.strictObject({ min: z.number().positive(), max: z.number().positive() }),
  solid: interval,
  force: interval,
  /** Sheet thickness of a leaf, which its slot must take. */
  thickness: interval.optional(),
  /** A, for one contact. */
  current: interval.optional(),
})
