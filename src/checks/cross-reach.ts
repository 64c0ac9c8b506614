import type { Shape } from '../body/body.ts'
import { least, most, reachOf } from '../quantity/quantity.ts'

/** A radius about the hilt's axis, as far as it is known. */
export interface Reach {
  readonly least: number
  readonly nominal: number
  readonly most: number
}

/** From the axis to the nearest point of what lies along it. */
export function nearest(s: Shape): Reach {
  if (s.kind === 'sector') return { least: least(s.rIn), nominal: s.rIn.nominal, most: most(s.rIn) }
  if (s.kind !== 'round' && s.kind !== 'box') return nothing
  return atEnds(s, (aside) =>
    s.kind === 'round'
      ? (k) => Math.max(0, Math.hypot(...aside(k)) - Math.max(at(s.r0, -k), at(s.r1, -k)))
      : (k) => {
          const [u, v] = aside(k)
          return Math.hypot(Math.max(0, u - at(s.halfWidth, -k)), Math.max(0, v - at(s.halfHeight, -k)))
        },
  )
}

/** The widest circle about the axis within which all is the body's own, and a whole ring's outer radius; 0 where none is. */
export function filled(s: Shape): Reach {
  if (s.kind === 'sector' && s.half.nominal >= 180 && s.rOut)
    return { least: least(s.rOut), nominal: s.rOut.nominal, most: most(s.rOut) }
  if (s.kind !== 'round' && s.kind !== 'box') return nothing
  return atEnds(s, (aside) =>
    s.kind === 'round'
      ? (k) => Math.max(0, Math.min(at(s.r0, k), at(s.r1, k)) - Math.hypot(...aside(-k)))
      : (k) => {
          const [u, v] = aside(-k)
          return Math.max(0, Math.min(at(s.halfWidth, k) - u, at(s.halfHeight, k) - v))
        },
  )
}

const nothing: Reach = { least: 0, nominal: 0, most: 0 }
type End = -1 | 0 | 1
type Placed = Extract<Shape, { kind: 'round' | 'box' }>

const at = (q: Parameters<typeof least>[0], k: number): number => (k < 0 ? least(q) : k > 0 ? most(q) : q.nominal)

/** How far its middle lies from the axis, across and along the way it faces: the least, as measured, the most. */
function atEnds(s: Placed, of: (aside: (k: number) => [number, number]) => (k: End) => number): Reach {
  const facing = ((s.kind === 'box' ? s.facing : 0) * Math.PI) / 180
  const [c, n] = [Math.cos(facing), Math.sin(facing)]
  const [x, y, doubt] = [s.x.nominal, s.y.nominal, Math.hypot(reachOf(s.x), reachOf(s.y))]
  const off = (by: number, k: number): number => Math.max(0, Math.abs(by) + k * doubt)
  const value = of((k) => [off(y * c - x * n, k), off(x * c + y * n, k)])
  return { least: value(-1), nominal: value(0), most: value(1) }
}
