import type { InsertionWay, WayTouch } from '../../papers/insertion-way.ts'
import { fixed } from '../sheet/numbers.ts'

/** How far the whole way is, mm. */
export const wayLength = (way: Pick<InsertionWay, 'from' | 'to'>): number => Math.abs(way.to - way.from)

/** How far in a unit at a depth is, mm from outside. */
export const travelTo = (way: Pick<InsertionWay, 'from' | 'to'>, depth: number): number =>
  (depth - way.from) * (Math.sign(way.to - way.from) || 1)

/** The depth of a unit that has gone so far in. */
export const depthAt = (way: Pick<InsertionWay, 'from' | 'to'>, travel: number): number =>
  way.from + (Math.sign(way.to - way.from) || 1) * travel

/** Where the unit is, in words: by its face, which is what its depth is; in a tube drawn over it, how deep it is in that. */
export const placeTold = (way: Pick<InsertionWay, 'moves'>, depth: number): string =>
  `${inTube(way) ? 'depth' : 'blade-side face at z'} ${fixed(depth, 1)}`

/** A tube is drawn over what stands still: the ruler moves with it, and z is no place in it. */
export const inTube = ({ moves }: Pick<InsertionWay, 'moves'>): boolean => moves.startsWith('sections/')

/** Where the unit comes against something; what it only passes too near does not stop it. */
export const stopsOf = (way: InsertionWay): readonly WayTouch[] => way.touches.filter((t) => t.overlap > 0)

/** What became of a push: how far in the unit is now, and what stopped it. */
export interface Pushed {
  readonly travel: number
  readonly stop: WayTouch | undefined
}

/** So near to a touch is at it, mm. */
const at = 0.005

/**
 * Pushes from where the unit is towards where it is wanted. It stops at the first touch ahead that it may not pass;
 * touches up to `allowed` were passed by leave. It is drawn out freely.
 */
export function push(way: InsertionWay, now: number, wanted: number, allowed: number): Pushed {
  const to = Math.min(wayLength(way), Math.max(0, wanted))
  if (to <= now) return { travel: to, stop: undefined }
  const stop = stopsOf(way).find((t) => {
    const there = travelTo(way, t.depth)
    return there > allowed + at && there > now - at && there < to
  })
  return stop ? { travel: Math.min(to, travelTo(way, stop.depth)), stop } : { travel: to, stop: undefined }
}

/** The touch a unit stands at; undefined where it stands free of the next. */
export function touchAt(way: InsertionWay, travel: number): WayTouch | undefined {
  return stopsOf(way).find((t) => Math.abs(travelTo(way, t.depth) - travel) <= at)
}

/** The tightest place of the unit at a depth. */
export function sampleAt(way: InsertionWay, depth: number): InsertionWay['samples'][number] | undefined {
  let best: InsertionWay['samples'][number] | undefined
  for (const s of way.samples) if (!best || Math.abs(s.depth - depth) < Math.abs(best.depth - depth)) best = s
  return best
}
