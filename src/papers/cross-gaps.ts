import { planarGap } from '../../geometry/region/planar-gap.ts'
import type { Point } from '../../geometry/region/point.ts'
import type { Region } from '../../geometry/region/region.ts'

/** Something at one height that must keep its distance. */
export interface Obstacle {
  readonly of: string
  readonly name: string
  readonly region: Region
  /** wall: metal; inside: carried by a sled; passing: at another height when all is in, but it goes through here. */
  readonly role: 'wall' | 'inside' | 'passing'
  /** Of what passes, the move by which it comes; of a wall, the move during which it is met: none where all is in. */
  readonly way?: string
  /** Ids of what it is meant to touch. */
  readonly meant: readonly string[]
}

/** One gap of the cross-section: from a point on one thing to a point on the other, mm. Negative where they overlap. */
export interface CrossGap {
  readonly a: string
  readonly b: string
  readonly ids: readonly [string, string]
  readonly p: Point
  readonly q: Point
  readonly gap: number
  readonly limit: number
  readonly passing: boolean
  /** The one with least left over its limit. */
  readonly tightest: boolean
}

/** Gaps wider than this are not worth a number in the picture, mm. */
const widest = 3
/** No picture is clearer for more numbers than this. */
const most = 6

/** The gaps one looks at in a cross-section, tightest first: every two things once, at their nearest. */
export function crossGaps(
  things: readonly Obstacle[],
  limits: { readonly wall: number; readonly part: number },
): CrossGap[] {
  const least = new Map<string, Omit<CrossGap, 'tightest'>>()
  for (const [i, a] of things.entries())
    for (const b of things.slice(i + 1)) {
      if (!judged(a, b)) continue
      const link = planarGap(a.region, b.region)
      const key = [a.of, b.of, a.role === 'passing' || b.role === 'passing'].join(' ')
      const known = least.get(key)
      if (link.d > widest || (known && known.gap <= link.d)) continue
      const limit = a.role === 'wall' || b.role === 'wall' ? limits.wall : limits.part
      const passing = a.role === 'passing' || b.role === 'passing'
      least.set(key, { a: a.name, b: b.name, ids: [a.of, b.of], p: link.p, q: link.q, gap: link.d, limit, passing })
    }
  const sorted = [...least.values()].toSorted((a, b) => a.gap - a.limit - (b.gap - b.limit))
  return shown(sorted)
    .slice(0, most)
    .map((g, i) => ({ ...g, tightest: i === 0 }))
}

/** What passes is told only where it is tighter than the same thing in its place. */
function shown(sorted: readonly Omit<CrossGap, 'tightest'>[]) {
  return sorted.filter(
    (g, i) => !g.passing || !sorted.slice(0, i).some((o) => o.ids[0] === g.ids[0] && o.ids[1] === g.ids[1]),
  )
}

function judged(a: Obstacle, b: Obstacle): boolean {
  if (a.of === b.of || a.meant.includes(b.of) || b.meant.includes(a.of)) return false
  if (a.role === 'wall' || b.role === 'wall') return a.role !== b.role && a.way === b.way
  // Two things that both move keep their distance from each other wherever they are.
  return a.role === 'inside' && b.role === 'inside'
}
