import { z } from 'zod'
import { entryOf } from './entry.ts'
import { interval } from './interval.ts'

/**
 * What a print process is taken to do until this printer's own figures are typed in. mm. Fits are diametral gaps
 * between the part and the pocket as printed, after compensation; negative is interference.
 */
export const printProcess = entryOf('process', {
  family: z.enum(['filament', 'resin', 'powder']),
  /** Deviation of a printed dimension. */
  error: interval,
  /** How much a diameter grows in the first layers, which the bed squashes. */
  firstLayer: interval,
  /** How much smaller than drawn a hole's diameter comes out. */
  holeShrink: interval,
  minWall: z.number().positive(),
  /** Width of one extruded line; none where nothing is extruded. */
  bead: z.number().positive().optional(),
  fitDiametral: z.strictObject({ press: interval, snug: interval, slide: interval, free: interval }),
  /** Sled in its bore. */
  toBoreDiametral: interval,
  /** Two printed pieces with each other. */
  printedOnPrintedDiametral: interval,
})

/** One published guideline, kept as evidence of how widely they differ; nothing is computed from it. */
export const guideline = entryOf('guideline', {
  process: z.string().min(3),
  /** Figures in mm unless the name ends in Deg or Percent. */
  figures: z.record(z.string().regex(/^[a-z][a-zA-Z0-9]*$/), z.union([z.number(), interval])),
})
