import type { Bounds } from './gaps.ts'
import type { World } from './world.ts'

/** One thing that is asked of a job: a gap that must not be less than its limit in any draw. */
export interface Demand {
  /** The finding it belongs to begins so. */
  readonly id: string
  readonly check: 'way-in' | 'clearance' | 'packing' | 'fitted-after' | 'nest-fit'
  readonly limit: number
  /** Only where this state is looked at. */
  readonly state?: string
  readonly gap: (w: World, memo: Memo) => Bounds
}

/** Gaps already measured between things that did not move or change since: by what moves, then by what it is measured to. */
export type Memo = Map<string, Map<string, Bounds>>

export interface StateTruth {
  readonly id: string
  readonly name: string
  readonly without: ReadonlySet<string>
}
