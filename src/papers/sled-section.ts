import { type PlanBody, type PlanItem, type PlanSolid, planSpan } from '../../geometry/plan/plan.ts'
import { planSolidAt } from './nominal.ts'
import { spansOnLine } from './plane-line.ts'
import { either, type Span, union, without } from './spans.ts'
import type { Point2 } from './thread-profile.ts'

/** Cut material in a lengthwise section: four-cornered pieces to fill, and the lines one sees between them. */
export interface CutMaterial {
  readonly fills: readonly (readonly Point2[])[]
  readonly edges: readonly (readonly [Point2, Point2])[]
}

/** Looked at this close to the ends of a stretch, so that what begins there is seen, mm. */
const near = 1e-4

/** The bodies of a sled cut along the plane at θ, each by itself. Holes across the axis are drawn at their full width. */
export function sledSection(bodies: readonly PlanBody[], theta: number): CutMaterial {
  const cut = bodies.map((b) => bodySection(b.items, theta))
  return { fills: cut.flatMap((c) => c.fills), edges: cut.flatMap((c) => c.edges) }
}

function bodySection(items: readonly PlanItem[], theta: number): CutMaterial {
  const stations = [...new Set(items.flatMap(({ solid }) => Object.values(planSpan(solid))))].toSorted((a, b) => a - b)
  const fills: Point2[][] = []
  const edges: [Point2, Point2][] = []
  let before: readonly Span[] = []
  for (const [i, z1] of stations.entries()) {
    const z0 = stations[i - 1] ?? z1
    const slab = z1 - z0 > 2 * near ? slabOf(items, theta, z0, z1) : undefined
    if (slab) {
      edges.push(...upright(z0, either(before, slab.first)))
      for (const [j, [a, b]] of slab.first.entries()) {
        const [c, d] = slab.last[j] as Span
        fills.push([
          [z0, a],
          [z1, c],
          [z1, d],
          [z0, b],
        ])
        edges.push(
          [
            [z0, a],
            [z1, c],
          ],
          [
            [z0, b],
            [z1, d],
          ],
        )
      }
      before = slab.last
    }
  }
  edges.push(...upright(stations.at(-1) ?? 0, before))
  return { fills, edges }
}

const upright = (z: number, spans: readonly Span[]): [Point2, Point2][] =>
  spans.map(([a, b]): [Point2, Point2] => [
    [z, a],
    [z, b],
  ])

/** Material at both ends of a stretch; where a taper makes their number differ, that of its middle at both. */
function slabOf(items: readonly PlanItem[], theta: number, z0: number, z1: number) {
  const [first, last] = [material(items, theta, z0 + near), material(items, theta, z1 - near)]
  if (first.length === last.length) return { first, last }
  const middle = material(items, theta, (z0 + z1) / 2)
  return { first: middle, last: middle }
}

/** What the first stage adds less what it cuts, then the same of the second. */
function material(items: readonly PlanItem[], theta: number, z: number): Span[] {
  const of = (stage: number, op: PlanItem['op']): Span[] =>
    items.flatMap((item) => {
      const region = item.op === op && (item.stage ?? 1) === stage ? sideOf(item.solid, z) : undefined
      return region ? spansOnLine(region, theta) : []
    })
  const first = without(union(of(1, 'add')), union(of(1, 'cut')))
  return without(union([...first, ...of(2, 'add')]), union(of(2, 'cut')))
}

/** A hole across the axis shows its full width over its whole height: it is seen along its own axis or from its side. */
function sideOf(s: PlanSolid, z: number) {
  return planSolidAt(s, s.shape === 'spoke' && Math.abs(z - s.z) <= s.radius ? s.z : z)
}
