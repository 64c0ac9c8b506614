import { norm, type Point } from '../region/point.ts'
import type { Region } from '../region/region.ts'
import { signedDistance } from '../region/signed-distance.ts'

export interface Channel {
  readonly c: Point
  /** Radius of the widest round channel, mm; 0 or less where none fits. */
  readonly r: number
}

/** The search by squares stops when no square can beat the best by more than this, mm; climbing does the rest. */
const coarse = 0.05
/** Climbing ends at this step, mm. */
const fine = 1e-3
/** Eight ways to climb. */
const ways = Array.from({ length: 8 }, (_, k) => [Math.cos((k * Math.PI) / 4), Math.sin((k * Math.PI) / 4)] as const)

/** The free radius at a place; where it is no more than `enough`, anything up to that may be told instead. */
type Free = (x: number, y: number, enough: number) => number

/**
 * The widest round channel (a wire's way) that still fits in a round body of radius R beside what is already there,
 * `wall` mm kept from the outside and from everything else. The free radius changes no faster than the centre moves,
 * so a square whose middle value plus half diagonal cannot beat the best is dropped; the best is then climbed to its
 * top. Never reports more than there is. Where only a channel of radius `wanted` or more is of use, the search gives
 * up early, and what it tells then is no more than a channel that does not do.
 */
export function widestChannel(R: number, taken: readonly Region[], wall = 0, wanted = 0): Channel {
  const free = freeRadius(R, taken, wall)
  let best: Channel = climb(0, 0, free(0, 0, -R), R / 4, free)
  let squares: { x: number; y: number; value: number }[] = [{ x: 0, y: 0, value: R }]
  for (let half = R; squares.length > 0; half /= 2) {
    const next: typeof squares = []
    const limit = Math.max(0, best.r + coarse, wanted)
    let top: { x: number; y: number; value: number } | undefined
    for (const s of squares) {
      if (s.value + half * Math.SQRT2 <= limit) continue
      for (const i of [-half / 2, half / 2]) {
        for (const j of [-half / 2, half / 2]) {
          const [x, y] = [s.x + i, s.y + j]
          const least = limit - (half / 2) * Math.SQRT2
          const value = free(x, y, least)
          if (value <= least) continue
          const square = { x, y, value }
          next.push(square)
          if (!top || value > top.value) top = square
        }
      }
    }
    if (top && top.value > best.r) best = climb(top.x, top.y, top.value, half / 4, free)
    squares = next
  }
  return best
}

/** Nearer things are asked first next time: places that are asked about follow one another closely. */
function freeRadius(R: number, taken: readonly Region[], wall: number): Free {
  const things = taken.map((t) => ({ distance: signedDistance(t), hold: t.hold }))
  return (x, y, enough) => {
    let least = R - norm(x, y)
    for (let i = 0; i < things.length && least - wall > enough; i++) {
      const { distance, hold } = things[i] as (typeof things)[number]
      if (norm(x - hold.c.x, y - hold.c.y) - hold.r >= least) continue
      const d = distance(x, y)
      if (d >= least) continue
      least = d
      if (i > 0)
        [things[i - 1], things[i]] = [things[i], things[i - 1]] as [(typeof things)[number], (typeof things)[number]]
    }
    return least - wall
  }
}

/** Uphill in ever smaller steps. */
function climb(x: number, y: number, value: number, first: number, free: Free): Channel {
  let [cx, cy, r] = [x, y, value]
  for (let step = first; step > fine; ) {
    let [bx, by, better] = [cx, cy, r]
    for (const [ux, uy] of ways) {
      const found = free(cx + step * ux, cy + step * uy, better)
      if (found > better + 1e-9) [bx, by, better] = [cx + step * ux, cy + step * uy, found]
    }
    if (better > r) [cx, cy, r] = [bx, by, better]
    else step /= 2
  }
  return { c: { x: cx, y: cy }, r }
}
