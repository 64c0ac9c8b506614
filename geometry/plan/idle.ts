import { type PlanItem, type PlanSolid, planSpan } from './plan.ts'

/**
 * Items of a body that change nothing, by their places in its list: what lies whole in a stretch of the axis from
 * which a cut takes everything away. Each piece of a split sled has all items of the whole; the kernel is spared those
 * of the other pieces, and a change of one leaves this piece as it was.
 */
export function idleItems(items: readonly PlanItem[]): ReadonlySet<number> {
  const reach = Math.max(0, ...items.filter((x) => x.op === 'add').map((x) => reachOf(x.solid)))
  const emptied = items.filter((x) => isFirst(x) && x.op === 'cut' && takesAll(x.solid, reach))
  if (emptied.length === 0) return new Set()
  const gone = emptied.map((x) => planSpan(x.solid))
  // What is added in the second stage comes back into an emptied stretch, and is cut there.
  const later = items.filter((x) => x.op === 'add' && !isFirst(x)).map((x) => planSpan(x.solid))
  return new Set(
    items.flatMap((x, i) => {
      const { z0, z1 } = planSpan(x.solid)
      const outside = !emptied.includes(x) && gone.some((e) => z0 >= e.z0 && z1 <= e.z1)
      const idle = outside && (isFirst(x) || (x.op === 'cut' && later.every((s) => s.z1 < z0 || s.z0 > z1)))
      return idle ? [i] : []
    }),
  )
}

const isFirst = (x: PlanItem): boolean => (x.stage ?? 1) === 1

/** A block so wide that nothing within `reach` mm of the axis is left beside it. */
function takesAll(s: PlanSolid, reach: number): boolean {
  return s.shape === 'box' && Math.min(s.width, s.height) / 2 - Math.hypot(s.x, s.y) > reach
}

/** How far from the axis a solid reaches, mm: never too little. */
function reachOf(s: PlanSolid): number {
  switch (s.shape) {
    case 'cylinder':
      return Math.hypot(s.x, s.y) + Math.max(s.r0, s.r1)
    case 'box':
      return Math.hypot(s.x, s.y) + Math.hypot(s.width, s.height) / 2
    case 'ring-sector':
      return Math.hypot(s.x ?? 0, s.y ?? 0) + s.rOut
    case 'extruded':
      return Math.max(...s.points.map(([x, y]) => Math.hypot(x, y)))
    case 'spoke':
      return Math.hypot(s.rOut, s.radius)
    case 'plate':
      return Math.max(...s.points.map(([t]) => Math.hypot(s.rOut, t)))
  }
}
