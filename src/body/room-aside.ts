import { reachFromAxis } from '../../geometry/region/farthest.ts'
import { norm } from '../../geometry/region/point.ts'
import type { Region } from '../../geometry/region/region.ts'
import { rememberOn } from '../../geometry/remember.ts'
import { exact, least, most, reachOf, sub } from '../quantity/quantity.ts'
import type { Body, Opening } from './body.ts'
import { gapAt } from './gap-at.ts'
import { onePair } from './one-pair.ts'
import { placeOf } from './quantities.ts'

/** How far a sled can shift sideways from where it is drawn before a bore stops it, mm. */
export interface RoomAside {
  /** So far it gets whichever way it goes and whatever the sizes turn out to be. */
  readonly sure: number
  /** No way gets it farther, whatever the sizes turn out to be. */
  readonly most: number
}

/**
 * The room a sled's outside has in the bores it lies in; undefined where it lies in none. A round piece of radius r
 * whose axis lies e off that of a bore of radius R is stopped R − r + e away on the wide side, its gap being R − r − e.
 * One that a notch cuts goes a little farther towards the notch: until the notch's edges meet the wall.
 */
export function roomAside(outside: readonly Body[], bores: readonly Body[]): RoomAside | undefined {
  const met = bores.flatMap((bore) =>
    outside.filter((b) => overlap(b, bore, 'may')).map((b) => ({ ...stops(b, bore), held: overlap(b, bore, 'must') })),
  )
  if (met.length === 0) return undefined
  const sure = Math.max(0, Math.min(...met.map((m) => m.sure)))
  // What may lie beside a bore or not stops nothing for certain; where nothing does, the widest of them has to serve.
  const held = met.filter((m) => m.held).map((m) => m.most)
  const furthest = held.length > 0 ? Math.min(...held) : Math.max(...met.map((m) => m.most))
  return { sure, most: Math.max(sure, furthest) }
}

/** Where a bore stops a body: R − r all around, what lies between their axes on the wide side, and a notch's depth. */
function stops(body: Body, bore: Body): RoomAside {
  const pair = onePair(body, bore)
  const off = offAxis(body, bore)
  const rim = rimOf(body)
  const wall = bore.shape.kind === 'bore' ? bore.shape : undefined
  const straight = wall && wall.r0.nominal === wall.r1.nominal
  // Square to a slanted wall it is less far than straight aside.
  const room =
    wall && (straight || rim.standsOut)
      ? Math.max(most(wall.r0), most(wall.r1)) - rim.r - (body.swell ? least(body.swell) : 0)
      : gapAt(pair, 'best').hi * Math.hypot(1, slope(bore)) + off
  return { sure: gapAt(pair, 'worst').lo, most: room + off + pastNotch(rim, wall?.openings ?? [], Math.max(0, room)) }
}

/** Where a body is round about its axis: its widest radius, and the longest stretch of that circle it leaves open. */
interface Rim {
  readonly r: number
  /** Radians. */
  readonly notch: number
  /** Something of it reaches farther: a key. */
  readonly standsOut: boolean
}

/**
 * How much farther than `room` a body gets towards a notch of its own or a slot of the bore, until the edges meet the
 * wall: with every slot between two notches at the most.
 */
function pastNotch({ r, notch }: Rim, slots: readonly Opening[], room: number): number {
  // Where the wall is met lies as far off the direction of the rim as the room lets it.
  const half = slots.reduce(
    (sum, s) => sum + Math.asin(Math.min(1, most(s.halfWidth) / r)) + room / r,
    ((slots.length + 1) * notch) / 2,
  )
  if (!(half < Math.PI)) return Number.POSITIVE_INFINITY
  const [along, across] = [r * Math.cos(half), r * Math.sin(half)]
  return Math.max(0, Math.sqrt(Math.max(0, (r + room) ** 2 - across ** 2)) - along - room)
}

const full = 2 * Math.PI
/** Circles closer than this are one, mm. */
const same = 1e-6

function rimOf({ shape: s }: Body): Rim {
  if (s.kind === 'outline') return rimOfRegion(s.region)
  return { r: s.kind === 'round' ? Math.max(s.r0.nominal, s.r1.nominal) : 0, notch: 0, standsOut: false }
}

const rimOfRegion = rememberOn((region: Region): Rim => {
  const about = region.edges.flatMap((e) => (e.kind === 'arc' && norm(e.c.x, e.c.y) < same ? [e] : []))
  const r = Math.max(0, ...about.map((e) => e.r))
  const standsOut = reachFromAxis(region) > r + same
  const arcs = about
    .flatMap((e) => (r - e.r < same ? [[turnOf(e.start), e.sweep] as const] : []))
    .toSorted((a, b) => a[0] - b[0])
  const [first] = arcs
  if (!first) return { r, notch: full, standsOut }
  let [notch, end] = [0, first[0]]
  for (const [from, sweep] of arcs) {
    notch = Math.max(notch, from - end)
    end = Math.max(end, from + sweep)
  }
  return { r, notch: Math.max(notch, first[0] + full - end), standsOut }
})

const turnOf = (angle: number): number => ((angle % full) + full) % full

/** How far the axis of a body may lie from that of a bore, mm. */
function offAxis(body: Body, bore: Body): number {
  const [a, b] = [placeOf(body), placeOf(bore)]
  const [x, y] = [sub(a.x ?? zero, b.x ?? zero), sub(a.y ?? zero, b.y ?? zero)]
  return [x, y, body.drift, body.sway, bore.drift, bore.sway].reduce(
    (sum, q) => sum + reachOf(q),
    norm(x.nominal, y.nominal),
  )
}

const zero = exact(0)

/** How much a bore's radius changes for a millimetre along the axis, at most. */
function slope({ shape: s }: Body): number {
  if (s.kind !== 'bore' || s.r0 === s.r1) return 0
  return Math.abs(s.r1.nominal - s.r0.nominal) / Math.max(1e-6, least(s.z1) - most(s.z0))
}

/** Whether two bodies share a stretch of the axis: for some of their sizes, or for all. */
function overlap({ shape: a }: Body, { shape: b }: Body, how: 'may' | 'must'): boolean {
  if (a.kind === 'pin' || b.kind === 'pin') return false
  const [early, late] = how === 'may' ? [least, most] : [most, least]
  return early(a.z0) < late(b.z1) && early(b.z0) < late(a.z1)
}
