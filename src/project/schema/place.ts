import { z } from 'zod'
import { quantity } from './quantity.ts'

export const id = z
  .string({ error: 'a short name§Give an id: letters, digits, "-" and "_".' })
  .regex(/^[A-Za-z0-9][A-Za-z0-9_-]{0,59}$/, {
    error: 'letters, digits, "-" and "_", at most 60§Rename it, for example "body" or "cell-1".',
  })

/** A reference: the list, a slash, the id: `sections/body`, `parts/cell`; a bore step as `sections/body/neck`. */
export const ref = z
  .string({ error: 'a reference such as "sections/body"§Name the list and the id.' })
  .regex(/^[a-z]+\/[A-Za-z0-9][A-Za-z0-9_-]*(\/[A-Za-z0-9][A-Za-z0-9_-]*)?$/, {
    error: 'a reference such as "sections/body"§Name the list and the id.',
  })

export const end = z.enum(['rear', 'middle', 'blade'])

const relative = z.looseObject({ of: ref, end: end.optional(), by: quantity.optional() })

/** Height along the hilt: a number from the datum, or measured from the end of something else. */
export const zPlace = z.union([quantity, relative], {
  error: 'a height in mm, or {of: "sections/body", end: "blade", by: 2}§Give a number or say what it is measured from.',
})

const xy = z.looseObject({ x: quantity, y: quantity })
const polar = z.looseObject({ r: quantity, theta: quantity })
/** Pushed towards clock angle `pushed` until `gap` is left to the sled's outside. */
const pushed = z.looseObject({ pushed: quantity, gap: quantity })
/** Beside another part: `gap` from it, towards clock angle `theta`. */
const beside = z.looseObject({ beside: ref, theta: quantity, gap: quantity })

/** Where in the cross-section a part sits. Exactly one form. */
export const across = z.union([xy, polar, pushed, beside], {
  error:
    '{x, y}, {r, theta}, {pushed, gap} or {beside, theta, gap}§Say where in the cross-section it sits in one of these forms.',
})

export type ZPlaceInput = z.infer<typeof zPlace>
export type Relative = z.infer<typeof relative>
export type Xy = z.infer<typeof xy>
export type PolarPlace = z.infer<typeof polar>
export type Pushed = z.infer<typeof pushed>
export type Beside = z.infer<typeof beside>
export type AcrossInput = Xy | PolarPlace | Pushed | Beside
