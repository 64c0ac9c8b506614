import { carve } from '../../geometry/region/carve.ts'
import { polar } from '../../geometry/region/point.ts'
import { disc, outside, type Region, rectangle, sector } from '../../geometry/region/region.ts'
import type { Solid } from '../../geometry/solid/solid.ts'
import type { Tight } from '../quantity/level.ts'
import type { Quantity } from '../quantity/quantity.ts'
import type { Body, BoreShape, Opening } from './body.ts'

/** Gives a number for a quantity; `tight` tells which way leaves less room, 0 that it has no such way (a place). */
export type Pick = (q: Quantity, tight: Tight | 0) => number

/** Smallest size kept when an interval would let a body vanish, mm. */
const least = 1e-4

/** The body with numbers only. `grow` swells it in the cross-section, mm. */
export function realise(body: Body, pick: Pick, grow = 0): Solid {
  const s = body.shape
  const swell = body.swell ? pick(body.swell, 1) : 0
  const g = grow + swell
  if (s.kind === 'pin') {
    const tip = pick(s.rIn, -1)
    const rOut = Math.max(pick(s.rOut, 1), tip + least)
    return {
      kind: 'radial',
      theta: s.theta,
      z: pick(s.z, 0),
      radius: Math.max(least, pick(s.radius, 1)),
      rIn: tip,
      rOut,
      grow: g,
    }
  }
  const z0 = pick(s.z0, -1) - swell
  const z1 = Math.max(pick(s.z1, 1) + swell, z0)
  if (s.kind === 'round') {
    const c = { x: pick(s.x, 0), y: pick(s.y, 0) }
    const [r0, r1] = [Math.max(least, pick(s.r0, 1)), Math.max(least, pick(s.r1, 1))]
    return r0 === r1
      ? { kind: 'prism', region: disc(c, r0), z0, z1, grow: g }
      : { kind: 'turned', c, z0, z1, r0, r1, grow: g }
  }
  if (s.kind === 'bore') {
    const c = { x: pick(s.x, 0), y: pick(s.y, 0) }
    const [r0, r1] = [pick(s.r0, -1), pick(s.r1, -1)]
    if (s.openings && s.openings.length > 0)
      return { kind: 'prism', region: slotted(s, Math.min(r0, r1), c, pick), z0, z1, grow: g }
    return { kind: 'bore', c, z0, z1, r0, r1, grow: g }
  }
  if (s.kind === 'box') {
    const region = rectangle(
      { x: pick(s.x, 0), y: pick(s.y, 0) },
      Math.max(least, pick(s.halfWidth, 1)),
      Math.max(least, pick(s.halfHeight, 1)),
      s.facing,
    )
    return { kind: 'prism', region, z0, z1, grow: g }
  }
  if (s.kind === 'sector') {
    const rIn = Math.max(0, pick(s.rIn, -1))
    const rOut = s.rOut ? Math.max(rIn + least, pick(s.rOut, 1)) : Number.POSITIVE_INFINITY
    return { kind: 'prism', region: sector(rIn, rOut, s.theta, Math.max(0.01, pick(s.half, 1))), z0, z1, grow: g }
  }
  return { kind: 'prism', region: s.region, z0, z1, grow: g }
}

/** A bore with slots in its wall: the metal less each slot, which starts inside the bore. */
function slotted(s: BoreShape, r: number, c: { x: number; y: number }, pick: Pick): Region {
  return carve(
    outside(c, r),
    (s.openings ?? []).map((o) => slotRegion(o, pick)),
  )
}

function slotRegion(o: Opening, pick: Pick): Region {
  const floor = o.floor ? pick(o.floor, -1) : 1000
  return rectangle(polar(floor / 2, o.theta), Math.max(least, pick(o.halfWidth, -1)), floor / 2, o.theta)
}
