import type { Spread } from '../quantity/quantity.ts'
import type { Tool } from './tool.ts'
import { type Combined, combineUncertainty, rectangular, resolution } from './uncertainty.ts'

/** How readings make up a result: Σ weight · (mean of `count` repeats), and how they scatter. */
export interface Makeup {
  readonly weights: readonly number[]
  readonly counts: readonly number[]
  /** Standard deviation of one reading and its degrees of freedom; dof 0 where no repeat tells. */
  readonly s: number
  readonly dof: number
}

export interface ReadingError {
  /** Half-width of the interval, mm. */
  readonly half: number
  readonly combined: Combined
  /** rectangular where the tool's limits alone decide, normal where the combination does. */
  readonly distribution: Spread['distribution']
}

/**
 * The error of a result made of readings: instrument (±mpe, rectangular), resolution (q/√12), scatter (s/√n), combined
 * by GUM; `factor` is the coverage factor at given degrees of freedom.
 *
 * Repeats do not wear the instrument's error down, and it may be shared by all directions, so it never weighs less
 * than one whole ±mpe. No reading is off by more than mpe and half a step, so where the plain sum of these limits and
 * t·s/√n is smaller than k·u, it is the half-width: for a single reading, ±(mpe + q/2). Nor can the mean of repeats
 * that one size can have given be off by more than these limits and how far the farthest of them lies from it: few
 * repeats would else tell less than one. Repeats that lie farther apart scatter by more than the tool, and k·u tells.
 */
export function readingError(makeup: Makeup, tool: Tool, factor: (dof: number) => number): ReadingError {
  const { weights, counts, s, dof } = makeup
  const norm = Math.hypot(...weights)
  const scatterU = dof > 0 ? s * Math.hypot(...weights.map((w, i) => w / Math.sqrt(counts[i] as number))) : 0
  const combined = combineUncertainty(
    [
      { name: 'instrument', u: rectangular(tool.mpe) * Math.max(1, norm), dof: Number.POSITIVE_INFINITY },
      { name: 'resolution', u: resolution(tool.resolution) * norm, dof: Number.POSITIVE_INFINITY },
      { name: 'scatter', u: scatterU, dof: Math.max(1, dof) },
    ],
    factor,
  )
  const sum = weights.reduce((total, w) => total + Math.abs(w), 0)
  const limits = Math.max(1, sum) * (tool.mpe + tool.resolution / 2)
  const far = farthest(makeup)
  const random = scatterU > 0 ? Math.min(factor(dof) * scatterU, far <= limits ? far : Number.POSITIVE_INFINITY) : 0
  const bounded = limits + random <= combined.expanded
  return {
    half: bounded ? limits + random : combined.expanded,
    combined,
    distribution: bounded ? 'rectangular' : 'normal',
  }
}

/** How far a repeat can lie from the mean of its n where all repeats together scatter by s with these degrees of freedom. */
function farthest({ weights, counts, s, dof }: Makeup): number {
  const [n] = counts
  return weights.length > 1 || n === undefined ? Number.POSITIVE_INFINITY : s * Math.sqrt((dof * (n - 1)) / n)
}
