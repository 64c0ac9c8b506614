import type { PlanBody, PlanItem } from '../../../geometry/plan/plan.ts'
import { arcSteps, facetsOf } from './rounds.ts'

/*
 * How much volume facets may take from a body. A regular n-gon in a circle of radius r has the share
 * ρ(n) = sin(2π/n) / (2π/n) of its area, one around it ρ(n) / cos²(π/n) (computed). Bodies lie inside their rounds and
 * cutters outside, so each round has a skin between itself and its polygon: π r² h (1 − ρ) inside, π r² h (ρ/cos² − 1)
 * outside. Joining and cutting only ask of each point which solids hold it, so a point whose answer changes lies in a
 * skin; and as what is added shrinks and what is cut grows, a point can only be lost. Hence
 *
 *     0 ≤ true volume − faceted volume ≤ sum of the skins,
 *
 * each skin counted only where there is material to lose: between the ends of the body, and not beyond its reach.
 */

/** Share of a circular sector's area that chords between points on its arc keep; `step`: angle of a chord, radians. */
const kept = (step: number): number => Math.sin(step) / step

/** The most a body between two heights may lose to its facets, mm³. */
export function facetBound(body: PlanBody, z0: number, z1: number, least: number): number {
  const reach = Math.max(...body.items.filter((x) => x.op === 'add').map((x) => reachOf(x)))
  return body.items.reduce((sum, x) => sum + skinOf(x, least, z0, z1, reach), 0)
}

function skinOf({ op, solid: s }: PlanItem, least: number, z0: number, z1: number, reach: number): number {
  const n = facetsOf(s, least)
  const whole = (2 * Math.PI) / n
  const around = Math.cos(Math.PI / n) ** -2
  const inside = 1 - kept(whole)
  const outside = kept(whole) * around - 1
  const skin = op === 'add' ? inside : outside
  if (s.shape === 'spoke') return Math.PI * s.radius ** 2 * Math.max(0, Math.min(s.rOut, reach) - s.rIn) * skin
  if (s.shape !== 'cylinder' && s.shape !== 'ring-sector') return 0
  const height = Math.max(0, Math.min(s.z1, z1) - Math.max(s.z0, z0))
  if (s.shape === 'cylinder') return ((Math.PI * (s.r0 ** 2 + s.r0 * s.r1 + s.r1 ** 2)) / 3) * height * skin
  // An arc's chords may be shorter than a facet of the whole ring, while its corners stay where the facet has them.
  const step = (2 * s.half * (Math.PI / 180)) / arcSteps(s.half, n)
  const pie = Math.PI * (s.half / 180) * height
  const [inner, outer] = [s.rIn, s.rOut]
  const centred = !s.x && !s.y
  const arcInside = (r: number) => pie * r ** 2 * (1 - kept(step))
  const arcOutside = (r: number) => (centred && r > reach ? 0 : pie * r ** 2 * (kept(step) * around - 1))
  return op === 'add' ? arcInside(outer) + arcOutside(inner) : arcOutside(outer) + arcInside(inner)
}

/** How far from the axis an item comes, mm. */
function reachOf({ solid: s }: PlanItem): number {
  if (s.shape === 'cylinder') return Math.hypot(s.x, s.y) + Math.max(s.r0, s.r1)
  if (s.shape === 'box') return Math.hypot(s.x, s.y) + Math.hypot(s.width, s.height) / 2
  if (s.shape === 'ring-sector') return Math.hypot(s.x ?? 0, s.y ?? 0) + s.rOut
  if (s.shape === 'spoke') return Math.hypot(Math.max(Math.abs(s.rIn), Math.abs(s.rOut)), s.radius)
  if (s.shape === 'extruded') return Math.max(...s.points.map(([x, y]) => Math.hypot(x, y)))
  const far = Math.max(Math.abs(s.rIn), Math.abs(s.rOut))
  return Math.max(...s.points.map(([t]) => Math.hypot(t, far)))
}

/** Farthest a facet of the body lies from its round, inside or outside, mm. */
export function sagitta(body: PlanBody, least: number): number {
  const off = body.items.map(({ solid: s }) => {
    const n = facetsOf(s, least)
    return n === 0 ? 0 : widestRound(s) * (1 / Math.cos(Math.PI / n) - 1)
  })
  return Math.max(0, ...off)
}

function widestRound(s: PlanItem['solid']): number {
  if (s.shape === 'cylinder') return Math.max(s.r0, s.r1)
  if (s.shape === 'ring-sector') return s.rOut
  return s.shape === 'spoke' ? s.radius : 0
}

/** The body with every cutter as wide as the corners of its polygon. */
export function widened(body: PlanBody, least: number): PlanBody {
  const wider = (s: PlanItem['solid']): PlanItem['solid'] => {
    const n = facetsOf(s, least)
    if (n === 0) return s
    const k = Math.cos(Math.PI / n)
    if (s.shape === 'cylinder') return { ...s, r0: s.r0 / k, r1: s.r1 / k }
    if (s.shape === 'ring-sector') return { ...s, rIn: s.rIn * k, rOut: s.rOut / k }
    return s.shape === 'spoke' ? { ...s, radius: s.radius / k } : s
  }
  return { ...body, items: body.items.map((x) => (x.op === 'cut' ? { ...x, solid: wider(x.solid) } : x)) }
}
