import { type Arc, along, type Edge, pointAt, type Segment } from '../region/edge.ts'
import { nearest } from '../region/edge-distance.ts'
import { type Point, polar } from '../region/point.ts'
import type { Region } from '../region/region.ts'
import { sliceOver } from '../solid/slice.ts'
import type { Solid, Span } from '../solid/solid.ts'

/**
 * For every clock cell the least inner and the greatest outer radius of a cross-section; an inner radius of Infinity
 * and an outer of −Infinity where the cell has nothing of it. Exact for straight pieces and arcs.
 */
export interface Profile {
  readonly inner: Float64Array
  readonly outer: Float64Array
}

const full = 2 * Math.PI
/** How far a ray is drawn, mm: beyond any hilt. */
const endless = 1e4

/** The profile of a region, grown by `grow` mm on all sides: outwards, inwards and around. Never too small. */
export function profileOf(region: Region, nTheta: number, grow: number): Profile {
  const inner = new Float64Array(nTheta).fill(Number.POSITIVE_INFINITY)
  const outer = new Float64Array(nTheta).fill(Number.NEGATIVE_INFINITY)
  const round = region.form.kind === 'disc' || region.form.kind === 'outside' ? region.form : undefined
  if (round && Math.hypot(round.c.x, round.c.y) < 1e-12) {
    if (round.kind === 'disc') return { inner: inner.fill(0), outer: outer.fill(Math.max(0, round.r + grow)) }
    return { inner: inner.fill(Math.max(0, round.r - grow)), outer: outer.fill(Number.POSITIVE_INFINITY) }
  }
  const p = { inner, outer }
  for (const e of region.edges) draw(p, e, nTheta)
  if (region.contains({ x: 0, y: 0 })) inner.fill(0)
  if (!Number.isFinite(region.hold.r)) endlessly(p, region, nTheta)
  for (let i = 0; i < nTheta; i++) {
    inner[i] = Math.max(0, (inner[i] as number) - grow)
    outer[i] = (outer[i] as number) + grow
  }
  return grow > 0 ? around(p, nTheta, grow) : p
}

/** One edge into the cells it passes: its ends, where it turns, and where it crosses the rays between cells. */
function draw(p: Profile, e: Edge, n: number): void {
  const points = [pointAt(e, 0), pointAt(e, 1), ...turning(e)]
  for (const q of points) {
    const cell = Math.floor((angleOf(q) / full) * n) % n
    take(p, cell, Math.hypot(q.x, q.y))
    // A point on a ray belongs to the cells on both of its sides.
    take(p, (Math.ceil((angleOf(q) / full) * n - 1e-9) + n - 1) % n, Math.hypot(q.x, q.y))
  }
  const { from, to } = raysOf(e, n)
  for (let k = from; k <= to; k++) {
    const w = (k * full) / n
    for (const r of e.kind === 'segment' ? onSegment(e, w) : onArc(e, w)) {
      take(p, ((k % n) + n) % n, r)
      take(p, (((k - 1) % n) + n) % n, r)
    }
  }
}

function take(p: Profile, cell: number, r: number): void {
  if (r < (p.inner[cell] as number)) p.inner[cell] = r
  if (r > (p.outer[cell] as number)) p.outer[cell] = r
}

/** The rays an edge may cross: those between its ends, the short way for a straight piece. */
function raysOf(e: Edge, n: number): { from: number; to: number } {
  if (e.kind === 'arc') {
    if (Math.hypot(e.c.x, e.c.y) > 1e-12) return { from: 0, to: n - 1 }
    return { from: Math.ceil((e.start / full) * n - 1e-9), to: Math.floor(((e.start + e.sweep) / full) * n + 1e-9) }
  }
  const a = angleOf(e.a)
  let turn = angleOf(e.b) - a
  if (turn > Math.PI) turn -= full
  if (turn < -Math.PI) turn += full
  const [lo, hi] = turn < 0 ? [a + turn, a] : [a, a + turn]
  return { from: Math.ceil((lo / full) * n - 1e-9), to: Math.floor((hi / full) * n + 1e-9) }
}

function onSegment(e: Segment, w: number): number[] {
  const [c, s] = [Math.cos(w), Math.sin(w)]
  const [ux, uy] = [e.b.x - e.a.x, e.b.y - e.a.y]
  const cross = c * uy - s * ux
  if (Math.abs(cross) < 1e-12) return []
  const r = (e.a.x * uy - e.a.y * ux) / cross
  return r >= 0 ? [r] : []
}

function onArc(e: Arc, w: number): number[] {
  const d = Math.hypot(e.c.x, e.c.y)
  const off = w - Math.atan2(e.c.y, e.c.x)
  const under = e.r * e.r - (d * Math.sin(off)) ** 2
  if (under < 0) return []
  const root = Math.sqrt(under)
  return [d * Math.cos(off) - root, d * Math.cos(off) + root].filter(
    (r) => r >= 0 && along(e, Math.atan2(r * Math.sin(w) - e.c.y, r * Math.cos(w) - e.c.x)) !== undefined,
  )
}

/** Where an edge comes nearest to the axis or goes farthest from it, its ends aside. */
function turning(e: Edge): Point[] {
  if (e.kind === 'segment') return [nearest(e, { x: 0, y: 0 })]
  if (Math.hypot(e.c.x, e.c.y) < 1e-12) return []
  const away = Math.atan2(e.c.y, e.c.x)
  return [away, away + Math.PI].flatMap((w) => {
    const t = along(e, w)
    return t === undefined ? [] : [pointAt(e, t)]
  })
}

function angleOf(p: Point): number {
  const w = Math.atan2(p.y, p.x)
  return w < 0 ? w + full : w
}

/** Metal goes on outwards: cells whose middle ray ends in it have no outer end. */
function endlessly(p: Profile, region: Region, n: number): void {
  for (let i = 0; i < n; i++)
    if (region.contains(polar(endless, ((i + 0.5) * 360) / n))) p.outer[i] = Number.POSITIVE_INFINITY
}

/** Spreads a profile around the axis by `grow` mm of arc, measured where it comes nearest to the axis. */
function around(p: Profile, nTheta: number, grow: number): Profile {
  const inner = Float64Array.from(p.inner)
  const outer = Float64Array.from(p.outer)
  const step = full / nTheta
  for (let i = 0; i < nTheta; i++) {
    const r = p.inner[i] as number
    if (!Number.isFinite(r)) continue
    const reach = r > grow ? Math.ceil(Math.asin(grow / r) / step) : Math.ceil(nTheta / 4)
    for (let k = -reach; k <= reach; k++) {
      const j = (((i + k) % nTheta) + nTheta) % nTheta
      inner[j] = Math.min(inner[j] as number, r)
      outer[j] = Math.max(outer[j] as number, p.outer[i] as number)
    }
  }
  return { inner, outer }
}

/** The profile of what a solid has between two heights. */
export function profileOver(s: Solid, over: Span, nTheta: number, grow: number): Profile {
  return profileOf(sliceOver(s, over), nTheta, grow + s.grow)
}
