import { farthest } from '../../geometry/region/farthest.ts'
import { norm, origin } from '../../geometry/region/point.ts'
import type { Region } from '../../geometry/region/region.ts'
import { rememberOn } from '../../geometry/remember.ts'
import type { Body } from '../body/body.ts'
import { gapAt } from '../body/gap-at.ts'
import { onePair } from '../body/one-pair.ts'
import { placeOf } from '../body/quantities.ts'
import { exact, least, most, sub } from '../quantity/quantity.ts'

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

/** Where a bore stops a body. */
function stops(body: Body, bore: Body): RoomAside {
  const pair = onePair(body, bore)
  const off = offAxis(body, bore)
  // Square to a slanted wall it is less far than straight aside.
  const gap = gapAt(pair, 'best').hi * Math.hypot(1, slope(bore))
  return { sure: gapAt(pair, 'worst').lo, most: gap + 2 * off + pastNotch(body, bore, Math.max(0, gap + off)) }
}

/**
 * How much farther than `room` a body gets towards a notch of its own or a slot of the bore, until the edges meet the
 * wall: with every slot between two notches at the most.
 */
function pastNotch({ shape }: Body, { shape: bore }: Body, room: number): number {
  const rim =
    shape.kind === 'outline' ? rimOf(shape.region) : { r: shape.kind === 'round' ? shape.r0.nominal : 0, notch: 0 }
  const slots = bore.kind === 'bore' ? (bore.openings ?? []) : []
  // Where the wall is met lies as far off the direction of the rim as the room lets it.
  const half = slots.reduce(
    (sum, s) => sum + Math.asin(Math.min(1, most(s.halfWidth) / rim.r)) + room / rim.r,
    ((slots.length + 1) * rim.notch) / 2,
  )
  if (!(half < Math.PI)) return Number.POSITIVE_INFINITY
  const [along, across] = [rim.r * Math.cos(half), rim.r * Math.sin(half)]
  return Math.max(0, Math.sqrt(Math.max(0, (rim.r + room) ** 2 - across ** 2)) - along - room)
}

const full = 2 * Math.PI
/** Circles closer than this are one, mm. */
const same = 1e-6

/** How far an outline reaches from the axis, and the longest stretch of that circle that it leaves open, radians. */
const rimOf = rememberOn((region: Region): { readonly r: number; readonly notch: number } => {
  const far = farthest(region, origin)
  const r = norm(far.x, far.y)
  const arcs = region.edges
    .flatMap((e) =>
      e.kind === 'arc' && norm(e.c.x, e.c.y) < same && Math.abs(e.r - r) < same
        ? [[turnOf(e.start), e.sweep] as const]
        : [],
    )
    .toSorted((a, b) => a[0] - b[0])
  const [first] = arcs
  if (!first) return { r, notch: full }
  let [notch, end] = [0, first[0]]
  for (const [from, sweep] of arcs) {
    notch = Math.max(notch, from - end)
    end = Math.max(end, from + sweep)
  }
  return { r, notch: Math.max(notch, first[0] + full - end) }
})

const turnOf = (angle: number): number => ((angle % full) + full) % full

/** How far the axis of a body may lie from that of a bore, mm. */
function offAxis(body: Body, bore: Body): number {
  const [a, b] = [placeOf(body), placeOf(bore)]
  const [x, y] = [sub(a.x ?? zero, b.x ?? zero), sub(a.y ?? zero, b.y ?? zero)]
  const doubts = [x, y, body.drift, body.sway, bore.drift, bore.sway].flatMap((q) => q?.terms ?? [])
  return doubts.reduce(
    (sum, t) => sum + Math.abs(t.gain) * Math.max(t.spread.minus, t.spread.plus),
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
