import { planarGap } from '../../geometry/region/planar-gap.ts'
import { type Gap, gap } from '../../geometry/solid/gap.ts'
import { reach } from '../../geometry/solid/silhouette.ts'
import { sliceOver } from '../../geometry/solid/slice.ts'
import { apart, moved, span } from '../../geometry/solid/solid.ts'
import type { Body } from '../body/body.ts'
import { nominalSolids, type SolidPair, worstCorners } from '../body/gap-at.ts'
import type { Pair } from '../body/pair.ts'
import type { Where } from '../checks/finding.ts'
import { whereOf } from '../checks/group.ts'

/** A unit at one depth of its way: its tightest place there. */
export interface WaySample {
  /** Height of the unit's blade-side face, mm. */
  readonly depth: number
  /** Tightest gap at measured sizes, mm; negative: an overlap of so much. Infinity where nothing is there to meet. */
  readonly gap: number
  /** The tightest gap at the worst of all intervals, mm. */
  readonly worst: number
  /** Between what, at measured sizes, and where. */
  readonly mover: string
  readonly obstacle: string
  readonly at: Where | undefined
}

interface Meeting {
  readonly pair: Pair
  readonly nominal: Corner
  readonly worst: readonly Corner[]
}

interface Corner extends SolidPair {
  /** Nowhere on the way is the gap less than this: what the cross-sections alone leave. */
  readonly beside: number
}

/**
 * The tightest gap of a unit at each of a list of depths; the pairs hold it in its place, where its blade-side face
 * lies at `to`.
 */
export function gapAlong(
  pairs: readonly Pair[],
  depths: readonly number[],
  to: number,
  named: (b: Body) => string,
): WaySample[] {
  const meetings = pairs
    .map((pair): Meeting => ({ pair, nominal: cornerOf(nominalSolids(pair)), worst: worstCorners(pair).map(cornerOf) }))
    .sort((a, b) => a.nominal.beside - b.nominal.beside)
  // What was tightest a little before is likely to be so again: with it first, most others are seen to be farther.
  let [first, worstFirst] = [meetings[0], meetings[0]]
  return depths.map((depth): WaySample => {
    const by = depth - to
    let tight: { readonly meeting: Meeting; readonly gap: Gap } | undefined
    let worst = Number.POSITIVE_INFINITY
    for (const m of leading(first, meetings)) {
      const found = gapBelow(m.nominal, by, tight?.gap.hi ?? Number.POSITIVE_INFINITY)
      if (found) tight = { meeting: m, gap: found }
    }
    for (const m of leading(worstFirst, meetings))
      for (const corner of m.worst) {
        const found = gapBelow(corner, by, worst)
        if (!found) continue
        worst = found.lo
        worstFirst = m
      }
    if (!tight) return { depth, gap: Number.POSITIVE_INFINITY, worst, mover: '', obstacle: '', at: undefined }
    first = tight.meeting
    const { a, b } = tight.meeting.pair
    return {
      depth,
      gap: tight.gap.hi,
      worst: Math.min(worst, tight.gap.hi),
      mover: named(a),
      obstacle: b.name,
      at: whereOf(tight.gap),
    }
  })
}

const leading = (first: Meeting | undefined, all: readonly Meeting[]): readonly Meeting[] =>
  first ? [first, ...all.filter((m) => m !== first)] : all

/** The gap of a pair whose first body stands `by` off its place, if it is less than `least`. */
function gapBelow({ a, b, beside }: Corner, by: number, least: number): Gap | undefined {
  if (beside >= least) return undefined
  const there = moved(a, by)
  if (apart(span(there), span(b)) >= least) return undefined
  const found = gap(there, b)
  return found.lo < least ? found : undefined
}

function cornerOf(pair: SolidPair): Corner {
  const { a, b } = pair
  if (b.kind === 'bore') {
    const far = Math.max(...reach(a, b.c).map((r) => Math.max(r.r0, r.r1)))
    return { ...pair, beside: Math.min(b.r0, b.r1) - b.grow - far }
  }
  const [wideA, wideB] = [sliceOver(a, span(a)), sliceOver(b, span(b))]
  return { ...pair, beside: planarGap(wideA, wideB).d - a.grow - b.grow }
}
