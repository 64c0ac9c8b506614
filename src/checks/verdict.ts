import type { Margins } from '../quantity/margins.ts'

/** How a finding stands. Advice never counts; not-checked keeps the job from being clear. */
export type Status = 'clear' | 'unsure' | 'clash' | 'not-checked' | 'advice'

/** How a whole job stands. */
export type Verdict = 'clear' | 'unsure' | 'clash'

export interface Terms {
  /** The requirement must hold at the worst case: then "depends" already is a clash. */
  readonly mustHold?: boolean
  /** Some number it rests on was assumed: at best unsure. */
  readonly assumed?: boolean
  readonly advice?: boolean
}

/** A margin this close to nothing counts as nothing: rounding, not geometry. */
const rounding = 1e-9

/** Whether what is needed is left at the worst of everything. */
export const holds = (m: Pick<Margins, 'worst'>): boolean => m.worst >= -rounding

/**
 * clear: holds for every value of the unknowns and every variation. clash: for every value of the unknowns some
 * variation fails. unsure: it depends on an unknown, or it rests on an assumption.
 */
export function judge(m: Margins, terms: Terms = {}): Status {
  for (const value of [m.worst, m.nominal, m.settled, m.best])
    if (Number.isNaN(value)) throw new RangeError('a margin is not a number')
  if (terms.advice) return 'advice'
  if (holds(m)) return terms.assumed ? 'unsure' : 'clear'
  if (m.settled < -rounding || terms.mustHold) return 'clash'
  return 'unsure'
}

/** The worst of what was found; a job in which nothing was checked is unsure, and so is one with a check left out. */
export function overall(statuses: readonly Status[]): Verdict {
  const counted = statuses.filter((s) => s !== 'advice')
  if (counted.includes('clash')) return 'clash'
  if (counted.some((s) => s === 'unsure' || s === 'not-checked')) return 'unsure'
  return counted.includes('clear') ? 'clear' : 'unsure'
}
