import { sectionOf } from '../../geometry/plan/cross-section.ts'
import { type PlanSolid, planSpan } from '../../geometry/plan/plan.ts'
import { polar } from '../../geometry/region/point.ts'
import type { Region } from '../../geometry/region/region.ts'
import { disc, rectangle, sector } from '../../geometry/region/region.ts'
import { radiusAt, sliceAt } from '../../geometry/solid/slice.ts'
import { type Solid, span } from '../../geometry/solid/solid.ts'
import type { Body } from '../body/body.ts'
import { realise } from '../body/realise.ts'

/** Drawings show what was measured or planned: every quantity at its nominal value. */
export const nominalSolid = (body: Body): Solid => realise(body, (q) => q.nominal)

/** The stretch of the axis a body takes up as measured. */
export const nominalSpan = (body: Body) => span(nominalSolid(body))

/** The cross-section of a body at a height; undefined where it is not there. */
export const bodyAt = (body: Body, z: number): Region | undefined => sliceAt(nominalSolid(body), z)

/** The cross-section of a plan solid at a height; undefined where it is not there. */
export function planSolidAt(s: PlanSolid, z: number): Region | undefined {
  const { z0, z1 } = planSpan(s)
  if (z < z0 || z > z1) return undefined
  if (s.shape === 'cylinder') return disc({ x: s.x, y: s.y }, radiusAt(s, z))
  if (s.shape === 'ring-sector') return sector(s.rIn, s.rOut, s.theta, s.half)
  if (s.shape !== 'spoke') return sectionOf(s)
  const half = Math.sqrt(Math.max(0, s.radius ** 2 - (z - s.z) ** 2))
  return half > 0 ? rectangle(polar((s.rIn + s.rOut) / 2, s.theta), half, (s.rOut - s.rIn) / 2, s.theta) : undefined
}
