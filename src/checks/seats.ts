import { reachFromAxis } from '../../geometry/region/farthest.ts'
import { norm } from '../../geometry/region/point.ts'
import type { Body } from '../body/body.ts'
import type { Insertion, Sled } from '../resolve/assembly.ts'

/**
 * Whether two bodies are meant to touch: the sled's end face on a shoulder, or a ring (or the body) in a bore that
 * centres it. Such a pair is judged by its seat, not by the general clearance. On its way (`heading`) a face comes
 * against its shoulder only where it leads; the one behind would have to go through it.
 */
export function isSeat(sled: Sled, body: Body, obstacle: Body, heading?: Insertion['heading']): boolean {
  return (sled.input.seats ?? []).some(
    (seat) =>
      obstacle.of === seat.against &&
      (heading === undefined || seat.face === 'around' || seat.face === heading) &&
      touches(sled, body, seat),
  )
}

/** Radii closer than this are one, mm. */
const same = 1e-6

/** How far a shape reaches from the axis, as drawn: a tower or a key on the sled centres nothing. */
function outer(s: Body['shape']): number {
  if (s.kind === 'outline') return reachFromAxis(s.region)
  return s.kind === 'round' ? Math.max(s.r0.nominal, s.r1.nominal) + norm(s.x.nominal, s.y.nominal) : 0
}

type SeatInput = NonNullable<Sled['input']['seats']>[number]

export function touches(sled: Sled, body: Body, seat: SeatInput): boolean {
  if (body.of !== `sleds/${sled.id}` || body.shape.kind === 'pin') return false
  const { z0, z1 } = body.shape
  // What goes on past the face would stand in the shoulder.
  const past = seat.face === 'rear' ? sled.ends.rear.nominal - z0.nominal : z1.nominal - sled.ends.blade.nominal
  if (seat.face !== 'around') return Math.abs(past + 0.5) <= 0.5 + same
  if (seat.ring === undefined) return outer(body.shape) <= Math.max(...sled.pieces.map((p) => p.radius)) + same
  const ring = sled.rings.find((r) => r.id === seat.ring)
  return ring !== undefined && z0.nominal >= ring.z0 - 0.01 && z1.nominal <= ring.z1 + 0.01
}
