import type { Dimension } from '../../geometry/plan/plan.ts'
import { most } from '../quantity/quantity.ts'
import type { PrintProcess } from '../resolve/assembly.ts'
import { dimension } from './dimensions.ts'
import type { NestJob } from './job.ts'

export type FitClass = keyof PrintProcess['fit']

/** The fit of a part in its nest: typed on the nest, else by how the part is held, else slide. */
export function fitClassOf(job: NestJob): FitClass {
  const held = job.part.input.held
  if (job.typed?.fit) return job.typed.fit
  return held === 'press' || held === 'snug' || held === 'slide' || held === 'free' ? held : 'slide'
}

/**
 * One-sided gap drawn between the largest part and its nest. Sliding fits are drawn so wide that the part still goes
 * in at the print error's worst; press and snug ones are drawn at the middle of their class.
 */
export function nestGap(job: NestJob): Dimension {
  const fit = fitClassOf(job)
  const { fit: classes, error, source } = job.sled.print
  const band = classes[fit]
  const drawn =
    fit === 'press' || fit === 'snug' ? band.nominal / 2 : Math.max(band.nominal / 2, band.min / 2 + most(error))
  return dimension('gap', job.typed?.gap, Number(drawn.toFixed(3)), job.path('gap'), `${fit} fit, one side: ${source}`)
}
