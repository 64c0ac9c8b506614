import { z } from 'zod'
import { number } from './number.ts'
import { across, end, id, ref, zPlace } from './place.ts'
import { quantity } from './quantity.ts'

const cylinder = z.looseObject({
  shape: z.literal('cylinder'),
  diameter: quantity,
  length: quantity,
  axis: z.enum(['z', 'radial']).optional(),
})
/** Width across (tangential), height outwards (radial), length along the hilt. */
const box = z.looseObject({ shape: z.literal('box'), width: quantity, height: quantity, length: quantity })
const ringSector = z.looseObject({
  shape: z.literal('ring-sector'),
  inner: quantity,
  outer: quantity,
  half: quantity,
  length: quantity,
})
const component = z.looseObject({
  name: z.string().max(80).optional(),
  z: quantity,
  x: quantity,
  length: quantity,
  width: quantity,
  height: quantity,
  side: z.enum(['top', 'bottom']).optional(),
})
/** A board: its corners (z from its rear edge, x across), thickness, and what stands on it. */
const outline = z.looseObject({
  shape: z.literal('outline'),
  outline: z
    .array(z.tuple([number, number]))
    .min(3)
    .max(200),
  thickness: quantity,
  components: z.array(component).max(200).optional(),
})

export const body = z.discriminatedUnion('shape', [cylinder, box, ringSector, outline], {
  error: 'shape: "cylinder", "box", "ring-sector" or "outline"§Name the shape and its sizes, or a preset.',
})

export const fitClass = z.enum(['press', 'snug', 'slide', 'free'])

export const part = z.looseObject({
  id,
  name: z.string().max(120).optional(),
  note: z.string().max(2000).optional(),
  kind: z.enum(['cell', 'contact', 'speaker', 'board', 'switch', 'port', 'connector', 'other']),
  preset: id.optional(),
  body: body.optional(),
  /** What it sits on: a sled (the only one where left out) or a section. */
  on: ref.optional(),
  at: z
    .looseObject({
      z: zPlace.optional(),
      /** Which of its own faces lies at z; the rear one where left out. */
      face: end.optional(),
      across: across.optional(),
      /** The clock angle its top looks at. */
      facing: quantity.optional(),
      /** For a part through the wall: the radius of its outer end, and its clock angle. */
      outer: quantity.optional(),
      theta: quantity.optional(),
    })
    .optional(),
  /** A contact: the part whose end it presses on, and which end. */
  presses: z.looseObject({ part: ref, end: z.enum(['rear', 'blade']) }).optional(),
  /** A contact's length fully compressed and free, mm. */
  solid: quantity.optional(),
  free: quantity.optional(),
  /** Least compression it needs to press, mm. */
  preload: quantity.optional(),
  held: z.enum(['press', 'snug', 'slide', 'free', 'cradle', 'screwed', 'glued', 'pushed']).optional(),
  goesIn: z.enum(['before', 'with-sled', 'after']).optional(),
  /** The hole or window it goes through when it is fitted after. */
  through: ref.optional(),
  /** Tags and wires behind it: how far they reach beyond the body, and how far the wire needs to bend. */
  tags: quantity.optional(),
  wireBend: quantity.optional(),
  /** It will be swapped for another of its kind, so that its size varies. */
  swapped: z.boolean().optional(),
  states: z.array(id).optional(),
})

export type PartInput = z.infer<typeof part>
export type BodyInput = z.infer<typeof body>
export type ComponentInput = z.infer<typeof component>
