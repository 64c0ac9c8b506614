import { type Edge, pointAt } from '../../geometry/region/edge.ts'
import { distance, type Point } from '../../geometry/region/point.ts'
import type { Region } from '../../geometry/region/region.ts'

/** One step of an outline: straight to a point, or along a circle of radius `r`. Plain numbers, mm. */
export interface OutlineStep {
  readonly x: number
  readonly y: number
  /** Absent for a straight step. */
  readonly r?: number
  /** The longer way round. */
  readonly large?: boolean
  /** Counted the way θ grows. */
  readonly forward?: boolean
}

/** A line of straight and round steps; closed where its end is its start. */
export interface Outline {
  readonly x: number
  readonly y: number
  readonly steps: readonly OutlineStep[]
  readonly closed: boolean
}

/** Ends closer than this belong together, mm. */
const joint = 1e-6

/** The boundary of a region as outlines one can follow with a pen. Pieces that meet end to end become one. */
export function outlinesOf(region: Region): Outline[] {
  return chain(region.edges).map((pieces): Outline => {
    const start = pieces[0]?.from as Point
    const end = pieces.at(-1)?.to as Point
    return { x: start.x, y: start.y, steps: pieces.flatMap(stepsOf), closed: distance(start, end) < joint }
  })
}

interface Piece {
  readonly edge: Edge
  readonly from: Point
  readonly to: Point
  readonly turned: boolean
}

function chain(edges: readonly Edge[]): Piece[][] {
  const open = new Set(edges)
  const chains: Piece[][] = []
  for (const first of edges) {
    if (!open.delete(first)) continue
    const pieces: Piece[] = [{ edge: first, from: pointAt(first, 0), to: pointAt(first, 1), turned: false }]
    for (;;) {
      const end = pieces.at(-1)?.to as Point
      const next = [...open].flatMap((edge): Piece[] => {
        const [a, b] = [pointAt(edge, 0), pointAt(edge, 1)]
        if (distance(a, end) < joint) return [{ edge, from: a, to: b, turned: false }]
        return distance(b, end) < joint ? [{ edge, from: b, to: a, turned: true }] : []
      })[0]
      if (!next) break
      open.delete(next.edge)
      pieces.push(next)
    }
    chains.push(pieces)
  }
  return chains
}

/** A whole circle takes two steps: a pen cannot go from a point to itself. */
function stepsOf(p: Piece): OutlineStep[] {
  const { edge } = p
  if (edge.kind === 'segment') return [{ x: p.to.x, y: p.to.y }]
  const halves = edge.sweep > Math.PI ? [0.5, 1] : [1]
  const ends = halves.map((t) => (p.turned ? 1 - t : t))
  return ends.map((t): OutlineStep => ({ ...pointAt(edge, t), r: edge.r, large: false, forward: !p.turned }))
}
