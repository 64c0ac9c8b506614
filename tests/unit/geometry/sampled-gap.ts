import { type Edge, pointAt } from '../../../geometry/region/edge.ts'
import type { Point } from '../../../geometry/region/point.ts'
import { sliceAt } from '../../../geometry/solid/slice.ts'
import { type Solid, span } from '../../../geometry/solid/solid.ts'

interface Sample {
  readonly p: Point
  readonly z: number
}

/** The distance between two solids by brute force: points on every slice of each, and membership. Only an upper bound. */
export function sampledGap(a: Solid, b: Solid): { distance: number; overlaps: boolean } {
  const [sa, sb] = [cloud(a), cloud(b)]
  let distance = Number.POSITIVE_INFINITY
  for (const s of sa)
    for (const t of sb) distance = Math.min(distance, Math.hypot(s.p.x - t.p.x, s.p.y - t.p.y, s.z - t.z))
  const overlaps = sa.some((s) => inside(b, s)) || sb.some((s) => inside(a, s))
  return { distance: overlaps ? 0 : distance, overlaps }
}

function cloud(s: Solid): Sample[] {
  const { z0, z1 } = span(s)
  const heights = Array.from({ length: 13 }, (_, i) => z0 + ((z1 - z0) * i) / 12)
  return heights.flatMap((z) => {
    const region = sliceAt(s, z)
    if (!region) return []
    return [...region.edges.flatMap(spread), region.core].map((p) => ({ p, z }))
  })
}

function spread(e: Edge): Point[] {
  return Array.from({ length: 17 }, (_, i) => pointAt(e, i / 16))
}

function inside(s: Solid, q: Sample): boolean {
  const { z0, z1 } = span(s)
  return q.z > z0 + 1e-9 && q.z < z1 - 1e-9 && (sliceAt(s, q.z)?.contains(q.p) ?? false)
}
