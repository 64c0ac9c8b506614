import type { JointInput } from '../project/schema/hilt.ts'
import type { Context } from './context.ts'

/** Two sections may overlap or stand apart by this much beyond what a joint explains, mm: reading errors add up. */
export const seamSlack = 0.5

export const jointOf = (ctx: Context, rear: string, blade: string): JointInput | undefined =>
  ctx.project.joints.find((j) => j.rear === rear && j.blade === blade)
