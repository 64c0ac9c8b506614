import { rememberOn } from '../../geometry/remember.ts'
import { type Gap, gap } from '../../geometry/solid/gap.ts'
import { moved } from '../../geometry/solid/solid.ts'
import { swept } from '../../geometry/solid/sweep.ts'
import { nominalSolids } from '../body/gap-at.ts'
import type { Pair } from '../body/pair.ts'
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
export function firstOf<P extends Asked>(
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
function firstTouch(demand: Asked, bladeFace: number): Touch | undefined {
  const { way } = demand.pair
  const contact = contactOf(demand.pair, demand.limit)
  if (!way || !contact) return undefined
  const { gap, back, overlap } = contact
  return { depth: bladeFace - (way === 'blade' ? back : -back), z: gap.z, at: whereOf(gap), overlap }
}

type Asked = Pick<Tightest, 'pair' | 'limit'>

interface Contact {
  readonly gap: Gap
  /** How far before its place the body is then, mm. */
  readonly back: number
  readonly overlap: number
}

/** Sought once for a pair and a limit. */
const contactOf = rememberOn((pair: Pair, limit: number): Contact | undefined => {
  const { way } = pair
  if (!way) return undefined
  const { a, b } = nominalSolids(pair)
  const sign = way === 'blade' ? 1 : -1
  const gaps = (back: number) => swept(moved(a, -sign * back), way).map((s) => gap(s, b))
  const at = (back: number) => Math.min(...gaps(back).map((g) => g.hi))
  const end = at(0)
  const below = end < 0 ? 0 : limit
  if (end >= below) return undefined
  let [touching, free] = [0, clearOfAll]
  if (at(free) < below) return undefined
  while (free - touching > fine) {
    const middle = (free + touching) / 2
    if (at(middle) < below) touching = middle
    else free = middle
  }
  const contact = gaps(touching).reduce((x, y) => (y.hi < x.hi ? y : x))
  return { gap: contact, back: touching, overlap: Math.max(0, -end) }
})
