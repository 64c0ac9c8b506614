import { type Edge, pointAt } from './edge.ts'
import { distance, norm } from './point.ts'
import type { Region } from './region.ts'

const held = new WeakMap<Region, readonly number[]>()

/** For each edge of a region a circle that holds it: x, y, r. */
export function holdsOf(region: Region): readonly number[] {
  // Plain forms are made for one question and thrown away: keeping theirs would cost more than it spares.
  if (region.form.kind !== 'other') return circlesOf(region.edges)
  const known = held.get(region)
  if (known) return known
  const found = circlesOf(region.edges)
  held.set(region, found)
  return found
}

function circlesOf(edges: readonly Edge[]): number[] {
  const found: number[] = []
  for (const e of edges) {
    if (e.kind === 'segment') {
      found.push((e.a.x + e.b.x) / 2, (e.a.y + e.b.y) / 2, norm(e.b.x - e.a.x, e.b.y - e.a.y) / 2)
    } else {
      // Of a long arc the whole circle, of a short one the circle about its chord's ends from its middle.
      const whole = e.sweep > Math.PI
      const m = whole ? e.c : pointAt(e, 0.5)
      found.push(m.x, m.y, whole ? e.r : distance(m, e.a))
    }
  }
  return found
}
