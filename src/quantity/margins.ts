import { rememberOn } from '../../geometry/remember.ts'
import { at } from './level.ts'
import { high, low, type Quantity, type SourceKind, type Spread, type SpreadKind } from './quantity.ts'

/**
 * What is left over a limit, in mm (or the check's unit), at the four corners of the intervals. `worst` never
 * overstates and `settled` never understates what is left, so a verdict from them cannot be wrong in either way.
 */
export interface Margins {
  readonly worst: number
  readonly nominal: number
  readonly settled: number
  readonly best: number
}

/** What one spread alone does to the margin: from its tight end (≤ 0 change) to its loose end. */
export interface Contribution {
  readonly path: string
  readonly kind: SpreadKind
  readonly source: SourceKind
  readonly from: string
  readonly down: number
  readonly up: number
  readonly distribution: Spread['distribution']
}

/** Margins and contributions of a margin that is itself a quantity: exact. */
export function marginsOf(margin: Quantity): Margins {
  return {
    worst: at(margin, -1, 'worst'),
    nominal: margin.nominal,
    settled: at(margin, -1, 'settled'),
    best: at(margin, -1, 'best'),
  }
}

export function contributionsOf(margin: Quantity): Contribution[] {
  return margin.terms.map((t) => contribution(t.spread, low(t), high(t)))
}

export function contribution(s: Spread, down: number, up: number): Contribution {
  return { path: s.path, kind: s.kind, source: s.source, from: s.from, down, up, distribution: s.distribution }
}

export interface Share {
  readonly path: string
  readonly share: number
  readonly kind: SpreadKind
  readonly source: SourceKind
}

/** Shares t²/Σt² of the half-ranges t, largest first: what to measure or hold tighter next. Root sum of squares. */
export const shares = rememberOn((contributions: readonly Contribution[]): readonly Share[] => {
  const half = (c: Contribution) => (c.up - c.down) / 2
  const total = contributions.reduce((sum, c) => sum + half(c) ** 2, 0)
  return contributions
    .map((c) => ({ path: c.path, share: total > 0 ? half(c) ** 2 / total : 0, kind: c.kind, source: c.source }))
    .sort((a, b) => b.share - a.share || (a.path < b.path ? -1 : 1))
})
