import { z } from 'zod'
import { fitClass } from './part.ts'
import { end, id, ref, zPlace } from './place.ts'
import { quantity } from './quantity.ts'

const number = z.number({ error: 'a number§Give a plain number in mm or degrees.' })

/** What a part's own nest is to look like, where it shall differ from the default. All mm or degrees. */
export const nest = z.looseObject({
  part: ref,
  fit: fitClass.optional(),
  /** One-sided gap between part and nest. */
  gap: number.optional(),
  /** Clock angle of the open side, and its width; 0 for closed. */
  opening: number.optional(),
  openingWidth: number.optional(),
  wall: number.optional(),
  lip: number.optional(),
  depth: number.optional(),
})

export const channel = z.looseObject({
  id,
  theta: number,
  /** Distance of the channel's centre from the axis; by default as far out as the wall allows. */
  r: number.optional(),
  width: number.optional(),
  from: zPlace.optional(),
  to: zPlace.optional(),
  open: z.boolean().optional(),
})

/** A way cut into the outside for something that sticks in: from z to z, so deep and so wide. */
export const window = z.looseObject({
  id,
  /** What it makes room for; its place and size follow from it where they are not typed. */
  for: ref.optional(),
  theta: number.optional(),
  width: number.optional(),
  /** Radius of the window's floor from the axis. */
  floor: number.optional(),
  from: zPlace.optional(),
  to: zPlace.optional(),
  gap: number.optional(),
})

/** A contact that is meant: the sled's face or ring against a bore step, judged by its fit class. */
export const seat = z.looseObject({
  id: id.optional(),
  against: ref,
  face: z.enum(['rear', 'blade', 'around']),
  fit: fitClass.optional(),
  ring: id.optional(),
})

export const sled = z.looseObject({
  id,
  name: z.string().max(120).optional(),
  note: z.string().max(2000).optional(),
  hilt: id.optional(),
  construction: z.enum(['full-cage']).optional(),
  from: zPlace.optional(),
  to: zPlace.optional(),
  diameter: quantity.optional(),
  /** Body pieces of their own diameter, from z to z; together they make up the body. */
  bodies: z
    .array(z.looseObject({ from: zPlace, to: zPlace, diameter: quantity }))
    .max(20)
    .optional(),
  rings: z
    .array(z.looseObject({ id, z: zPlace, face: end.optional(), length: number, diameter: quantity }))
    .max(20)
    .optional(),
  nests: z.array(nest).max(200).optional(),
  channels: z.array(channel).max(50).optional(),
  windows: z.array(window).max(50).optional(),
  seats: z.array(seat).max(20).optional(),
  /** Wall between the body's end and the first part, at each end. */
  rearWall: number.optional(),
  bladeWall: number.optional(),
  chamfer: number.optional(),
  /** How far it can shift sideways in the bore; computed from its clearance where left out. */
  float: quantity.optional(),
  /** How far it may be turned from its place, degrees. */
  clocking: quantity.optional(),
  printer: id.optional(),
})

/** One move on the way to the assembled hilt; the list is in order. */
export const insertion = z.looseObject({
  id,
  name: z.string().max(120).optional(),
  moves: ref,
  /** The mouth it goes through: that end of that section must be open. */
  through: z.looseObject({ of: ref, end: z.enum(['rear', 'blade']) }).optional(),
  heading: z.enum(['blade', 'rear']).optional(),
  mayTurn: z.boolean().optional(),
  lateral: z.enum(['axis', 'floats']).optional(),
})

export type SledInput = z.infer<typeof sled>
export type NestInput = z.infer<typeof nest>
export type InsertionInput = z.infer<typeof insertion>
