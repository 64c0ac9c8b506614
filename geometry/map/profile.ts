import { radialRange } from '../region/radial-range.ts'
import type { Region } from '../region/region.ts'
import { sliceOver } from '../solid/slice.ts'
import type { Solid, Span } from '../solid/solid.ts'

/**
 * For every clock cell the least inner and the greatest outer radius of a cross-section. `none` (an inner radius of
 * Infinity, an outer of −Infinity) where the cell has nothing of it.
 */
export interface Profile {
  readonly inner: Float64Array
  readonly outer: Float64Array
}

/** The profile of a region, grown by `grow` mm on all sides: outwards, inwards and around. Never too small. */
export function profileOf(region: Region, nTheta: number, grow: number): Profile {
  const inner = new Float64Array(nTheta).fill(Number.POSITIVE_INFINITY)
  const outer = new Float64Array(nTheta).fill(Number.NEGATIVE_INFINITY)
  const step = 360 / nTheta
  const round = region.form.kind === 'disc' || region.form.kind === 'outside' ? region.form : undefined
  if (round && Math.hypot(round.c.x, round.c.y) < 1e-12) {
    if (round.kind === 'disc') return { inner: inner.fill(0), outer: outer.fill(Math.max(0, round.r + grow)) }
    return { inner: inner.fill(Math.max(0, round.r - grow)), outer: outer.fill(Number.POSITIVE_INFINITY) }
  }
  for (let i = 0; i < nTheta; i++) {
    const range = radialRange(region, i * step, (i + 1) * step)
    if (!range) continue
    inner[i] = Math.max(0, range.min - grow)
    outer[i] = range.max + grow
  }
  return grow > 0 ? around({ inner, outer }, nTheta, grow) : { inner, outer }
}

/** Spreads a profile around the axis by `grow` mm of arc, measured where it comes nearest to the axis. */
function around(p: Profile, nTheta: number, grow: number): Profile {
  const inner = Float64Array.from(p.inner)
  const outer = Float64Array.from(p.outer)
  const step = (2 * Math.PI) / nTheta
  for (let i = 0; i < nTheta; i++) {
    const r = p.inner[i] as number
    if (!Number.isFinite(r)) continue
    const reach = r > grow ? Math.ceil(Math.asin(grow / r) / step) : Math.ceil(nTheta / 4)
    for (let k = -reach; k <= reach; k++) {
      const j = (((i + k) % nTheta) + nTheta) % nTheta
      inner[j] = Math.min(inner[j] as number, r)
      outer[j] = Math.max(outer[j] as number, p.outer[i] as number)
    }
  }
  return { inner, outer }
}

/** The profile of what a solid has between two heights. */
export function profileOver(s: Solid, over: Span, nTheta: number, grow: number): Profile {
  return profileOf(sliceOver(s, over), nTheta, grow + s.grow)
}
