import type { Body } from '../body/body.ts'

/** A simple body for the solid view: numbers only, in the frame of the hilt, mm and degrees, as measured. */
export type SimpleSolid =
  | {
      readonly shape: 'cylinder'
      readonly x: number
      readonly y: number
      readonly z0: number
      readonly z1: number
      readonly r0: number
      readonly r1: number
    }
  | {
      readonly shape: 'box'
      readonly x: number
      readonly y: number
      readonly z0: number
      readonly z1: number
      readonly width: number
      readonly height: number
      readonly facing: number
    }
  | {
      readonly shape: 'sector'
      readonly z0: number
      readonly z1: number
      readonly rIn: number
      readonly rOut: number
      readonly theta: number
      readonly half: number
    }
  | {
      readonly shape: 'pin'
      readonly z: number
      readonly theta: number
      readonly radius: number
      readonly rIn: number
      readonly rOut: number
    }

/** Metal that goes on outwards is shown so far, mm. */
const shownOutwards = 2

/** What a body looks like; undefined for bore walls and carved outlines, which are shown by other means. */
export function simpleSolid({ shape: s }: Body): SimpleSolid | undefined {
  if (s.kind === 'bore' || s.kind === 'outline') return undefined
  if (s.kind === 'pin')
    return {
      shape: 'pin',
      z: s.z.nominal,
      theta: s.theta,
      radius: s.radius.nominal,
      rIn: s.rIn.nominal,
      rOut: s.rOut.nominal,
    }
  const along = { z0: s.z0.nominal, z1: s.z1.nominal }
  if (s.kind === 'sector')
    return {
      shape: 'sector',
      ...along,
      rIn: s.rIn.nominal,
      rOut: s.rOut?.nominal ?? s.rIn.nominal + shownOutwards,
      theta: s.theta,
      half: Math.min(180, s.half.nominal),
    }
  const place = { x: s.x.nominal, y: s.y.nominal, ...along }
  if (s.kind === 'round') return { shape: 'cylinder', ...place, r0: s.r0.nominal, r1: s.r1.nominal }
  return {
    shape: 'box',
    ...place,
    width: 2 * s.halfWidth.nominal,
    height: 2 * s.halfHeight.nominal,
    facing: s.facing,
  }
}

/** The room a solid takes up about the hilt's axis: from, to, and how far out, mm; `x`, `y` is its middle. */
export function roomOf(s: SimpleSolid): { z0: number; z1: number; r: number; x: number; y: number } {
  if (s.shape === 'cylinder') {
    const r = Math.max(s.r0, s.r1)
    return { z0: s.z0, z1: s.z1, r: Math.hypot(s.x, s.y) + r, x: s.x, y: s.y }
  }
  if (s.shape === 'box')
    return { z0: s.z0, z1: s.z1, r: Math.hypot(s.x, s.y) + Math.hypot(s.width, s.height) / 2, x: s.x, y: s.y }
  const middle = s.shape === 'sector' && s.half > 90 ? 0 : (s.rIn + s.rOut) / 2
  const x = middle * Math.cos((s.theta * Math.PI) / 180)
  const y = middle * Math.sin((s.theta * Math.PI) / 180)
  const [z0, z1] = s.shape === 'pin' ? [s.z - s.radius, s.z + s.radius] : [s.z0, s.z1]
  return { z0, z1, r: s.rOut, x, y }
}
