import { opposed } from '../wall.ts'
import { crossings, type Edge, lengthOf, pointAt, segment } from './edge.ts'
import { holdsOf } from './holds.ts'
import { norm, type Point, point } from './point.ts'
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
 * The sides of a cut behind which less than `thin` is left to another cut or to the outside: straight from the side
 * into the material, to where it comes out again. Where two cuts run into each other, or one into the outside, at a
 * shallow angle, such sides are left on either hand. mm.
 */
export function thinSides(region: Region, other: Region, thin: number): ThinSide[] {
  return region.edges.flatMap((e, i) => zones(region, e, { other, edges: within(thin, region, i, other) }, thin))
}

/** What may be met: the other region, and those of its edges that are near enough. */
interface Behind {
  readonly other: Region
  readonly edges: readonly Edge[]
}

/** The edges of the other region of which some point may be within `thin` of the i-th edge, by the circles that hold them. */
function within(thin: number, region: Region, i: number, other: Region): Edge[] {
  const [own, others] = [holdsOf(region), holdsOf(other)]
  const [x, y, r] = [own[3 * i] as number, own[3 * i + 1] as number, own[3 * i + 2] as number]
  return other.edges.filter((_, j) => {
    const apart = norm(x - (others[3 * j] as number), y - (others[3 * j + 1] as number))
    return apart <= r + (others[3 * j + 2] as number) + thin + beside
  })
}

function zones(region: Region, e: Edge, behind: Behind, thin: number): ThinSide[] {
  if (behind.edges.length === 0) return []
  const n = Math.min(400, Math.ceil(lengthOf(e) / step))
  const found: ThinSide[] = []
  let open: ThinSide | undefined
  for (let i = 0; i < n; i++) {
    const wall = wallAt(region, pointAt(e, (i + 0.5) / n), e, behind, thin)
    if (!wall) open = undefined
    else {
      const thinner = open && open.thickness <= wall.thickness ? open : wall
      const longer = { ...thinner, length: (open?.length ?? 0) + lengthOf(e) / n }
      if (open) found.pop()
      found.push(longer)
      open = longer
    }
  }
  return found
}

/** From a point of a side straight into the material to the other; undefined where that is not met squarely within `thin`. */
function wallAt(
  region: Region,
  p: Point,
  side: Edge,
  { other, edges }: Behind,
  thin: number,
): Omit<ThinSide, 'length'> | undefined {
  if (other.contains(p)) return undefined
  const u = outwards(region, side, p)
  const ray = segment(p, point(p.x + thin * u.x, p.y + thin * u.y))
  let first: Edge | undefined
  let least = Number.POSITIVE_INFINITY
  for (const e of edges)
    for (const t of crossings(ray, e))
      if (t > same && t < least) {
        first = e
        least = t
      }
  if (!first) return undefined
  const n = normalAt(first, pointAt(ray, least))
  if (Math.abs(n.x * u.x + n.y * u.y) < opposed) return undefined
  return { thickness: least * thin, at: pointAt(ray, least / 2) }
}

/** A side that lies on the other's begins no wall there; as a part of the ray. */
const same = 1e-6
/** So far beside a boundary is looked to tell its two sides apart, mm. */
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
