import { add, bend, exact, most, type Quantity, scale, sub } from '../quantity/quantity.ts'
import type { BlockPiece, Local } from './part-body.ts'

/** How far a part reaches from its own middle, all pieces together. */
export interface Extent {
  /** Half of its whole width and height; for a round part its radius. */
  readonly halfU: Quantity
  readonly halfV: Quantity
  /** Its middle, where the place in the cross-section is meant. */
  readonly u: Quantity
  readonly v: Quantity
  readonly round: boolean
  /** How far another piece may reach beyond the one that reaches farthest as measured; nominal 0. */
  readonly uneven?: Quantity
}

export function extentOf(local: Local): Extent {
  const [first] = local.pieces
  if (first?.kind === 'round')
    return { halfU: first.radius, halfV: first.radius, u: exact(0), v: exact(0), round: true }
  const blocks = local.pieces.filter((p): p is BlockPiece => p.kind === 'block')
  if (blocks.length === 0) return { halfU: exact(0), halfV: exact(0), u: exact(0), v: exact(0), round: false }
  const reaches = [
    farthest(blocks, (p) => add(p.v, p.halfV)),
    farthest(blocks, (p) => sub(p.halfV, p.v)),
    farthest(blocks, (p) => add(p.u, p.halfU)),
    farthest(blocks, (p) => sub(p.halfU, p.u)),
  ] as const
  const [top, bottom, right, left] = reaches.map((r) => r.reach) as [Quantity, Quantity, Quantity, Quantity]
  const uneven = add(...reaches.map((r) => r.beyond))
  return {
    uneven,
    halfU: scale(add(right, left), 0.5),
    halfV: scale(add(top, bottom), 0.5),
    u: scale(sub(right, left), 0.5),
    v: scale(sub(top, bottom), 0.5),
    round: false,
  }
}

/** The piece that reaches farthest at nominal decides; its spread goes with it. Another may reach beyond it. */
function farthest(pieces: readonly BlockPiece[], of: (p: BlockPiece) => Quantity) {
  const all = pieces.map(of)
  const reach = all.reduce((a, b) => (b.nominal > a.nominal ? b : a))
  const past = all.map((b) => sub(b, reach)).reduce((a, b) => (most(b) > most(a) ? b : a))
  return { reach, beyond: bend(most(past), [past], 'pieces of a part that may reach equally far') }
}

/** Support of a part along a direction that is `turn` degrees away from the way it faces, mm. */
export function reachAlong(e: Extent, turn: number): Quantity {
  if (e.round) return e.halfU
  const [c, s] = [Math.abs(Math.cos((turn * Math.PI) / 180)), Math.abs(Math.sin((turn * Math.PI) / 180))]
  return add(scale(e.halfV, c), scale(e.halfU, s))
}
