import type { Link } from '../region/edge-distance.ts'
import { nearPart, planarApart, planarGap } from '../region/planar-gap.ts'
import { norm, type Point, point } from '../region/point.ts'
import type { Region } from '../region/region.ts'
import { halfPlaneGap } from './half-plane.ts'
import { reach } from './silhouette.ts'
import { isStraight, sliceAt, sliceOver } from './slice.ts'
import { apart, type Bore, type Prism, type Radial, type Solid, type Span, span } from './solid.ts'

/**
 * The gap between two solids, as proven bounds: the true gap lies in [lo, hi]. They are equal wherever a closed form
 * exists, which is everywhere but at round pins and tapers beside odd shapes. Negative: overlap (see `planarGap`).
 */
export interface Gap {
  readonly lo: number
  readonly hi: number
  /** Where: height along the axis, and the two ends of the shortest way in the cross-section. */
  readonly z: number
  readonly p: Point
  readonly q: Point
  /** Length of the shortest way along the axis, 0 where it lies in one cross-section. */
  readonly dz: number
}

/** Bounds closer than this are good enough, mm: a thousandth of a millimetre. */
const fine = 1e-3
/** Where bodies are farther apart a hundredth of the gap is enough. */
const relative = 1e-2
const mostSlices = 100

export const far: Gap = {
  lo: Number.POSITIVE_INFINITY,
  hi: Number.POSITIVE_INFINITY,
  z: 0,
  p: point(0, 0),
  q: point(0, 0),
  dz: 0,
}

/** The gap between two solids; p lies on the first, q on the second. */
export function gap(a: Solid, b: Solid): Gap {
  if (a.kind === 'prism' && a.within) return larger(gap(bare(a), b), gap(a.within, b))
  if (b.kind === 'prism' && b.within) return larger(gap(a, bare(b)), gap(a, b.within))
  if (b.kind === 'bore') return toBore(a, b)
  if (a.kind === 'bore') return swap(toBore(b, a))
  if (isStraight(a) && isStraight(b)) return straight(a, b)
  if (a.kind === 'radial' && isStraight(b)) return pinBeside(a, b) ?? searched(a, b)
  if (b.kind === 'radial' && isStraight(a)) {
    const found = pinBeside(b, a)
    return found ? swap(found) : searched(a, b)
  }
  return searched(a, b)
}

/**
 * A pin beside a straight body, where no search is needed: the pin's widest slice lies beside the body, and no other
 * comes nearer; or even its thinnest slice overlaps the body's cross-section, and only the stretch between them counts.
 * Otherwise the search is left with the few edges that can matter.
 */
function pinBeside(a: Radial, b: Solid): Gap | undefined {
  const [sa, sb] = [span(a), span(b)]
  const dz = apart(sa, sb)
  const flat = Math.max(0, a.stretch ?? 0)
  const section = sectionOf(b)
  const widest = clampTo(a.z, { z0: Math.max(sb.z0, a.z - flat), z1: Math.min(sb.z1, a.z + flat) })
  if (a.z - flat <= sb.z1 && a.z + flat >= sb.z0) {
    const slice = sliceAt(a, widest)
    if (!slice) return undefined
    const planar = beside(slice, section, dz)
    const d = combine(dz, planar.d - a.grow - b.grow)
    return { lo: d, hi: d, z: widest, p: planar.p, q: planar.q, dz: 0 }
  }
  if (dz <= 0) return partBeside(a, b, section)
  const slim = sliceOver(a, { z0: sa.z1, z1: sa.z1 })
  const thin = planarApart(slim, section)
  if (thin.d - a.grow - b.grow <= 0) return { lo: dz, hi: dz, z: middle(sa, sb), p: thin.p, q: thin.q, dz }
  return fewerEdges(a, b, section, slim)
}

/**
 * Only a part of the pin that does not reach its middle lies beside the body. No slice of that part comes nearer than
 * its widest, at the body's end; those beyond the end are wider still, but farther along the axis.
 */
function partBeside(a: Radial, b: Solid, section: Region): Gap | undefined {
  const { z0, z1 } = span(b)
  const slice = sliceAt(a, z1 < a.z ? z1 : z0)
  if (!slice) return undefined
  const { d } = planarApart(slice, section)
  return Math.min(d, d - a.grow - b.grow) > 0 ? fewerEdges(a, b, section, slice) : undefined
}

/** The search with only the edges that can be nearest to what is wider than a slice of the pin. */
function fewerEdges(a: Radial, b: Solid, section: Region, slice: Region): Gap | undefined {
  const near = nearPart(section, slice, sliceOver(a, span(a)))
  return b.kind === 'prism' && near !== section ? searched(a, { ...b, region: near }) : undefined
}

/** What lies within two solids is at least as far away as either. */
const larger = (g: Gap, h: Gap): Gap => (h.lo > g.lo ? h : g)

function bare({ kind, region, z0, z1, grow }: Prism): Prism {
  return { kind, region, z0, z1, grow }
}

const swap = (g: Gap): Gap => ({ ...g, p: g.q, q: g.p })

/** Exact from the half-plane picture: a round bore sees only how far the body reaches. */
function toBore(body: Solid, bore: Bore): Gap {
  let [lo, hi] = [far, far]
  for (const piece of reach(body, bore.c)) {
    const g = halfPlaneGap(piece, bore)
    const found: Gap = { lo: g.d, hi: g.d, z: g.z, p: piece.far, q: outwards(bore.c, piece.far, g.r), dz: 0 }
    if (found.lo < lo.lo) lo = found
    if (piece.exact && found.hi < hi.hi) hi = found
  }
  return { ...lo, hi: hi.hi }
}

