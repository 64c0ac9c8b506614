import type { Quantity, Spread } from '../quantity/quantity.ts'
import type { Body } from './body.ts'

/** How a quantity acts on the gap to another body. */
export type Role = 'height' | 'place' | 'larger-tighter' | 'smaller-tighter'

export interface Acting {
  readonly quantity: Quantity
  readonly role: Role
}

/** Every quantity of a body, with the way it acts. Drift is told apart: it goes any way by definition. */
export function acting(b: Body): readonly Acting[] {
  let found = known.get(b)
  if (!found) {
    found = actingOf(b)
    known.set(b, found)
  }
  return found
}

const known = new WeakMap<Body, readonly Acting[]>()

function actingOf(b: Body): Acting[] {
  return b.swell ? [...ofShape(b), { quantity: b.swell, role: 'larger-tighter' }] : ofShape(b)
}

function ofShape(b: Body): Acting[] {
  const s = b.shape
  const as = (role: Role, ...list: readonly (Quantity | undefined)[]): Acting[] =>
    list.flatMap((quantity) => (quantity ? [{ quantity, role }] : []))
  if (s.kind === 'pin')
    return [...as('height', s.z), ...as('larger-tighter', s.radius, s.rOut), ...as('smaller-tighter', s.rIn)]
  const heights = as('height', s.z0, s.z1)
  if (s.kind === 'round') return [...heights, ...as('place', s.x, s.y), ...as('larger-tighter', s.r0, s.r1)]
  if (s.kind === 'box')
    return [...heights, ...as('place', s.x, s.y), ...as('larger-tighter', s.halfWidth, s.halfHeight)]
  if (s.kind === 'sector') return [...heights, ...as('smaller-tighter', s.rIn), ...as('larger-tighter', s.rOut, s.half)]
  if (s.kind === 'outline') return heights
  const openings = (s.openings ?? []).flatMap((o) => as('smaller-tighter', o.halfWidth, o.floor))
  return [...heights, ...as('place', s.x, s.y), ...as('smaller-tighter', s.r0, s.r1), ...openings]
}

/** Every spread that moves a face of these bodies, each once. */
export function spreadsOf(...bodies: readonly Body[]): Spread[] {
  const found = new Map<string, Spread>()
  for (const b of bodies) {
    const all = [
      ...acting(b).map((a) => a.quantity),
      ...(b.drift ? [b.drift] : []),
      ...(b.sway ? [b.sway] : []),
      ...(b.turn ? [b.turn] : []),
    ]
    for (const q of all) for (const t of q.terms) found.set(t.spread.path, t.spread)
  }
  return [...found.values()]
}

export function placeOf(b: Body): { x: Quantity | undefined; y: Quantity | undefined } {
  return 'x' in b.shape ? { x: b.shape.x, y: b.shape.y } : { x: undefined, y: undefined }
}
