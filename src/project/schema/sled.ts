import { z } from 'zod'
import { nest } from './nest.ts'
import { notNegative, number } from './number.ts'
import { fitClass } from './part.ts'
import { end, id, ref, zPlace } from './place.ts'
import { quantity } from './quantity.ts'
import { bulkhead, construction, disc, key, mark, outsideForm, rod, split, tower } from './sled-features.ts'

export const channel = z.looseObject({
  id,
  theta: number,
  /** Distance of the channel's centre from the axis; by default as far out as the wall allows. */
  r: notNegative.optional(),
  width: notNegative.optional(),
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
  width: notNegative.optional(),
  /** Radius of the window's floor from the axis. */
  floor: number.optional(),
  from: zPlace.optional(),
  to: zPlace.optional(),
  gap: notNegative.optional(),
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
  construction: construction.optional(),
  /** Outside: one width, stepped to follow the way in, or slim with end rings. */
  outside: outsideForm.optional(),
  /** A slim body is so much narrower than its rings, on each side. */
  slimBy: notNegative.optional(),
  ringLength: notNegative.optional(),
  bulkheads: z.array(bulkhead).max(50).optional(),
  discs: z.array(disc).max(50).optional(),
  rods: z.array(rod).max(20).optional(),
  keys: z.array(key).max(20).optional(),
  towers: z.array(tower).max(20).optional(),
  splits: z.array(split).max(10).optional(),
  marks: z.array(mark).max(20).optional(),
  /** Engrave + and − at the cells, an arrow towards the blade and the revision. */
  standardMarks: z.boolean().optional(),
  revision: z.string().max(12).optional(),
  from: zPlace.optional(),
  to: zPlace.optional(),
  diameter: quantity.optional(),
  /** Body pieces of their own diameter, from z to z; together they make up the body. */
  bodies: z
    .array(z.looseObject({ from: zPlace, to: zPlace, diameter: quantity }))
    .max(20)
    .optional(),
  rings: z
    .array(z.looseObject({ id, z: zPlace, face: end.optional(), length: notNegative, diameter: quantity }))
    .max(20)
    .optional(),
  nests: z.array(nest).max(200).optional(),
  channels: z.array(channel).max(50).optional(),
  windows: z.array(window).max(50).optional(),
  seats: z.array(seat).max(20).optional(),
  /** Wall between the body's end and the first part, at each end. */
  rearWall: notNegative.optional(),
  bladeWall: notNegative.optional(),
  chamfer: notNegative.optional(),
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
  /** The state it happens in, where that decides what is there: a clamp open, a lever folded away. */
  during: id.optional(),
})

export type SledInput = z.infer<typeof sled>
export type InsertionInput = z.infer<typeof insertion>
