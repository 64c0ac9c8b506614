import { nearest } from '../region/edge-distance.ts'
import { distance, type Point } from '../region/point.ts'
import type { Region } from '../region/region.ts'

export interface Channel {
  readonly c: Point
  /** Radius of the widest round channel, mm; 0 or less where none fits. */
  readonly r: number
}

/** Found to this, mm. */
const fine = 1e-3

/**
 * The widest round channel (a wire's way) that still fits in a round body of radius R beside what is already there.
 * Searched by quartering squares: the free radius changes no faster than the centre moves, so a square whose middle
 * value plus half diagonal cannot beat the best is dropped. Never reports more than there is.
 */
export function widestChannel(R: number, taken: readonly Region[], wall = 0): Channel {
  const free = (p: Point): number =>
    taken.reduce((least, t) => Math.min(least, freeOf(t, p)), R - wall - Math.hypot(p.x, p.y))
  let best: Channel = { c: { x: 0, y: 0 }, r: free({ x: 0, y: 0 }) }
  let squares: { c: Point; half: number; value: number }[] = [{ c: { x: 0, y: 0 }, half: R, value: best.r }]
  while (squares.length > 0) {
    const next: typeof squares = []
    for (const s of squares) {
      if (s.value + s.half * Math.SQRT2 <= best.r + fine) continue
      for (const [i, j] of [
        [-1, -1],
        [-1, 1],
        [1, -1],
        [1, 1],
      ] as const) {
        const half = s.half / 2
        const c = { x: s.c.x + i * half, y: s.c.y + j * half }
        const value = free(c)
        if (value > best.r) best = { c, r: value }
        next.push({ c, half, value })
      }
    }
    squares = next
  }
  return best
}

function freeOf(region: Region, p: Point): number {
  const d = region.edges.reduce((least, e) => Math.min(least, distance(p, nearest(e, p))), Number.POSITIVE_INFINITY)
  return region.contains(p) ? -d : d
}
