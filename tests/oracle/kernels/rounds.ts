import type { PlanItem, PlanSolid } from '../../../geometry/plan/plan.ts'

/**
 * The rule by which a round becomes a polygon, said again here so that the oracles do not lean on the code they judge:
 * chords at most 0.01 mm off their arc; at least 96 facets, 32 for round bars and holes up to radius 3; a multiple of
 * 4, the first corner on +x (for a spoke, on the cross-section's side), so that corners lie on the axes.
 */
export function facetCount(r: number, least: number): number {
  const fromChord = Math.PI / Math.acos(1 - 0.01 / r)
  return 4 * Math.ceil(Math.max(fromChord, least) / 4)
}

const smallRound = 3
const leastSmall = 32

/** Facets of an item's round faces; 0 where it has none. */
export function facetsOf(s: PlanSolid, least: number): number {
  if (s.shape === 'cylinder') {
    const r = Math.max(s.r0, s.r1)
    return facetCount(r, r > smallRound ? least : leastSmall)
  }
  if (s.shape === 'spoke') return facetCount(s.radius, leastSmall)
  return s.shape === 'ring-sector' ? facetCount(s.rOut, least) : 0
}

/** Chords of a ring sector's arc: steps no longer than a facet of the whole ring, at least two. */
export function arcSteps(half: number, n: number): number {
  return half >= 180 ? n : Math.max(2, Math.ceil((n * half) / 180))
}

type Sector = Extract<PlanSolid, { shape: 'ring-sector' }>

/**
 * Corner radii of an item's polygons: bodies lie inside their rounds and cutters outside, so that no facet eats a
 * clearance; the inner arc of a ring the other way about.
 */
export const outerCorner = (op: PlanItem['op'], r: number, n: number): number =>
  op === 'cut' ? r / Math.cos(Math.PI / n) : r
export const innerCorner = (op: PlanItem['op'], s: Sector, n: number): number =>
  op === 'cut' ? s.rIn : s.rIn / Math.cos(Math.PI / n)
