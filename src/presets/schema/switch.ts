import { z } from 'zod'
import { body } from './body.ts'
import { entryOf } from './entry.ts'
import { interval } from './interval.ts'

/** A small push switch on a board or a holder: the body is its base, `overall` reaches to the tip of the stem. */
const tact = {
  type: z.literal('tact'),
  /** up: pushed away from its leads; side: pushed along the board. */
  pushed: z.enum(['up', 'side']),
  overall: interval,
  stem: interval.optional(),
  travel: interval,
  /** Grades it is sold in, gram-force, and what they span in N. */
  forceGrades: z.array(z.number().positive()).optional(),
  force: interval,
  rating: z.strictObject({ current: z.number().positive(), voltage: z.number().positive() }).optional(),
  /** Distances between its leads, mm. */
  leads: z.strictObject({ along: z.number().positive(), across: z.number().positive() }).optional(),
}

/** A switch through the wall, held by its nut: the body is what is behind the wall, tags excluded. */
const panel = {
  type: z.literal('panel'),
  action: z.enum(['momentary', 'latching']),
  thread: z.string().optional(),
  cutout: interval,
  /** Wall it takes. */
  wall: interval.optional(),
  head: interval.optional(),
  nutAcrossFlats: interval.optional(),
  /** Least distance of two of them, centre to centre. */
  spacing: z.number().positive().optional(),
  /** Length of the solder tags behind the body. */
  tags: interval,
}

const slide = {
  type: z.literal('slide'),
  /** How far the lever stands out of the body. */
  lever: interval,
  /** A, from the weakest to the strongest sold in this size. */
  current: interval,
}

/** mm, N, A, V. */
export const switchPreset = z.discriminatedUnion('type', [
  entryOf('switch', { ...tact, body }),
  entryOf('switch', { ...panel, body }),
  entryOf('switch', { ...slide, body }),
])
