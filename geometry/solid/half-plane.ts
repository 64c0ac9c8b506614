import { norm } from '../region/point.ts'
import type { Reach } from './silhouette.ts'
import type { Bore } from './solid.ts'

/** Where two outlines of the (z, r) half-plane come closest. Negative d: they overlap by that much. */
export interface HalfPlaneGap {
  readonly d: number
  readonly z: number
  readonly r: number
}

interface P {
  readonly z: number
  readonly r: number
}

/**
 * From a body's reach to the metal around a bore step, exact: both are convex in the half-plane, bounded by straight
 * lines. Where they overlap the depth is the smaller of the radial and the axial way out.
 */
export function halfPlaneGap(body: Reach, bore: Bore): HalfPlaneGap {
  const [R0, R1] = [bore.r0 - bore.grow, bore.r1 - bore.grow]
  const z0 = Math.max(body.z0, bore.z0)
  const z1 = Math.min(body.z1, bore.z1)
  if (z0 <= z1) {
    const here = (z: number): HalfPlaneGap => ({
      d: line(bore.z0, R0, bore.z1, R1, z) - line(body.z0, body.r0, body.z1, body.r1, z),
      z,
      r: line(bore.z0, R0, bore.z1, R1, z),
    })
    const [a, b] = [here(z0), here(z1)]
    const least = b.d < a.d ? b : a
    if (least.d <= 0) {
      const axial = Math.max(0, Math.min(body.z1 - bore.z0, bore.z1 - body.z0))
      return { ...least, d: -Math.min(-least.d, axial) }
    }
    if (R0 === R1 && body.r0 === body.r1) return least
  }
  return corners(outline(body), [
    { z: bore.z0, r: R0 },
    { z: bore.z1, r: R1 },
  ])
}

/** Radius of a straight line over z; a line of no length takes its larger end, an endless one its end there. */
function line(z0: number, r0: number, z1: number, r1: number, z: number): number {
  if (r0 === r1) return r0
  if (z1 <= z0) return Math.max(r0, r1)
  if (!Number.isFinite(z0)) return r1
  if (!Number.isFinite(z1)) return r0
  return r0 + ((z - z0) / (z1 - z0)) * (r1 - r0)
}

/** The body's outline that can meet metal: its two end faces and its side, as a chain from the axis to the axis. */
function outline(body: Reach): P[] {
  const far = 1e6
  const [z0, z1] = [Math.max(body.z0, -far), Math.min(body.z1, far)]
  return [
    { z: z0, r: 0 },
    { z: z0, r: body.r0 },
    { z: z1, r: body.r1 },
    { z: z1, r: 0 },
  ]
}

/** Apart: the distance between the body's chain and the metal's (its wall, and the faces that stand out from it). */
function corners(chain: readonly P[], wall: readonly [P, P]): HalfPlaneGap {
  const metal: P[] = [{ z: wall[0].z, r: 1e6 }, wall[0], wall[1], { z: wall[1].z, r: 1e6 }]
  let best: HalfPlaneGap = { d: Number.POSITIVE_INFINITY, z: wall[0].z, r: wall[0].r }
  const consider = (p: P, a: P, b: P) => {
    const [uz, ur] = [b.z - a.z, b.r - a.r]
    const uu = uz * uz + ur * ur
    const t = uu === 0 ? 0 : Math.min(1, Math.max(0, ((p.z - a.z) * uz + (p.r - a.r) * ur) / uu))
    const d = norm(p.z - a.z - t * uz, p.r - a.r - t * ur)
    if (d < best.d) best = { d, z: p.z, r: p.r }
  }
  for (let i = 1; i < chain.length; i++) {
    for (let j = 1; j < metal.length; j++) {
      const [a, b, c, d] = [chain[i - 1] as P, chain[i] as P, metal[j - 1] as P, metal[j] as P]
      consider(a, c, d)
      consider(b, c, d)
      consider(c, a, b)
      consider(d, a, b)
    }
  }
  return best
}
