import { planarGap } from '../region/planar-gap.ts'
import type { Point } from '../region/point.ts'
import type { Region } from '../region/region.ts'
import { type Enclosing, enclosingAbout, enclosingCircle, type Round } from './enclosing-circle.ts'

/** One thing in a cross-section: a cell's disc, a board's rectangle, a component on it. */
export interface Item {
  readonly id: string
  readonly region: Region
}

export interface PairGap {
  readonly a: string
  readonly b: string
  readonly gap: number
  readonly p: Point
  readonly q: Point
}

export interface Packing {
  /** Gap of every pair, least first; negative where they overlap. mm. */
  readonly pairs: readonly PairGap[]
  /** The smallest round bore, centred on the hilt's axis, that holds everything as placed. Radius, mm. */
  readonly onAxis: Enclosing
  /** The same where the whole load may shift together: the least bore that could hold this arrangement. */
  readonly free: Enclosing
}

/** The load of one cross-section: pairwise gaps and the circles that hold it. Items are discs and convex polygons. */
export function pack(items: readonly Item[]): Packing {
  const pairs: PairGap[] = []
  for (const [i, a] of items.entries()) {
    for (const b of items.slice(i + 1)) {
      const l = planarGap(a.region, b.region)
      pairs.push({ a: a.id, b: b.id, gap: l.d, p: l.p, q: l.q })
    }
  }
  pairs.sort((p, q) => p.gap - q.gap)
  const rounds = items.flatMap(roundsOf)
  return { pairs, onAxis: enclosingAbout({ x: 0, y: 0 }, rounds), free: enclosingCircle(rounds) }
}

/** The discs and corners that an enclosing circle must hold. */
export function roundsOf(item: Item): Round[] {
  const f = item.region.form
  if (f.kind === 'disc') return [{ c: f.c, r: f.r, of: item.id }]
  if (f.kind === 'polygon') return f.points.map((c) => ({ c, r: 0, of: item.id }))
  // Any other outline: its arcs as discs, its straight pieces as corners. The circle may come out too large, never too small.
  return item.region.edges.flatMap((e) =>
    e.kind === 'arc' ? [{ c: e.c, r: e.r, of: item.id }] : [e.a, e.b].map((c) => ({ c, r: 0, of: item.id })),
  )
}

/**
 * Radius (mm) at which a disc of radius r sits when it is pushed towards the wall of a bore of radius R until `gap`
 * is left. Negative where the disc with its gap does not go into the bore at all.
 * @internal
 */
export const pushedTo = (R: number, r: number, gap: number): number => R - gap - r

/**
 * The centre of a box of half-height h pushed outwards along θ until its outer corners leave `gap` to a bore of radius R.
 * @internal
 */
export function boxPushedTo(R: number, halfWidth: number, halfHeight: number, gap: number): number | undefined {
  const inside = R - gap
  return inside > halfWidth ? Math.sqrt(inside * inside - halfWidth * halfWidth) - halfHeight : undefined
}
