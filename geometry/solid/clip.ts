import { radiusAt } from './slice.ts'
import { type Bore, type Solid, span, type Turned } from './solid.ts'

/**
 * What a solid has between two heights; undefined where that is nothing. A pin is kept whole where it is met at all:
 * its round is not cut.
 */
export function clipped(s: Solid, from: number, to: number): Solid | undefined {
  const own = span(s)
  const [z0, z1] = [Math.max(own.z0, from), Math.min(own.z1, to)]
  if (z1 <= z0) return undefined
  if (s.kind === 'radial') return s
  if (s.kind === 'prism') return { ...s, z0, z1, ...(s.within ? { within: straight(s.within, z0, z1) } : {}) }
  return straight(s, z0, z1)
}

const straight = <S extends Turned | Bore>(s: S, z0: number, z1: number): S => ({
  ...s,
  z0,
  z1,
  r0: radiusAt(s, z0),
  r1: radiusAt(s, z1),
})
