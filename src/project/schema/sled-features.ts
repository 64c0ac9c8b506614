import { z } from 'zod'
import { notNegative, number } from './number.ts'
import { id, zPlace } from './place.ts'

/** How a sled is built: a solid cage, a back with arms and walls, or discs on rods. */
export const construction = z.enum(['full-cage', 'open-cradle', 'discs-on-rods'])

export const outsideForm = z.enum(['straight', 'throat', 'slim'])

/** A cross wall where the construction leaves none. */
export const bulkhead = z.looseObject({ id, z: zPlace, thickness: notNegative.optional() })

/** One disc of a sled of discs on rods, its rear face at z. */
export const disc = z.looseObject({ id, z: zPlace, thickness: notNegative.optional() })

/** A rod along the whole sled: a bought tube or bar, not printed. */
export const rod = z.looseObject({
  id,
  theta: number,
  r: notNegative.optional(),
  diameter: notNegative.optional(),
  /** Gap around it, one side. */
  gap: notNegative.optional(),
})

/** Stops the sled from turning: a rib that rides in a slot of the hilt, or a groove that takes a pin. */
export const key = z.looseObject({
  id,
  kind: z.enum(['key', 'keyway']).optional(),
  theta: number,
  width: notNegative.optional(),
  height: notNegative.optional(),
  from: zPlace.optional(),
  to: zPlace.optional(),
})

/** A ring sector that stands up from the body to carry a switch under the wall: its outer radius, half-angle, length. */
export const tower = z.looseObject({
  id,
  theta: number,
  half: notNegative.optional(),
  outer: notNegative,
  inner: notNegative.optional(),
  from: zPlace,
  to: zPlace,
})

/** A cut across the sled into two printed bodies, joined by pins or by a dovetail. */
export const split = z.looseObject({
  id,
  z: zPlace,
  joint: z.enum(['pins', 'dovetail', 'plain']).optional(),
  pinDiameter: notNegative.optional(),
  pinLength: notNegative.optional(),
  gap: notNegative.optional(),
  theta: number.optional(),
  /** Dovetail: its width at the plane and at its end. */
  foot: notNegative.optional(),
  head: notNegative.optional(),
})

/** Engraved text on the outside, read along the axis. */
export const mark = z.looseObject({
  id,
  text: z.string().min(1).max(40),
  z: zPlace,
  theta: number.optional(),
  height: notNegative.optional(),
  depth: notNegative.optional(),
  /** Width of a line. */
  stroke: notNegative.optional(),
})
