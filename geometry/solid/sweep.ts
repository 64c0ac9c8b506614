import { polar } from '../region/point.ts'
import { rectangle } from '../region/region.ts'
import { halfLength, type Prism, type Radial, type Solid, type Turned } from './solid.ts'

/** Which way a body travels on its way in: towards the blade (z grows) or towards the rear. */
export type Heading = 'blade' | 'rear'

/**
 * All the places a body passes on a straight way in that ends where it now is: its shape drawn out behind it without
 * end. What it clears here it clears at every depth of the way.
 */
export function swept(s: Solid, heading: Heading): Solid[] {
  const [z0, z1] = heading === 'blade' ? [Number.NEGATIVE_INFINITY, undefined] : [undefined, Number.POSITIVE_INFINITY]
  if (s.kind === 'prism') {
    const trail = stretch(s, z0, z1)
    if (s.within?.kind !== 'turned') return [trail]
    return sweptTurned(s.within, heading).map((within) => ({ ...trail, within }))
  }
  if (s.kind === 'turned') return sweptTurned(s, heading)
  if (s.kind === 'radial') return sweptPin(s, heading)
  throw new RangeError('metal does not travel: sweep the other body')
}

function stretch<S extends Prism | Turned>(s: S, z0: number | undefined, z1: number | undefined): S {
  return { ...s, z0: z0 ?? s.z0, z1: z1 ?? s.z1 }
}

function sweptTurned(s: Turned, heading: Heading): Turned[] {
  const r = Math.max(s.r0, s.r1)
  const widest = heading === 'blade' ? (s.r1 >= s.r0 ? s.z1 : s.z0) : s.r0 >= s.r1 ? s.z0 : s.z1
  const trail: Turned =
    heading === 'blade'
      ? { ...s, z0: Number.NEGATIVE_INFINITY, z1: widest, r0: r, r1: r }
      : { ...s, z0: widest, z1: Number.POSITIVE_INFINITY, r0: r, r1: r }
  return s.r0 === s.r1 || widest === (heading === 'blade' ? s.z1 : s.z0) ? [trail] : [trail, s]
}

function sweptPin(s: Radial, heading: Heading): Solid[] {
  const stretch = s.stretch ?? 0
  if (halfLength(s) <= 0) return []
  const widest = stretch >= 0 ? s.radius : Math.sqrt(s.radius * s.radius - stretch * stretch)
  const half = Math.max(1e-6, widest + (s.side ?? 0))
  const region = rectangle(polar((s.rIn + s.rOut) / 2, s.theta), half, (s.rOut - s.rIn) / 2, s.theta)
  const last = s.z + (heading === 'blade' ? 1 : -1) * Math.max(0, stretch)
  const trail =
    heading === 'blade' ? { z0: Number.NEGATIVE_INFINITY, z1: last } : { z0: last, z1: Number.POSITIVE_INFINITY }
  return [{ kind: 'prism', region, ...trail, grow: s.grow }, s]
}
