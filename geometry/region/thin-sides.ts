import { opposed } from '../wall.ts'
import { type Edge, pointAt } from './edge.ts'
import { distance, norm, type Point, point } from './point.ts'
import type { Region } from './region.ts'

/** A stretch of a cut's side that has little material behind it. */
export interface ThinSide {
  /** At its thinnest, mm, and there the middle of the wall. */
  readonly thickness: number
  readonly at: Point
  /** Along the side, mm. */
  readonly length: number
}

/** A side is looked at every so many mm. */
const step = 0.2

/**
 * The sides of a cut behind which less than `thin` is left to another cut or to the outside: straight from the side into the material,
 * to where it comes out again. Where two cuts run into each other, or one into the outside, at a shallow angle, such
 * sides are left on either hand.
 */
export function thinSides(region: Region, other: Region, thin: number): ThinSide[] {
  return region.edges.flatMap((e) => zones(region, e, other, thin))
}

function zones(region: Region, e: Edge, other: Region, thin: number): ThinSide[] {
  const length = e.kind === 'segment' ? distance(e.a, e.b) : e.r * e.sweep
  const n = Math.min(400, Math.ceil(length / step))
  const found: ThinSide[] = []
  let open: ThinSide | undefined
  for (let i = 0; i < n; i++) {
    const p = pointAt(e, (i + 0.5) / n)
    const u = outwards(region, e, p)
    const thickness = other.contains(p) ? 0 : behind(p, u, other.edges)
    if (thickness > 0 && thickness < thin) {
      const thinner = !open || thickness < open.thickness
      const at = thinner ? point(p.x + (thickness / 2) * u.x, p.y + (thickness / 2) * u.y) : (open as ThinSide).at
      open = {
        thickness: thinner ? thickness : (open as ThinSide).thickness,
        at,
        length: (open?.length ?? 0) + length / n,
      }
    } else {
      if (open) found.push(open)
      open = undefined
    }
  }
  return open ? [...found, open] : found
}

/** From p along u to the first edge met; Infinity where none is, or where it is not met squarely. */
function behind(p: Point, u: Point, edges: readonly Edge[]): number {
  let [least, square] = [Number.POSITIVE_INFINITY, 0]
  for (const e of edges) {
    for (const t of meets(p, u, e)) {
      if (t < same || t >= least) continue
      least = t
      const n = normalAt(e, point(p.x + t * u.x, p.y + t * u.y))
      square = Math.abs(n.x * u.x + n.y * u.y)
    }
  }
  return square >= opposed ? least : Number.POSITIVE_INFINITY
}

const same = 1e-9

/** Along the ray, where it crosses an edge. */
function meets(p: Point, u: Point, e: Edge): number[] {
  if (e.kind === 'segment') {
    const [dx, dy] = [e.b.x - e.a.x, e.b.y - e.a.y]
    const across = u.x * dy - u.y * dx
    if (across === 0) return []
    const [ax, ay] = [e.a.x - p.x, e.a.y - p.y]
    const s = (ax * u.y - ay * u.x) / across
    return s >= 0 && s <= 1 ? [(ax * dy - ay * dx) / across] : []
  }
  const [x, y] = [p.x - e.c.x, p.y - e.c.y]
  const along = x * u.x + y * u.y
  const left = along * along + e.r * e.r - x * x - y * y
  if (left < 0) return []
  const root = Math.sqrt(left)
  return [-along - root, -along + root].filter((t) => {
    const turn = Math.atan2(y + t * u.y, x + t * u.x) - e.start
    return ((turn % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI) <= e.sweep
  })
}

const beside = 1e-4

/** Unit vector out of the region, square to its boundary at p. */
function outwards(region: Region, e: Edge, p: Point): Point {
  const u = normalAt(e, p)
  return region.contains(point(p.x + beside * u.x, p.y + beside * u.y)) ? point(-u.x, -u.y) : u
}

function normalAt(e: Edge, p: Point): Point {
  const [x, y] = e.kind === 'segment' ? [e.b.y - e.a.y, e.a.x - e.b.x] : [p.x - e.c.x, p.y - e.c.y]
  const l = norm(x, y) || 1
  return point(x / l, y / l)
}
