import { z } from 'zod'
import { fitClass } from './part.ts'
import { ref } from './place.ts'

const number = z.number({ error: 'a number§Give a plain number in mm or degrees.' })

/**
 * What a part's own nest is to look like, where it shall differ from the default. All mm or degrees. Which fields act
 * depends on the nest: a cradle has arms, a shelf has rails and lips, a cup has a step.
 */
export const nest = z.looseObject({
  part: ref,
  /** A round part along the axis lies in a pocket or is held by the arms of a cradle. */
  style: z.enum(['pocket', 'cradle']).optional(),
  fit: fitClass.optional(),
  /** One-sided gap between part and nest. */
  gap: number.optional(),
  /** Clock angle of the open side, and its width; 0 for closed. */
  opening: number.optional(),
  openingWidth: number.optional(),
  /** Cradle: radius of the pocket, thickness of the arms, how far they wrap past the equator (degrees), where they
   * leave the body (degrees from the back), their length along the axis and how many pairs there are. */
  pocketRadius: number.optional(),
  arm: number.optional(),
  wrap: number.optional(),
  armRoot: number.optional(),
  armLength: number.optional(),
  arms: number.optional(),
  /** Notch on the can's body to lever the cell out: width along the axis, depth below the equator, place. */
  notchWidth: number.optional(),
  notchDepth: number.optional(),
  notchAt: number.optional(),
  /** Contact: thickness of the leaf's slot, or depth of the spring's seat. */
  slot: number.optional(),
  seat: number.optional(),
  /** Shelf: ledge under the edges, lip over them, and the notch to lift the board by. */
  rail: number.optional(),
  lip: number.optional(),
  liftNotch: number.optional(),
  /** Cup at an end: step behind the rim, room behind the step, gasket under the rim. */
  step: number.optional(),
  behind: number.optional(),
  gasket: number.optional(),
  /** Service face: panel left at the sled's end and the hole through it. */
  panel: number.optional(),
  hole: number.optional(),
})

export type NestInput = z.infer<typeof nest>
