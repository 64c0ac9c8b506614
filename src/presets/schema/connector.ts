import { z } from 'zod'
import { body } from './body.ts'
import { entryOf } from './entry.ts'
import { interval } from './interval.ts'

/** A data or charge plug on its cable: the body is the moulding the hand holds, the shell is what enters. */
const plug = {
  type: z.literal('plug'),
  shell: z.strictObject({ width: interval, height: interval }),
  /** Room the cable needs to turn behind a straight moulding. */
  bend: z.number().min(0).optional(),
}

/** The hilt's half of the blade connector: a disc with spring pins towards the blade. */
const pinDisc = {
  type: z.literal('pin-disc'),
  pins: interval,
  /** Pins above the disc, uncompressed. */
  standOut: interval,
  /** Compression at which a pin presses as it should. */
  stroke: interval,
  /** N and A, each pin. */
  force: interval,
  current: interval,
  wireBend: z.number().min(0),
}

/** The blade's half: flat rings on a disc. */
const ringDisc = { type: z.literal('ring-disc') }

/** A small housing in the middle of a cable, which must pass every channel the cable passes. */
const housing = { type: z.literal('housing'), pitch: z.number().positive(), ways: z.number().int().positive() }

const card = {
  type: z.literal('card'),
  /** Thickness at the end with the contacts. */
  contactEnd: interval,
  /** Length fingers or tweezers need. */
  grip: z.number().positive(),
  /** How much further it is pushed to spring out. */
  overTravel: interval,
}

/** mm, N, A. */
export const connector = z.discriminatedUnion('type', [
  entryOf('connector', { ...plug, body }),
  entryOf('connector', { ...pinDisc, body }),
  entryOf('connector', { ...ringDisc, body }),
  entryOf('connector', { ...housing, body }),
  entryOf('connector', { ...card, body }),
])
