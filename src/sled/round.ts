import type { PlanItem, PlanSolid } from '../../geometry/plan/plan.ts'

type Rest = Omit<PlanItem, 'id' | 'solid'>

/** Shorthands for plan items: most nests are made of these two. */
export function rodItem(
  rest: Rest,
  id: string,
  c: { x: number; y: number },
  r: number,
  z0: number,
  z1: number,
): PlanItem {
  return { ...rest, id, solid: { shape: 'cylinder', x: c.x, y: c.y, z0, z1, r0: r, r1: r } }
}

/** A block seen from the clock angle it faces: from height v0 to v1 along it, `width` wide, `aside` off the middle. */
export function blockFacing(
  facing: number,
  aside: number,
  v0: number,
  v1: number,
  width: number,
  z0: number,
  z1: number,
): PlanSolid {
  const v = (v0 + v1) / 2
  const [c, s] = [Math.cos((facing * Math.PI) / 180), Math.sin((facing * Math.PI) / 180)]
  return { shape: 'box', x: v * c - aside * s, y: v * s + aside * c, z0, z1, width, height: v1 - v0, facing }
}

/** A point's distance along a clock angle, and aside of it. */
export function seenFacing(p: { x: number; y: number }, facing: number): { v: number; aside: number } {
  const [c, s] = [Math.cos((facing * Math.PI) / 180), Math.sin((facing * Math.PI) / 180)]
  return { v: p.x * c + p.y * s, aside: -p.x * s + p.y * c }
}