function outwards(c: Point, p: Point, r: number): Point {
  const d = norm(p.x - c.x, p.y - c.y)
  return d > 0 ? point(c.x + ((p.x - c.x) / d) * r, c.y + ((p.y - c.y) / d) * r) : point(c.x + r, c.y)
}

/** Both have one cross-section over their length: the distance is that of the cross-sections and of the stretches. */
function straight(a: Solid, b: Solid): Gap {
  const [sa, sb] = [span(a), span(b)]
  const dz = apart(sa, sb)
  const planar = beside(sectionOf(a), sectionOf(b), dz)
  const d = combine(dz, planar.d - a.grow - b.grow)
  return { lo: d, hi: d, z: middle(sa, sb), p: planar.p, q: planar.q, dz: Math.max(0, dz) }
}

function sectionOf(s: Solid): Region {
  return s.kind === 'prism' ? s.region : sliceOver(s, span(s))
}

/** How deep two cross-sections overlap matters only where the bodies share a stretch of the axis. */
const beside = (a: Region, b: Region, dz: number): Link => (dz >= 0 ? planarApart(a, b) : planarGap(a, b))

/** Apart in either direction: the diagonal. Overlapping in both: the shorter way out. */
function combine(dz: number, planar: number): number {
  return dz < 0 && planar < 0 ? Math.max(dz, planar) : norm(Math.max(0, dz), Math.max(0, planar))
}

/** Where along the axis: the middle of the shared stretch, or the face that looks at the other body. */
function middle(a: Span, b: Span): number {
  const [z0, z1] = [Math.max(a.z0, b.z0), Math.min(a.z1, b.z1)]
  if (z0 > z1) return a.z1 < b.z0 ? a.z1 : a.z0
  if (Number.isFinite(z0) && Number.isFinite(z1)) return (z0 + z1) / 2
  return Number.isFinite(z1) ? z1 : Number.isFinite(z0) ? z0 : 0
}

interface Node {
  readonly a: Span
  readonly b: Span
  readonly lo: number
}

/**
 * Branch and bound over both stretches: the widest cross-sections of a pair of stretches bound the gap from below,
 * the slices at their middles from above. Ends when the bounds meet, or says what is left open between them.
 */
function searched(a: Solid, b: Solid): Gap {
  let best = far
  let settled = Number.POSITIVE_INFINITY
  const whole = apart(span(a), span(b))
  const open: Node[] = []
  const take = (sa: Span, sb: Span) => {
    const dz = apart(sa, sb)
    if (dz >= best.hi) return
    const planar = beside(sliceOver(a, sa), sliceOver(b, sb), dz).d - a.grow - b.grow
    const lo = combine(dz < 0 ? whole : dz, planar)
    const upper = witness(a, b, sa, sb)
    if (upper && upper.hi < best.hi) best = upper
    if (lo < best.hi - enough(best.hi)) open.push({ a: sa, b: sb, lo })
    else settled = Math.min(settled, lo)
  }
  take(bounded(span(a), span(b)), bounded(span(b), span(a)))
  for (let n = 0; n < mostSlices && open.length > 0; n++) {
    open.sort((x, y) => y.lo - x.lo)
    const node = open.pop() as Node
    if (node.lo >= best.hi - enough(best.hi)) {
      settled = Math.min(settled, node.lo)
      continue
    }
    const splitA = !isStraight(a) && (isStraight(b) || node.a.z1 - node.a.z0 >= node.b.z1 - node.b.z0)
    for (const half of halves(splitA ? node.a : node.b)) {
      if (splitA) take(half, node.b)
      else take(node.a, half)
    }
  }
  const left = open.reduce((least, n) => Math.min(least, n.lo), settled)
  return { ...best, lo: Math.min(left, best.hi) }
}

const enough = (hi: number): number => Math.max(fine, Number.isFinite(hi) ? relative * hi : 0)

function witness(a: Solid, b: Solid, sa: Span, sb: Span): Gap | undefined {
  const za = clampTo((sa.z0 + sa.z1) / 2, sa)
  const zb = clampTo(za, sb)
  const zaBack = clampTo(zb, sa)
  const [ra, rb] = [sliceAt(a, zaBack), sliceAt(b, zb)]
  if (!ra || !rb) return undefined
  const dz = Math.abs(zaBack - zb)
  const planar = beside(ra, rb, dz > 0 ? dz : -1)
  const d = combine(dz > 0 ? dz : apart(span(a), span(b)), planar.d - a.grow - b.grow)
  return { lo: d, hi: d, z: zaBack, p: planar.p, q: planar.q, dz }
}

const clampTo = (z: number, s: Span): number => Math.min(s.z1, Math.max(s.z0, z))

function halves(s: Span): Span[] {
  const m = (s.z0 + s.z1) / 2
  return [
    { z0: s.z0, z1: m },
    { z0: m, z1: s.z1 },
  ]
}

/** An endless stretch (a swept body) is cut to what can matter beside the other body. */
function bounded(s: Span, other: Span): Span {
  const reachOf = 1000
  return {
    z0: Math.max(s.z0, Math.min(other.z0, s.z1) - reachOf),
    z1: Math.min(s.z1, Math.max(other.z1, s.z0) + reachOf),
  }
}
