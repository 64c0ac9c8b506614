import type { FixValue } from '../project/apply-fix.ts'
import { type Contribution, type Margins, type Share, shares } from '../quantity/margins.ts'
import { chanceToHold } from '../quantity/probability.ts'
import { judge, type Status, type Terms } from './verdict.ts'

/** A change that would make the check hold, with the number that works; `path` and `value` let it be applied at once. */
export interface Fix {
  readonly text: string
  readonly path: string
  /** Left out where no one change does it: a reading to take, a part to choose. */
  readonly value?: FixValue
  /** Said only where a part from the list is found to do it: the number alone may not be what lacks. */
  readonly onlyTried?: true
  /** What else is then worse than it was, where that was tried; told in `text`, too. */
  readonly spoils?: { readonly status: Status; readonly text: string }
}

export interface Where {
  readonly z: number
  readonly theta: number
  readonly r: number
}

export interface Finding {
  readonly id: string
  readonly check: string
  readonly title: string
  readonly status: Status
  /** The nominal value that is judged, and the limit it is judged against. */
  readonly value: number
  readonly limit: number
  /** Nothing where it is a count. */
  readonly unit: 'mm' | '°' | '%' | ''
  readonly margin: { readonly worst: number; readonly nominal: number; readonly best: number }
  /** The margin with the unknowns at their best and the variations at their worst. */
  readonly settled: number
  /** The chance that it holds, where it depends on an unknown; never all or nothing. */
  readonly probability: number | undefined
  readonly contributors: readonly Share[]
  readonly at: Where | undefined
  readonly parts: readonly string[]
  readonly state: string
  /** Formula and values, so that a pocket calculator can follow. */
  readonly why: string
  /** Where the limit comes from. */
  readonly source: string
  readonly fix: readonly Fix[]
}

/** What a check could not look at, and what is missing for it. */
export interface NotChecked {
  readonly id: string
  readonly check: string
  readonly title: string
  readonly parts: readonly string[]
  readonly missing: string
  readonly path: string
  readonly hint: string
}

export interface Draft extends Omit<Finding, 'status' | 'margin' | 'settled' | 'probability' | 'contributors'> {
  readonly margins: Margins
  readonly contributions: readonly Contribution[]
  readonly terms?: Terms
}

/** A finding from what a check measured. This is the one place where a status is decided. */
export function finding(draft: Draft): Finding {
  const { margins, contributions, terms } = draft
  const assumed = terms?.assumed ?? contributions.some((c) => c.source === 'assumed')
  const status = judge(margins, { ...terms, assumed })
  const unknowns = contributions.filter((c) => c.kind === 'unknown')
  return {
    id: draft.id,
    check: draft.check,
    title: draft.title,
    status,
    value: draft.value,
    limit: draft.limit,
    unit: draft.unit,
    margin: { worst: margins.worst, nominal: margins.nominal, best: margins.best },
    settled: margins.settled,
    probability: status === 'unsure' && margins.worst < 0 ? chance(margins, unknowns) : undefined,
    contributors: shares(contributions),
    at: draft.at,
    parts: draft.parts,
    state: draft.state,
    why: draft.why,
    source: draft.source,
    fix: draft.fix,
  }
}

/** What may hold has a chance, however small: the fold of the unknowns knows nothing of how they bend. */
const chance = (m: Margins, unknowns: readonly Contribution[]): number =>
  Math.min(1 - slight, Math.max(slight, chanceToHold(m.worst, unknowns)))

const slight = 0.001

/** Tightest first; of two equally tight the order of their ids, so that the same input gives the same list. */
export function byMargin(a: Finding, b: Finding): number {
  const rank = (s: Status) => ['clash', 'unsure', 'not-checked', 'clear', 'advice'].indexOf(s)
  return rank(a.status) - rank(b.status) || a.margin.worst - b.margin.worst || (a.id < b.id ? -1 : 1)
}
