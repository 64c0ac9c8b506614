import { gap } from '../../geometry/solid/gap.ts'
import { moved } from '../../geometry/solid/solid.ts'
import { swept } from '../../geometry/solid/sweep.ts'
import { realise } from '../body/realise.ts'
import type { Where } from './finding.ts'
import { type Tightest, whereOf } from './group.ts'

export interface Touch {
  /** Height of the moving unit's blade-side face when it happens, mm. */
  readonly depth: number
  /** Height of the place. */
  readonly z: number
  readonly at: Where
  /** How far the two would overlap, mm; 0 where they only come too close. */
  readonly overlap: number
}

/**
 * Where a unit first comes against something, of all the pairs in which they might meet; where it passes at measured
 * sizes, where it first comes too near. The overlap is the most of all the pairs.
 */
export function firstOf<P extends Pick<Tightest, 'pair' | 'limit'>>(
  demands: readonly P[],
  bladeFace: number,
): (Touch & { readonly demand: P }) | undefined {
  const touches = demands.flatMap((demand) => {
    const touch = firstTouch(demand, bladeFace)
    return touch ? [{ ...touch, demand }] : []
  })
  const overlap = Math.max(0, ...touches.map((t) => t.overlap))
  const [first] = touches
    .filter((t) => t.overlap > 0 || overlap === 0)
    .sort((a, b) => (a.demand.pair.way === 'rear' ? b.depth - a.depth : a.depth - b.depth))
  return first && { ...first, overlap }
}

/** Depths are found to this, mm. */
const fine = 0.01
/** Drawn back this far, a unit is out of any hilt, mm. */
const clearOfAll = 1000

/**
 * The first depth at which a pair comes too near, at nominal sizes: what a body has swept so far only grows with
 * depth, so the gap to it only shrinks, and halving finds the place. Where the nominal sizes pass, the required gap
 * counts instead of contact.
 */
export function firstTouch(demand: Pick<Tightest, 'pair' | 'limit'>, bladeFace: number): Touch | undefined {
  const { pair } = demand
  if (!pair.way) return undefined
  const way = pair.way
  const a = realise(pair.a, (q) => q.nominal)
  const b = realise(pair.b, (q) => q.nominal)
  const sign = way === 'blade' ? 1 : -1
  const at = (back: number) => Math.min(...swept(moved(a, -sign * back), way).map((s) => gap(s, b).hi))
  const end = at(0)
  const below = end < 0 ? 0 : demand.limit
  if (end >= below) return undefined
  let [touching, free] = [0, clearOfAll]
  if (at(free) < below) return undefined
  while (free - touching > fine) {
    const middle = (free + touching) / 2
    if (at(middle) < below) touching = middle
    else free = middle
  }
  const contact = swept(moved(a, -sign * touching), way)
    .map((s) => gap(s, b))
    .reduce((x, y) => (y.hi < x.hi ? y : x))
  return { depth: bladeFace - sign * touching, z: contact.z, at: whereOf(contact), overlap: Math.max(0, -end) }
}
