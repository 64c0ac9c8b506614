import { z } from 'zod'
import { end, id, ref, zPlace } from './place.ts'
import { quantity } from './quantity.ts'

const named = { id, name: z.string().max(120).optional(), note: z.string().max(2000).optional() }

export const hilt = z.looseObject({ ...named, model: z.string().max(120).optional() })

/**
 * One step of a bore, from the rear. `plain` has a diameter (and another at its blade end where it tapers);
 * `threaded` names its thread and may have a reading too; `solid` has no bore. One step of a section may leave its
 * length out: it takes what is left.
 */
export const boreStep = z.looseObject({
  ...named,
  id: id.optional(),
  kind: z.enum(['plain', 'threaded', 'solid']).optional(),
  length: quantity.optional(),
  diameter: quantity.optional(),
  diameterEnd: quantity.optional(),
  thread: z.string().max(40).optional(),
  threadClass: z.string().max(10).optional(),
  /** Coating, paint or burr that narrows the bore, mm on each side. */
  allowance: quantity.optional(),
})

export const outsideStep = z.looseObject({
  length: quantity.optional(),
  diameter: quantity,
  diameterEnd: quantity.optional(),
})

export const section = z.looseObject({
  ...named,
  hilt: id.optional(),
  z: zPlace.optional(),
  length: quantity,
  material: z.string().max(60).optional(),
  outside: z.array(outsideStep).max(50).optional(),
  bore: z.array(boreStep).max(100),
  /** The bore's axis beside the hilt's axis: how far and towards which clock angle. */
  eccentricity: z.looseObject({ offset: quantity, theta: quantity.optional() }).optional(),
  /** A slotted clamp closes on what is inside: bore diameters open and closed, and the states in which it is open. */
  clamp: z.looseObject({ open: quantity, closed: quantity, openIn: z.array(id).optional() }).optional(),
})

export const joint = z.looseObject({
  ...named,
  kind: z.enum(['threaded', 'clamped', 'slip', 'bayonet', 'glued']),
  rear: id,
  blade: id,
  opens: z.boolean().optional(),
  wiresCross: z.boolean().optional(),
  thread: z.string().max(40).optional(),
  /** How far one section reaches into the other, mm. */
  engagement: quantity.optional(),
  /** How far the sections can shift sideways, mm each way. */
  play: quantity.optional(),
})

const pin = z.looseObject({
  form: z.literal('pin'),
  diameter: quantity,
  reach: quantity.optional(),
  tip: quantity.optional(),
  round: quantity.optional(),
})
const block = z.looseObject({
  form: z.literal('block'),
  length: quantity,
  width: quantity,
  reach: quantity.optional(),
  tip: quantity.optional(),
})
const ringSector = z.looseObject({
  form: z.literal('ring-sector'),
  length: quantity,
  half: quantity,
  reach: quantity.optional(),
  tip: quantity.optional(),
})
const round = z.looseObject({ form: z.literal('round'), diameter: quantity, depth: quantity.optional() })
const slot = z.looseObject({ form: z.literal('slot'), length: quantity, width: quantity, depth: quantity.optional() })

/**
 * Something in or through the wall. Holes, slots, windows and recesses add room (depth from the bore, through where
 * left out); intrusions take it (reach from the bore wall inwards, or the radius of the tip from the axis).
 */
export const feature = z.looseObject({
  ...named,
  kind: z.enum(['hole', 'slot', 'window', 'recess', 'intrusion']),
  on: ref,
  at: z.looseObject({ z: zPlace, face: end.optional(), theta: quantity.optional() }),
  shape: z.discriminatedUnion('form', [pin, block, ringSector, round, slot], {
    error: 'form: "pin", "block", "ring-sector", "round" or "slot"§Name the form and its dimensions.',
  }),
  /** The states in which it is there; all where left out. */
  states: z.array(id).optional(),
  fitted: z.enum(['before', 'after']).optional(),
  sharp: z.boolean().optional(),
})

/** A cover over the outside: grip sleeve, clamp band, ring, strip. */
export const sleeve = z.looseObject({
  ...named,
  on: ref.optional(),
  kind: z.enum(['grip-sleeve', 'clamp', 'ring', 'strip', 'cover']).optional(),
  z: zPlace,
  length: quantity,
  theta: quantity.optional(),
  half: quantity.optional(),
  inside: quantity.optional(),
  outside: quantity.optional(),
  standoff: quantity.optional(),
  rearEnd: z.enum(['open', 'closed']).optional(),
  bladeEnd: z.enum(['open', 'closed']).optional(),
  sliding: z.boolean().optional(),
})

/** A screw through the wall. Its tip is an intrusion once it is in: radius of the tip from the axis. */
export const screw = z.looseObject({
  ...named,
  on: ref,
  at: z.looseObject({ z: zPlace, theta: quantity.optional() }),
  thread: z.string().max(40),
  tip: quantity.optional(),
  fitted: z.enum(['before', 'after']).optional(),
  states: z.array(id).optional(),
})

export type SectionInput = z.infer<typeof section>
export type BoreStepInput = z.infer<typeof boreStep>
export type FeatureInput = z.infer<typeof feature>
export type JointInput = z.infer<typeof joint>
export type ScrewInput = z.infer<typeof screw>
