import { add, bend, combine, doubt, exact, least, most, type Quantity, reachOf } from '../quantity/quantity.ts'
import { alongTaper } from './along-taper.ts'
import type { Section, Step } from './metal.ts'

/**
 * From the hilt's axis outwards at a clock angle to the wall of a section's bore at a height, mm: what sticks in is
 * measured from there. A taper runs on between its ends; a bore beside the axis has its wall nearer on one side. Where
 * the height may lie in another step, the lowest wall it may be measured from is within the doubt. undefined where the
 * bore is not known there.
 */
export function wallAt(section: Section, z: Quantity, theta: Quantity): Quantity | undefined {
  const steps = section.steps.filter((s) => s.kind !== 'solid')
  const own = steps.find((s) => z.nominal >= s.z0.nominal && z.nominal <= s.z1.nominal)
  const wall = own && onStep(own, z, theta)
  if (!wall) return undefined
  const reached = steps.filter((s) => s !== own && least(z) < most(s.z1) && most(z) > least(s.z0))
  const lowest = reached.reduce((low, s) => {
    const there = Math.min(s.z1.nominal, Math.max(s.z0.nominal, z.nominal))
    const other = onStep(s, { nominal: there, terms: z.terms }, theta)
    return other ? Math.min(low, least(other)) : low
  }, least(wall))
  return add(
    wall,
    bend(least(wall) - lowest, [z, ...reached.flatMap((s) => [s.z0, s.z1])], 'the wall of the next bore step'),
  )
}

function onStep(step: Step, z: Quantity, theta: Quantity): Quantity | undefined {
  if (!step.r0 || !step.r1) return undefined
  const radius = alongTaper(step, step.r0, step.r1, z)
  const [c, s] = [Math.cos((theta.nominal * Math.PI) / 180), Math.sin((theta.nominal * Math.PI) / 180)]
  const [x, y] = [step.x, step.y]
  const across = y.nominal * c - x.nominal * s
  const bulge = (a: number): number => Math.sqrt(Math.max(0, radius.nominal ** 2 - a ** 2)) - radius.nominal
  const turn = (reachOf(theta) * Math.PI) / 180
  const [moved, off] = [reachOf(x) + reachOf(y), Math.hypot(x.nominal, y.nominal)]
  const aside = bulge(across) - bulge(Math.abs(across) + moved + turn * off)
  const round = (off + moved) * (1 - Math.cos(Math.min(turn, Math.PI))) + moved * turn
  return combine([
    [radius, 1],
    [exact(bulge(across)), 1],
    [x, c],
    [y, s],
    [doubt(theta), (across * Math.PI) / 180],
    // Off the axis nobody knows which way: the wall is nearer or farther by as much.
    [{ nominal: 0, terms: (step.sway?.terms ?? []).filter((t) => t.spread.kind === 'unknown') }, 1],
    [bend(aside + round, [x, y, theta], 'a round wall beside the axis'), 1],
    [bend(slanted(step, step.r0, step.r1, z), [z, step.z0, step.z1], 'a taper whose ends are in doubt'), 1],
  ])
}

/** By how much a taper of doubtful length may run below the straight line that stands for it, mm. */
function slanted(step: Step, r0: Quantity, r1: Quantity, z: Quantity): number {
  const [from, to] = [step.z0.nominal, step.z1.nominal]
  if (r0.nominal === r1.nominal || to <= from) return 0
  const [rise, t] = [r1.nominal - r0.nominal, (z.nominal - from) / (to - from)]
  const slope = rise / (to - from)
  const ends = (q: Quantity): readonly number[] => [-reachOf(q), reachOf(q)]
  const short = ends(z).flatMap((dz) =>
    ends(step.z0).flatMap((d0) =>
      ends(step.z1).map((d1) => {
        const line = r0.nominal + rise * t + slope * (dz - (1 - t) * d0 - t * d1)
        const share = to + d1 <= from + d0 ? (rise < 0 ? 1 : 0) : (z.nominal + dz - from - d0) / (to + d1 - from - d0)
        return line - r0.nominal - rise * Math.min(1, Math.max(0, share))
      }),
    ),
  )
  const both = (reachOf(z) + reachOf(step.z0) + reachOf(step.z1)) / (to - from)
  return Math.max(0, ...short) + (reachOf(r0) + reachOf(r1)) * Math.min(1, both)
}
