import { good, type Outcome } from '../problem/problem.ts'
import { known, type Quantity } from '../quantity/quantity.ts'
import { type Ask, askTool } from './reading-ask.ts'
import { readingError } from './reading-error.ts'
import { checkReadings, type Reading, type ReadingOptions, usualCoverage } from './readings.ts'
import { coverageFactors } from './student-t.ts'
import { type Combined, scatter } from './uncertainty.ts'

export interface LengthSize {
  readonly quantity: Quantity
  readonly mean: number
  /** Standard deviation of one reading; 0 where there is but one. */
  readonly s: number
  readonly combined: Combined
  readonly ask: readonly Ask[]
}

/**
 * A length, depth or thickness from readings: all of them repeats of one size, wherever taken. mm.
 * Fails with too-few-readings, not-a-number, out-of-range or too-large.
 */
export function lengthFromReadings(readings: readonly Reading[], options: ReadingOptions): Outcome<LengthSize> {
  const checked = checkReadings(readings, options)
  if (!checked.ok) return checked
  const { tool, path, coverage = usualCoverage } = options
  const { mean, s, dof } = scatter(readings.map((r) => r.value))
  const error = readingError({ weights: [1], counts: [readings.length], s, dof }, tool, coverageFactors(coverage))
  const quantity = known(mean, {
    path,
    kind: 'unknown',
    minus: error.half,
    plus: error.half,
    distribution: error.distribution,
    source: 'measured',
    from: `${readings.length} reading${readings.length === 1 ? '' : 's'}, ${tool.name}`,
  })
  return good({ quantity, mean, s, combined: error.combined, ask: askTool({ ...tool, jaws: false }, undefined, s) })
}
