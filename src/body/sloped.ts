import type { Turned } from '../../geometry/solid/solid.ts'
import type { BoreShape, Outline, Round } from './body.ts'
import { least, type Pick } from './pick.ts'

interface Straight {
  readonly z0: number
  readonly z1: number
  readonly r0: number
  readonly r1: number
}

/**
 * The wall of a tapered bore where its ends are in doubt along the axis: the taper lies where it leaves least room,
 * which is towards its wide end, and is drawn on to all the metal there may be.
 */
export function taper(s: BoreShape, pick: Pick, { z0, z1, r0, r1 }: Straight): { r0: number; r1: number } {
  const towards = r0 < r1 ? 1 : -1
  const [a, b] = [pick(s.z0, towards), pick(s.z1, towards)]
  if (b <= a) return { r0: Math.min(r0, r1), r1: Math.min(r0, r1) }
  const slope = (r1 - r0) / (b - a)
  return { r0: Math.max(0, r0 + slope * (z0 - a)), r1: Math.max(0, r1 + slope * (z1 - b)) }
}

/**
 * A cone whose face lies `swell` outside where it was drawn, square to the face; the cross-section's own growth comes
 * on top. Doubt along the axis moves it towards its narrow end. What lies beside its wide end must be a body of its own.
 */
export function cone(s: Round, pick: Pick, r0: number, r1: number, swell: number): Straight {
  const rising = r0 < r1
  const [a, b] = [pick(s.z0, rising ? -1 : 1), pick(s.z1, rising ? -1 : 1)]
  const slope = b > a ? Math.abs(r1 - r0) / (b - a) : 0
  const square = Math.hypot(1, slope)
  const narrow = Math.max(least, Math.min(r0, r1) + (square - slope - 1) * swell)
  const back = slope > 0 ? ((square - 1) / slope) * swell : 0
  return rising ? { z0: a - swell, z1: b - back, r0: narrow, r1 } : { z0: a + back, z1: b + swell, r0, r1: narrow }
}

interface Chamfered {
  readonly z0: number
  readonly z1: number
  readonly swell: number
  readonly grow: number
}

/**
 * The cone that an outline lies in, its face `swell` outside where it was drawn, square to the face, and drawn on over
 * the whole stretch. Doubt along the axis moves it towards its narrow end.
 */
export function chamfer(
  s: Outline,
  { r0, r1 }: { readonly r0: number; readonly r1: number },
  pick: Pick,
  { z0, z1, swell, grow }: Chamfered,
): Turned | undefined {
  const towards = r0 < r1 ? -1 : 1
  const [a, b] = [pick(s.z0, towards), pick(s.z1, towards)]
  if (b <= a) return undefined
  const slope = (r1 - r0) / (b - a)
  const out = (Math.hypot(1, slope) - 1) * swell
  const at = (z: number): number => Math.max(least, r0 + slope * (z - a) + out)
  return { kind: 'turned', c: { x: 0, y: 0 }, z0, z1, r0: at(z0), r1: at(z1), grow }
}
