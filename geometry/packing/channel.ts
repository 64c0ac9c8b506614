import { nearest } from '../region/edge-distance.ts'
import { distance, type Point } from '../region/point.ts'
import type { Region } from '../region/region.ts'

export interface Channel {
  readonly c: Point
  /** Radius of the widest round channel, mm; 0 or less where none fits. */
  readonly r: number
}

/** The search by squares stops when no square can beat the best by more than this, mm; climbing does the rest. */
const coarse = 0.05
/** Climbing ends at this step, mm. */
const fine = 1e-4

/**
 * The widest round channel (a wire's way) that still fits in a round body of radius R beside what is already there,
 * `wall` mm kept from the outside and from everything else.
 * The free radius changes no faster than the centre moves, so a square whose middle value plus half diagonal cannot
 * beat the best is dropped; the best is then climbed to its top. Never reports more than there is.
 */
export function widestChannel(R: number, taken: readonly Region[], wall = 0): Channel {
  const free = (p: Point): number =>
    taken.reduce(
      (least, t) => (least <= 0 ? least : Math.min(least, freeOf(t, p) - wall)),
      R - wall - Math.hypot(p.x, p.y),
    )
  const start: Point = { x: 0, y: 0 }
  let best: Channel = { c: start, r: free(start) }
  let squares: { c: Point; half: number; value: number }[] = [{ c: start, half: R, value: best.r }]
  while (squares.length > 0) {
    const next: typeof squares = []
    for (const s of squares) {
      if (s.value + s.half * Math.SQRT2 <= Math.max(0, best.r) + coarse) continue
      const half = s.half / 2
      for (const [i, j] of [
        [-1, -1],
        [-1, 1],
        [1, -1],
        [1, 1],
      ] as const) {
        const c = { x: s.c.x + i * half, y: s.c.y + j * half }
        const value = free(c)
        if (value > best.r) best = climb({ c, r: value }, half / 2, free)
        next.push({ c, half, value })
      }
    }
    squares = next.sort((a, b) => b.value - a.value)
  }
  return climb(best, coarse, free)
}

/** Uphill in ever smaller steps, eight ways. */
function climb(from: Channel, first: number, free: (p: Point) => number): Channel {
  let best = from
  for (let step = first; step > fine; ) {
    let better: Channel | undefined
    for (let k = 0; k < 8; k++) {
      const c = { x: best.c.x + step * Math.cos((k * Math.PI) / 4), y: best.c.y + step * Math.sin((k * Math.PI) / 4) }
      const r = free(c)
      if (r > (better ?? best).r + 1e-9) better = { c, r }
    }
    if (better) best = better
    else step /= 2
  }
  return best
}

function freeOf(region: Region, p: Point): number {
  const f = region.form
  if (f.kind === 'disc') return distance(p, f.c) - f.r
  const d = region.edges.reduce((least, e) => Math.min(least, distance(p, nearest(e, p))), Number.POSITIVE_INFINITY)
  return region.contains(p) ? -d : d
}
