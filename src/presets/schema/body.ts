import { z } from 'zod'
import { interval } from './interval.ts'

const numberOrInterval = z.union([z.number(), interval])

/** A block standing on a board. A plain number is a place or size the board's maker fixed. */
const component = z.strictObject({
  name: z.string().min(1),
  /** From the board's rear edge to the component's rear edge. */
  z: numberOrInterval,
  /** From the board's middle line to the component's middle line. */
  x: numberOrInterval,
  length: numberOrInterval,
  width: numberOrInterval,
  /** Above the board's own face. */
  height: numberOrInterval,
  side: z.enum(['top', 'bottom']),
})

const cylinder = z.strictObject({
  shape: z.literal('cylinder'),
  /** z along the hilt (when absent); radial through the wall, as a panel switch or a port sits. */
  axis: z.enum(['z', 'radial']).optional(),
  diameter: interval,
  length: interval,
})

/** width tangential, height radial, length along z. */
const box = z.strictObject({ shape: z.literal('box'), width: interval, height: interval, length: interval })

const outline = z.strictObject({
  shape: z.literal('outline'),
  /** Corners [z, x] in order: z along the hilt from the rear edge, x across from the board's middle line. */
  outline: z.array(z.tuple([z.number(), z.number()])).min(3),
  thickness: interval,
  components: z.array(component),
})

/** The room a part takes, mm, in the form a project's own parts use, so that a preset can be put into a project as it is. */
export const body = z.discriminatedUnion('shape', [cylinder, box, outline])

export type Body = z.infer<typeof body>
