import { z } from 'zod'
import { entryOf } from './entry.ts'
import { interval } from './interval.ts'

/** g/cm³, °C, GPa, %, 1e-6/K. Across the layers a print takes less strain than within one. */
export const material = entryOf('material', {
  use: z.enum(['filament', 'resin', 'powder', 'metal']),
  expansion: interval,
  density: interval.optional(),
  glassTransition: interval.optional(),
  /** Heat deflection at 0.45 MPa. */
  heatDeflection: interval.optional(),
  modulus: interval.optional(),
  strain: z
    .strictObject({ onceInLayer: interval, repeatedInLayer: interval, onceAcross: interval, repeatedAcross: interval })
    .optional(),
  shrink: interval.optional(),
})
