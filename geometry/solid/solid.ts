import type { Point } from '../region/point.ts'
import type { Region } from '../region/region.ts'

/**
 * A body with numbers only, in the frame of the hilt: z along the axis from the rear, cross-sections in x, y.
 *
 * `grow` swells it in the cross-section by so many mm on every side (shrinks it where negative): that is how print
 * error and doubt about a position enter a distance without changing the shape.
 */
export type Solid = Prism | Turned | Bore | Radial

/** Any cross-section, the same from z0 to z1. */
export interface Prism {
  readonly kind: 'prism'
  readonly region: Region
  readonly z0: number
  readonly z1: number
  readonly grow: number
  /** It lies within this too (a chamfered end that is cut, a taper with slots): what is clear of one is clear of it. */
  readonly within?: Turned | Bore
}

/** Filled and round about an axis parallel to z through `c`, radius r0 at z0 running straight to r1 at z1. */
export interface Turned {
  readonly kind: 'turned'
  readonly c: Point
  readonly z0: number
  readonly z1: number
  readonly r0: number
  readonly r1: number
  readonly grow: number
}

/** The metal around a bore step: everything farther than the radius from the axis through `c`, between z0 and z1. */
export interface Bore {
  readonly kind: 'bore'
  readonly c: Point
  readonly z0: number
  readonly z1: number
  readonly r0: number
  readonly r1: number
  readonly grow: number
}

/** A round pin that points at the axis: a screw tip, a switch body. From radius rIn to rOut at clock angle theta. */
export interface Radial {
  readonly kind: 'radial'
  readonly theta: number
  readonly z: number
  readonly radius: number
  readonly rIn: number
  readonly rOut: number
  readonly grow: number
  /** Wider across the axis by so much on each side, the same all along its round: doubt about its clock angle. */
  readonly side?: number
  /** Drawn out along z by so much each way (negative: what all heights within it share): doubt about its height. */
  readonly stretch?: number
}

export interface Span {
  readonly z0: number
  readonly z1: number
}

/** The stretch of the axis a solid takes up, mm. */
export function span(s: Solid): Span {
  if (s.kind !== 'radial') return { z0: s.z0, z1: s.z1 }
  const half = Math.max(0, halfLength(s)) + s.grow
  return { z0: s.z - half, z1: s.z + half }
}

/** Half the stretch of the axis over which a pin has any width at all; negative where doubt leaves nothing of it. */
export function halfLength({ radius, side = 0, stretch = 0 }: Radial): number {
  return Math.sqrt(Math.max(0, radius * radius - Math.min(0, side) ** 2)) * (side <= -radius ? 0 : 1) + stretch
}

/** The distance between two stretches; negative: minus the length they share. */
export function apart(a: Span, b: Span): number {
  return Math.max(a.z0 - b.z1, b.z0 - a.z1)
}

/** The solid moved along the axis by `dz`. */
export function moved<S extends Solid>(s: S, dz: number): S {
  if (s.kind === 'prism' && s.within) return { ...s, z0: s.z0 + dz, z1: s.z1 + dz, within: moved(s.within, dz) }
  return s.kind === 'radial' ? { ...s, z: s.z + dz } : { ...s, z0: s.z0 + dz, z1: s.z1 + dz }
}
