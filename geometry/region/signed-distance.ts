import { nearest } from './edge-distance.ts'
import { norm } from './point.ts'
import type { Region } from './region.ts'

/** Distance from (x, y) to a region, negative inside. */
export type SignedDistance = (x: number, y: number) => number

/** A function that gives the distance to a region many times over without making objects. */
export function signedDistance(region: Region): SignedDistance {
  const f = region.form
  if (f.kind === 'disc') return (x, y) => norm(x - f.c.x, y - f.c.y) - f.r
  if (f.kind === 'outside') return (x, y) => f.r - norm(x - f.c.x, y - f.c.y)
  if (f.kind === 'polygon') return convexDistance(f.points)
  return (x, y) => {
    const p = { x, y }
    let best = Number.POSITIVE_INFINITY
    for (const e of region.edges) {
      const q = nearest(e, p)
      best = Math.min(best, norm(q.x - x, q.y - y))
    }
    return region.contains(p) ? -best : best
  }
}

function convexDistance(points: readonly { x: number; y: number }[]): SignedDistance {
  const n = points.length
  const flat = Float64Array.from(points.flatMap((p) => [p.x, p.y]))
  let area = 0
  for (let i = 0; i < n; i++) {
    const j = (i + 1) % n
    area +=
      (flat[2 * i] as number) * (flat[2 * j + 1] as number) - (flat[2 * j] as number) * (flat[2 * i + 1] as number)
  }
  const turn = area >= 0 ? 1 : -1
  return (x, y) => {
    let best = Number.POSITIVE_INFINITY
    let inside = true
    for (let i = 0; i < n; i++) {
      const j = (i + 1) % n
      const [ax, ay, bx, by] = [
        flat[2 * i] as number,
        flat[2 * i + 1] as number,
        flat[2 * j] as number,
        flat[2 * j + 1] as number,
      ]
      const [ux, uy, wx, wy] = [bx - ax, by - ay, x - ax, y - ay]
      if (turn * (ux * wy - uy * wx) < 0) inside = false
      const uu = ux * ux + uy * uy
      const t = uu === 0 ? 0 : Math.min(1, Math.max(0, (wx * ux + wy * uy) / uu))
      const [dx, dy] = [wx - t * ux, wy - t * uy]
      best = Math.min(best, dx * dx + dy * dy)
    }
    const d = Math.sqrt(best)
    return inside ? -d : d
  }
}
