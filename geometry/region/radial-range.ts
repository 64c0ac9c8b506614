import { type Arc, along, crossings, type Edge, pointAt, segment } from './edge.ts'
import { nearest } from './edge-distance.ts'
import { clock, type Point, polar, turnBetween } from './point.ts'
import type { Region } from './region.ts'

/** Least and greatest distance from the axis of what a region has between two clock angles; undefined where it has nothing. */
export interface RadialRange {
  readonly min: number
  readonly max: number
}

/** How far a ray is drawn, mm: beyond any hilt. */
const endless = 1e4

/**
 * The radial range of a region in the wedge from θ0 to θ1 (degrees, θ1 > θ0, at most 90 apart). Exact for straight
 * pieces and arcs; metal without an outer end has max = Infinity.
 */
export function radialRange(region: Region, theta0: number, theta1: number): RadialRange | undefined {
  const middle = (theta0 + theta1) / 2
  const half = (theta1 - theta0) / 2
  let [min, max] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  const take = (p: Point) => {
    const r = Math.hypot(p.x, p.y)
    min = Math.min(min, r)
    max = Math.max(max, r)
  }
  const inWedge = (p: Point) => Math.abs(turnBetween(middle, clock(p))) <= half + 1e-9
  const rays = [theta0, theta1].map((t) => segment({ x: 0, y: 0 }, polar(endless, t)))
  for (const e of region.edges) {
    for (const p of [pointAt(e, 0), pointAt(e, 1), ...turning(e)]) if (inWedge(p)) take(p)
    for (const ray of rays) for (const t of crossings(e, ray)) take(pointAt(e, t))
  }
  if (region.contains({ x: 0, y: 0 })) min = 0
  if (region.contains(polar(endless, middle))) max = Number.POSITIVE_INFINITY
  if (min > max) return undefined
  return { min, max }
}

/** Where an edge comes nearest to the axis or goes farthest from it, its ends aside. */
function turning(e: Edge): Point[] {
  if (e.kind === 'segment') return [nearest(e, { x: 0, y: 0 })]
  return centred(e) ? [] : extremes(e)
}

const centred = (e: Arc): boolean => Math.hypot(e.c.x, e.c.y) < 1e-12

function extremes(e: Arc): Point[] {
  const away = Math.atan2(e.c.y, e.c.x)
  return [away, away + Math.PI].flatMap((w) => {
    const t = along(e, w)
    return t === undefined ? [] : [pointAt(e, t)]
  })
}
