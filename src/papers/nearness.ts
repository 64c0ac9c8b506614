import { planarGap } from '../../geometry/region/planar-gap.ts'
import { clipped } from '../../geometry/solid/clip.ts'
import { gap } from '../../geometry/solid/gap.ts'
import { reach } from '../../geometry/solid/silhouette.ts'
import { isStraight, sliceOver } from '../../geometry/solid/slice.ts'
import { apart, type Solid, type Span, span } from '../../geometry/solid/solid.ts'
import { type Heading, swept } from '../../geometry/solid/sweep.ts'
import type { SolidPair } from '../body/gap-at.ts'

/** A pair of solids, made ready to be asked about slice after slice of the first. */
export interface Near {
  readonly pair: SolidPair
  readonly way: Heading | undefined
  /** Nowhere is the gap less than this: what the cross-sections alone leave, mm. */
  readonly beside: number
  /** Both keep their cross-section over their length, so that nothing else decides. */
  readonly straight: boolean
}

export function nearOf(pair: SolidPair, way: Heading | undefined): Near {
  const { a, b } = pair
  return { pair, way, beside: besideOf(pair), straight: hasOne(a) && hasOne(b) }
}

/** One cross-section, and nothing else that says where it is. */
const hasOne = (s: Solid): boolean => isStraight(s) && !(s.kind === 'prism' && s.within)

/**
 * The gap of the first solid's slice between two heights to the second solid, mm, if it is less than `least`; on its
 * way in the slice is drawn out behind itself. Exact for straight solids, a lower bound for the rest.
 */
export function gapOfSlice({ pair: { a, b }, way, beside, straight }: Near, slice: Span, least: number): number {
  if (beside >= least) return least
  const own = span(a)
  const cut: Span = { z0: Math.max(own.z0, slice.z0), z1: Math.min(own.z1, slice.z1) }
  if (cut.z1 <= cut.z0) return least
  const along = apart(behind(cut, way), span(b))
  if (along >= least) return least
  if (straight) return Math.min(least, beside > 0 && along > 0 ? Math.hypot(beside, along) : Math.max(beside, along))
  const part = clipped(a, cut.z0, cut.z1)
  if (!part) return least
  return Math.min(least, ...(way ? swept(part, way) : [part]).map((s) => gap(s, b).lo))
}

function behind(s: Span, way: Heading | undefined): Span {
  if (way === 'blade') return { z0: Number.NEGATIVE_INFINITY, z1: s.z1 }
  return way === 'rear' ? { z0: s.z0, z1: Number.POSITIVE_INFINITY } : s
}

function besideOf({ a, b }: SolidPair): number {
  if (b.kind === 'bore') {
    const far = Math.max(...reach(a, b.c).map((r) => Math.max(r.r0, r.r1)))
    return Math.min(b.r0, b.r1) - b.grow - far
  }
  return planarGap(sliceOver(a, span(a)), sliceOver(b, span(b))).d - a.grow - b.grow
}
