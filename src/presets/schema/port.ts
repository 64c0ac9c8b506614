import { z } from 'zod'
import { body } from './body.ts'
import { entryOf } from './entry.ts'
import { interval } from './interval.ts'

/** A round charge socket through a wall; the body is what is behind it. */
const barrel = {
  type: z.literal('barrel'),
  /** Diameter of the centre pin. */
  pin: z.number().positive(),
  thread: z.string().optional(),
  hole: interval,
  /** Room behind the body for its wires to turn, at least. */
  wireBend: z.number().min(0),
  plug: z.strictObject({
    outside: z.number().positive(),
    bore: z.number().positive(),
    /** Barrel that enters the socket. */
    barrel: interval,
    /** Grip that stays outside. */
    body: interval,
  }),
}

const usb = {
  type: z.literal('usb-c'),
  opening: z.strictObject({ width: interval, height: interval }),
  wireBend: z.number().min(0),
  /** Presets of the plugs that go in. */
  mates: z.array(z.string()).min(1),
}

/** mm. */
export const port = z.discriminatedUnion('type', [
  entryOf('port', { ...barrel, body }),
  entryOf('port', { ...usb, body }),
])
