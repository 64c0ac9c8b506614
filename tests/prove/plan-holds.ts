import type { PlanBody, PlanItem, PlanSolid } from '../../geometry/plan/plan.ts'
import { atClock, type V3 } from './vec.ts'

/** Whether a point lies in what the plan draws: its first stage, and what the second adds to it and takes from it. */
export function planHolds(plan: PlanBody, p: V3): boolean {
  const within = (op: PlanItem['op'], stage: PlanItem['stage']): boolean =>
    plan.items.some((i) => i.op === op && i.stage === stage && holds(i.solid, p))
  const first = within('add', undefined) && !within('cut', undefined)
  return (first || within('add', 2)) && !within('cut', 2)
}

function holds(s: PlanSolid, p: V3): boolean {
  const u = atClock(1, 'theta' in s ? s.theta : 'facing' in s ? s.facing : 0)
  const out = (x: number, y: number): number => (p.x - x) * u.x + (p.y - y) * u.y
  const side = (x: number, y: number): number => (p.y - y) * u.x - (p.x - x) * u.y
  switch (s.shape) {
    case 'spoke':
      return out(0, 0) > s.rIn && out(0, 0) < s.rOut && Math.hypot(side(0, 0), p.z - s.z) < s.radius
    case 'cylinder':
      return (
        between(p.z, s.z0, s.z1) &&
        Math.hypot(p.x - s.x, p.y - s.y) < s.r0 + ((p.z - s.z0) / (s.z1 - s.z0)) * (s.r1 - s.r0)
      )
    case 'box':
      return (
        between(p.z, s.z0, s.z1) && Math.abs(out(s.x, s.y)) < s.height / 2 && Math.abs(side(s.x, s.y)) < s.width / 2
      )
    case 'ring-sector': {
      const [a, b] = [out(s.x ?? 0, s.y ?? 0), side(s.x ?? 0, s.y ?? 0)]
      const turn = (Math.abs(Math.atan2(b, a)) * 180) / Math.PI
      return between(p.z, s.z0, s.z1) && between(Math.hypot(a, b), s.rIn, s.rOut) && turn < s.half
    }
    case 'extruded':
      return between(p.z, s.z0, s.z1) && insideOf(s.points, p.x, p.y)
    case 'plate':
      return between(out(0, 0), s.rIn, s.rOut) && insideOf(s.points, side(0, 0), p.z)
  }
}

const between = (n: number, lo: number, hi: number): boolean => n > lo && n < hi

/** By how often a ray along the first axis meets the edges. */
function insideOf(points: readonly (readonly [number, number])[], x: number, y: number): boolean {
  return (
    points.filter(([ax, ay], i) => {
      const [bx, by] = points[(i + 1) % points.length] as readonly [number, number]
      return ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)
    }).length %
      2 ===
    1
  )
}
