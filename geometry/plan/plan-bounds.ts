import type { Bounds } from '../mesh/mesh.ts'
import { along, type Edge, pointAt } from '../region/edge.ts'
import type { Point } from '../region/point.ts'
import { sectionOf, slabsOf } from './cross-section.ts'
import { type PlanBody, planSpan } from './plan.ts'

/**
 * Bounds the body must have: those of its cross-sections, exact for what is added and cut along z. Rounds become
 * polygons with a corner on each axis, so a mesh meets these bounds to within the chord error. Holes across the axis
 * never reach farther than the body and are left out.
 */
export function planBounds(body: PlanBody): Bounds {
  const slabs = slabsOf(body.items)
  const points = slabs.flatMap((s) => s.region.edges.flatMap(extremes))
  // What is added across the axis (a dovetail's tongue) has no cross-section of its own, but may be the longest.
  const across = body.items
    .filter((x) => x.op === 'add' && sectionOf(x.solid) === undefined)
    .map((x) => planSpan(x.solid))
  const stretches = [...slabs, ...across]
  const [xs, ys] = [points.map((p) => p.x), points.map((p) => p.y)]
  return {
    min: [Math.min(...xs), Math.min(...ys), Math.min(...stretches.map((s) => s.z0))],
    max: [Math.max(...xs), Math.max(...ys), Math.max(...stretches.map((s) => s.z1))],
  }
}

/** Ends of an edge, and for an arc the places where it points along an axis. */
function extremes(e: Edge): Point[] {
  const ends = [pointAt(e, 0), pointAt(e, 1)]
  if (e.kind === 'segment') return ends
  const axes = [0, 1, 2, 3].flatMap((k) => {
    const t = along(e, (k * Math.PI) / 2)
    return t === undefined ? [] : [pointAt(e, t)]
  })
  return [...ends, ...axes]
}
