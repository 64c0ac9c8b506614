import { farthest } from '../../geometry/region/farthest.ts'
import { norm, origin } from '../../geometry/region/point.ts'
import type { Region } from '../../geometry/region/region.ts'
import { rememberOn } from '../../geometry/remember.ts'
import type { Body } from '../body/body.ts'
import { gapAt } from '../body/gap-at.ts'
import { onePair } from '../body/one-pair.ts'
import { most, type Quantity } from '../quantity/quantity.ts'

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
  const found = bores.flatMap((bore) => {
    const met = outside.filter((b) => overlaps(b, bore)).map((b) => meeting(b, bore))
    return met.length === 0
      ? []
      : [{ sure: Math.min(...met.map((m) => m.worst)), most: Math.min(...met.map(stop), together(met)) }]
  })
  if (found.length === 0) return undefined
  const sure = Math.max(0, Math.min(...found.map((f) => f.sure)))
  return { sure, most: Math.max(sure, Math.min(...found.map((f) => f.most))) }
}

interface Meeting {
  readonly worst: number
  /** The gap at its widest, and how far the two axes may lie apart. */
  readonly gap: number
  readonly off: number
  /** Where round the axis the body is as wide as it gets, radians; its radius there. */
  readonly rim: Rim
}

interface Rim {
  readonly r: number
  readonly arcs: readonly (readonly [number, number])[]
}

function meeting(body: Body, bore: Body): Meeting {
  const pair = onePair(body, bore)
  const [worst, gap, off] = [gapAt(pair, 'worst').lo, gapAt(pair, 'best').hi, offAxis(body, bore)]
  const { r, arcs } = rimOf(body)
  const shape = bore.shape.kind === 'bore' ? bore.shape : undefined
  const slots = (shape?.openings ?? []).map(({ theta, halfWidth }) => {
    // Where the wall is met lies as far off the direction of the rim as the room lets it.
    const half = Math.asin(Math.min(1, most(halfWidth) / r)) + Math.max(0, gap + off) / r
    return [(theta * Math.PI) / 180 - half, 2 * half] as const
  })
  return { worst, gap, off, rim: { r, arcs: slots.reduce(less, arcs) } }
}

const stop = (m: Meeting): number => m.gap + 2 * m.off + pastNotch(m, m.rim.arcs)

/** Pieces of one radius stop each other's notches. */
function together(met: readonly Meeting[]): number {
  const rims = new Set(met.map((m) => m.rim.r))
  return Math.min(
    ...[...rims].map((r) => {
      const alike = met.filter((m) => m.rim.r === r)
      const [gap, off] = [Math.max(...alike.map((m) => m.gap)), Math.max(...alike.map((m) => m.off))]
      const arcs = alike.flatMap((m) => m.rim.arcs)
      return gap + 2 * off + pastNotch({ gap, off, rim: { r, arcs } }, arcs)
    }),
  )
}

/** How much farther than all around a body gets towards its widest notch, until the notch's two edges meet the wall. */
function pastNotch({ gap, off, rim: { r } }: Pick<Meeting, 'gap' | 'off' | 'rim'>, arcs: Rim['arcs']): number {
  const half = widestNotch(arcs) / 2
  if (half === 0) return 0
  if (half >= Math.PI) return Number.POSITIVE_INFINITY
  const room = Math.max(0, gap + off)
  const [along, across] = [r * Math.cos(half), r * Math.sin(half)]
  return Math.max(0, Math.sqrt(Math.max(0, (r + room) ** 2 - across ** 2)) - along - room)
}

const full = 2 * Math.PI

/** The longest stretch of the circle that no arc covers, radians. */
function widestNotch(arcs: Rim['arcs']): number {
  const sorted = arcs
    .map(([from, sweep]) => [((from % full) + full) % full, sweep] as const)
    .toSorted((a, b) => a[0] - b[0])
  const [first] = sorted
  if (!first) return full
  let [widest, end] = [0, first[0]]
  for (const [from, sweep] of sorted) {
    widest = Math.max(widest, from - end)
    end = Math.max(end, from + sweep)
  }
  return Math.max(widest, first[0] + full - end)
}

/** Arcs of the circle without a stretch of it. */
function less(arcs: Rim['arcs'], [at, cut]: readonly [number, number]): Rim['arcs'] {
  return arcs.flatMap(([from, sweep]) => {
    // Counted from the cut's end: it takes the last `cut` of the circle.
    const start = (((from - at - cut) % full) + full) % full
    const keep = full - cut
    const pieces = [
      [start, Math.min(start + sweep, keep)],
      [full, Math.min(start + sweep, full + keep)],
    ] as const
    return pieces.filter(([a, b]) => b > a).map(([a, b]) => [a + at + cut, b - a] as const)
  })
}

const everywhere: Rim['arcs'] = [[0, full]]

function rimOf(body: Body): Rim {
  const s = body.shape
  if (s.kind === 'round') return { r: s.r0.nominal, arcs: everywhere }
  return s.kind === 'outline' ? rimOfRegion(s.region) : { r: 0, arcs: [] }
}

const rimOfRegion = rememberOn((region: Region): Rim => {
  const far = farthest(region, origin)
  const r = norm(far.x, far.y)
  const arcs = region.edges.flatMap((e) =>
    e.kind === 'arc' && norm(e.c.x, e.c.y) < same && Math.abs(e.r - r) < same ? [[e.start, e.sweep] as const] : [],
  )
  return { r, arcs }
})

/** Circles closer than this are one, mm. */
const same = 1e-6

/** How far the axis of a body may lie from that of a bore, mm. */
function offAxis(body: Body, bore: Body): number {
  const [a, b] = [placeOf(body), placeOf(bore)]
  return norm(a.x - b.x, a.y - b.y) + a.doubt + b.doubt
}

function placeOf(b: Body): { x: number; y: number; doubt: number } {
  const s = b.shape
  const [x, y] = s.kind === 'bore' || s.kind === 'round' ? [s.x, s.y] : [undefined, undefined]
  const doubt = [x, y, b.drift, b.sway].reduce((sum, q) => sum + doubtOf(q), 0)
  return { x: x?.nominal ?? 0, y: y?.nominal ?? 0, doubt }
}

const doubtOf = (q: Quantity | undefined): number =>
  q ? q.terms.reduce((sum, t) => sum + Math.abs(t.gain) * Math.max(t.spread.minus, t.spread.plus), 0) : 0

function overlaps(a: Body, b: Body): boolean {
  if (a.shape.kind === 'pin' || b.shape.kind === 'pin') return false
  return a.shape.z0.nominal < b.shape.z1.nominal && a.shape.z1.nominal > b.shape.z0.nominal
}
