import { combine, doubt, exact, type Quantity } from '../quantity/quantity.ts'
import { alongTaper } from './along-taper.ts'
import type { Section } from './metal.ts'

/**
 * From the hilt's axis outwards at a clock angle to the wall of a section's bore at a height, mm: what sticks in is
 * measured from there. A taper runs on between its ends; a bore beside the axis has its wall nearer on one side.
 * undefined where the bore is not known there.
 */
export function wallAt(section: Section, z: Quantity, theta: Quantity): Quantity | undefined {
  const step = section.steps.find((s) => s.kind !== 'solid' && z.nominal >= s.z0.nominal && z.nominal <= s.z1.nominal)
  if (!step?.r0 || !step.r1) return undefined
  const radius = alongTaper(step, step.r0, step.r1, z)
  const [c, s] = [Math.cos((theta.nominal * Math.PI) / 180), Math.sin((theta.nominal * Math.PI) / 180)]
  const [x, y] = [step.x, step.y]
  const across = y.nominal * c - x.nominal * s
  const inside = radius.nominal ** 2 - across ** 2
  const bulge = inside > 0 ? Math.sqrt(inside) - radius.nominal : 0
  return combine([
    [radius, 1],
    [exact(bulge), 1],
    [x, c],
    [y, s],
    [doubt(theta), (across * Math.PI) / 180],
    // Off the axis nobody knows which way: the wall is nearer or farther by as much.
    [{ nominal: 0, terms: (step.sway?.terms ?? []).filter((t) => t.spread.kind === 'unknown') }, 1],
  ])
}
