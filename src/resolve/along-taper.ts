import { combine, doubt, type Quantity } from '../quantity/quantity.ts'
import type { Step } from './metal.ts'

/** Radius of a bore step, or of an outside, at a height, the taper running straight between its ends. */
export function alongTaper(step: Pick<Step, 'z0' | 'z1'>, r0: Quantity, r1: Quantity, z: Quantity): Quantity {
  const length = step.z1.nominal - step.z0.nominal
  if (r0.nominal === r1.nominal || length <= 0) return r0
  const t = (z.nominal - step.z0.nominal) / length
  const slope = (r1.nominal - r0.nominal) / length
  return combine([
    [r0, 1 - t],
    [r1, t],
    [doubt(z), slope],
    [doubt(step.z0), -slope * (1 - t)],
    [doubt(step.z1), -slope * t],
  ])
}
