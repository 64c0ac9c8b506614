import type { Body } from '../body/body.ts'
import type { Sled } from '../resolve/assembly.ts'

/**
 * Whether two bodies are meant to touch: the sled's end face on a shoulder, or a ring (or the body) in a bore that
 * centres it. Such a pair is judged by its seat, not by the general clearance.
 */
export function isSeat(sled: Sled, body: Body, obstacle: Body): boolean {
  return (sled.input.seats ?? []).some((seat) => obstacle.of === seat.against && touches(sled, body, seat))
}

type SeatInput = NonNullable<Sled['input']['seats']>[number]

export function touches(sled: Sled, body: Body, seat: SeatInput): boolean {
  if (body.of !== `sleds/${sled.id}` || body.shape.kind === 'pin') return false
  const { z0, z1 } = body.shape
  if (seat.face === 'blade') return z1.nominal >= sled.ends.blade.nominal - 1
  if (seat.face === 'rear') return z0.nominal <= sled.ends.rear.nominal + 1
  if (seat.ring === undefined) return true
  const ring = sled.rings.find((r) => r.id === seat.ring)
  return ring !== undefined && z0.nominal >= ring.z0 - 0.01 && z1.nominal <= ring.z1 + 0.01
}
