import { polar } from '../region/point.ts'
import { disc, outside, type Region, rectangle } from '../region/region.ts'
import type { Radial, Solid, Span } from './solid.ts'

/** The cross-section at one z that the solid certainly has; undefined where it is not there. `grow` is left out. */
export function sliceAt(s: Solid, z: number): Region | undefined {
  if (s.kind === 'radial') {
    const half = halfWidth(s, z - s.z)
    return half > 0 ? pin(s, half) : undefined
  }
  if (z < s.z0 || z > s.z1) return undefined
  if (s.kind === 'prism') return s.region
  const r = radiusAt(s, z)
  if (s.kind === 'bore') return outside(s.c, r)
  return r > 0 ? disc(s.c, r) : undefined
}

/** A cross-section that holds every slice of the solid between two z. */
export function sliceOver(s: Solid, over: Span): Region {
  if (s.kind === 'prism') return s.region
  if (s.kind === 'radial') {
    const off = Math.max(0, over.z0 - s.z, s.z - over.z1)
    return pin(s, Math.max(halfWidth(s, off), thinnest))
  }
  const [a, b] = [radiusAt(s, Math.max(s.z0, over.z0)), radiusAt(s, Math.min(s.z1, over.z1))]
  return s.kind === 'bore' ? outside(s.c, Math.min(a, b)) : disc(s.c, Math.max(a, b, 1e-6))
}

/** Radius of a straight-sided round body at z, mm. */
export function radiusAt(s: { z0: number; z1: number; r0: number; r1: number }, z: number): number {
  if (s.r0 === s.r1 || s.z1 === s.z0 || !Number.isFinite(s.z0) || !Number.isFinite(s.z1)) return z < s.z1 ? s.r0 : s.r1
  const t = Math.min(1, Math.max(0, (z - s.z0) / (s.z1 - s.z0)))
  return s.r0 + t * (s.r1 - s.r0)
}

/** What is left of a pin that an interval lets vanish, mm. */
const thinnest = 1e-6

function halfWidth(s: Radial, dz: number): number {
  const stretch = s.stretch ?? 0
  const off = stretch >= 0 ? Math.max(0, Math.abs(dz) - stretch) : Math.abs(dz) - stretch
  const round = s.radius * s.radius - off * off
  return round > 0 ? Math.sqrt(round) + (s.side ?? 0) : 0
}

function pin(s: Radial, half: number): Region {
  return rectangle(polar((s.rIn + s.rOut) / 2, s.theta), half, (s.rOut - s.rIn) / 2, s.theta)
}

/** True where one cross-section serves the whole length, so that a distance needs no search along z. */
export function isStraight(s: Solid): boolean {
  return s.kind === 'prism' || (s.kind !== 'radial' && s.r0 === s.r1)
}
