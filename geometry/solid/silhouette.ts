import { farthest } from '../region/farthest.ts'
import { distance, type Point, polar } from '../region/point.ts'
import { halfLength, type Radial, type Solid } from './solid.ts'

/**
 * How far a body reaches from an axis, along z: the half-plane picture in which a round bore needs no sampling. Each
 * piece is a straight line of radius over z.
 */
export interface Reach {
  readonly z0: number
  readonly z1: number
  readonly r0: number
  readonly r1: number
  /** The farthest point, for telling where. */
  readonly far: Point
  /** False where the piece only bounds the body from outside (the round of a pin seen from the side). */
  readonly exact: boolean
}

/** The reach of a solid about the axis through c. Empty for metal, which has no far side. */
export function reach(s: Solid, c: Point): Reach[] {
  if (s.kind === 'bore') return []
  if (s.kind === 'turned') {
    const e = distance(s.c, c)
    const r = Math.max(s.r0, s.r1)
    const u = e > 0 ? { x: (s.c.x - c.x) / e, y: (s.c.y - c.y) / e } : { x: 1, y: 0 }
    const far = { x: s.c.x + r * u.x, y: s.c.y + r * u.y }
    return [
      { z0: s.z0, z1: s.z1, r0: Math.max(0, e + s.r0 + s.grow), r1: Math.max(0, e + s.r1 + s.grow), far, exact: true },
    ]
  }
  if (s.kind === 'prism') {
    const far = farthest(s.region, c)
    const r = Math.max(0, distance(far, c) + s.grow)
    return [{ z0: s.z0, z1: s.z1, r0: r, r1: r, far, exact: true }]
  }
  return pinReach(s, c)
}

/** A pin seen along its length: its tip face as a band that rises to the middle, and a box around it. */
function pinReach(s: Radial, c: Point): Reach[] {
  const { theta, rIn, rOut, radius, z, grow, side = 0, stretch = 0 } = s
  // One that goes on across the axis may reach farther there.
  const ends = [polar(rOut, theta), polar(rIn, theta)] as const
  const tip = rIn < 0 && distance(ends[1], c) > distance(ends[0], c) ? ends[1] : ends[0]
  const corner = (half: number): Point => {
    const across = polar(Math.max(0, half + side), theta + 90)
    const [p, q] = [
      { x: tip.x + across.x, y: tip.y + across.y },
      { x: tip.x - across.x, y: tip.y - across.y },
    ]
    return distance(p, c) > distance(q, c) ? p : q
  }
  const long = halfLength(s)
  if (long <= 0) return []
  const widest = stretch >= 0 ? radius : Math.sqrt(Math.max(0, radius * radius - stretch * stretch))
  const flat = Math.max(0, stretch)
  const far = corner(widest)
  const r = distance(far, c) + grow
  const middle = distance(corner(0), c) + grow
  return [
    { z0: z - long - grow, z1: z + long + grow, r0: r, r1: r, far, exact: false },
    { z0: z - flat, z1: z + flat, r0: r, r1: r, far, exact: true },
    { z0: z - long, z1: z - flat, r0: middle, r1: r, far, exact: true },
    { z0: z + flat, z1: z + long, r0: r, r1: middle, far, exact: true },
  ]
}
