import { z } from 'zod'
import { notNegative, number } from './number.ts'
import { fitClass } from './part.ts'
import { ref } from './place.ts'

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
  openingWidth: notNegative.optional(),
  /** Cradle: radius of the pocket, thickness of the arms, how far they wrap past the equator (degrees), where they
   * leave the body (degrees from the back), their length along the axis and how many pairs there are. */
  pocketRadius: notNegative.optional(),
  arm: notNegative.optional(),
  wrap: notNegative.optional(),
  armRoot: notNegative.optional(),
  armLength: notNegative.optional(),
  arms: notNegative.optional(),
  /** Notch on the can's body to lever the cell out: width along the axis, depth below the equator, place. */
  notchWidth: notNegative.optional(),
  notchDepth: notNegative.optional(),
  notchAt: number.optional(),
  /** Contact: thickness of the leaf's slot, or depth of the spring's seat. */
  slot: notNegative.optional(),
  seat: notNegative.optional(),
  /** Shelf: ledge under both long edges with room between them, how deep that room is, lip over the edges with its
   * length and height, and the notch to lift the board by with its length. */
  rail: notNegative.optional(),
  relief: notNegative.optional(),
  lip: notNegative.optional(),
  lipLength: notNegative.optional(),
  lipHeight: notNegative.optional(),
  liftNotch: notNegative.optional(),
  liftLength: notNegative.optional(),
  /** Cup at an end: step behind the rim, room behind the step, gasket under the rim. */
  step: notNegative.optional(),
  behind: notNegative.optional(),
  gasket: notNegative.optional(),
  /** Service face: panel left at the sled's end and the hole through it. */
  panel: notNegative.optional(),
  hole: notNegative.optional(),
})

export type NestInput = z.infer<typeof nest>
