import { type Arc, along, type Edge, pointAt, type Segment } from '../region/edge.ts'
import { nearest } from '../region/edge-distance.ts'
import { type Point, polar } from '../region/point.ts'
import type { Region } from '../region/region.ts'
import { remember } from '../remember.ts'
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

/** Radii that are the same all around, as `Profile` has them. */
export interface Ring {
  readonly inner: number
  readonly outer: number
}

/** The ring of a region round about the axis, grown by `grow` mm; undefined for any other. */
function ringOf({ form }: Region, grow: number): Ring | undefined {
  if ((form.kind !== 'disc' && form.kind !== 'outside') || Math.hypot(form.c.x, form.c.y) >= 1e-12) return undefined
  if (form.kind === 'disc') return { inner: 0, outer: Math.max(0, form.r + grow) }
  return { inner: Math.max(0, form.r - grow), outer: Number.POSITIVE_INFINITY }
}

/** The profile of a region, grown by `grow` mm on all sides: outwards, inwards and around. Never too small. */
export function profileOf(region: Region, nTheta: number, grow: number): Profile {
  const ring = ringOf(region, grow)
  const inner = new Float64Array(nTheta).fill(ring?.inner ?? Number.POSITIVE_INFINITY)
  const outer = new Float64Array(nTheta).fill(ring?.outer ?? Number.NEGATIVE_INFINITY)
  const p = { inner, outer }
  if (ring) return p
  for (const e of region.edges) draw(p, e, nTheta)
  if (region.contains({ x: 0, y: 0 })) inner.fill(0)
  if (!Number.isFinite(region.hold.r)) endlessly(p, region, nTheta)
  return grow > 0 ? swollen(p, nTheta, grow) : grow < 0 ? shrunk(p, grow) : p
}

/** Smaller in radius alone: what it loses around is left to it, so that it is never too small. */
const shrunk = ({ inner, outer }: Profile, grow: number): Profile => ({
  inner: inner.map((r) => (r === 0 ? 0 : r - grow)),
  outer: outer.map((r) => r + grow),
})

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
  if (e.kind === 'arc' && isAboutAxis(e)) {
    // The cells on both sides of every ray it crosses, each once.
    for (let i = from - 1; from <= to && i <= Math.min(to, from + n - 2); i++) take(p, ((i % n) + n) % n, e.r)
    return
  }
  const rays = raysFor(n)
  const both = (k: number, r: number) => {
    take(p, k, r)
    take(p, k === 0 ? n - 1 : k - 1, r)
  }
  for (let i = from; i <= to; i++) {
    const k = ((i % n) + n) % n
    if (e.kind === 'segment') onSegment(e, rays, k, both)
    else onArc(e, rays, k, both)
  }
}

/** Directions of the rays between cells. */
interface Rays {
  readonly cos: Float64Array
  readonly sin: Float64Array
}

const raysFor = remember(4, String, (n: number): Rays => {
  const angles = Float64Array.from({ length: n }, (_, k) => (k * full) / n)
  return { cos: angles.map(Math.cos), sin: angles.map(Math.sin) }
})

/** Points and directions closer than this are taken for one, mm or radians. */
const close = 1e-6

const isAboutAxis = (e: Arc): boolean => Math.hypot(e.c.x, e.c.y) < 1e-12

function take(p: Profile, cell: number, r: number): void {
  if (r < (p.inner[cell] as number)) p.inner[cell] = r
  if (r > (p.outer[cell] as number)) p.outer[cell] = r
}

/** The rays an edge may cross: those between its ends, the short way for a straight piece. */
function raysOf(e: Edge, n: number): { from: number; to: number } {
  const between = (lo: number, hi: number) => ({
    from: Math.ceil((lo / full) * n - 1e-9),
    to: Math.floor((hi / full) * n + 1e-9),
  })
  if (e.kind === 'arc') {
    if (isAboutAxis(e)) return between(e.start, e.start + e.sweep)
    const d = Math.hypot(e.c.x, e.c.y)
    if (d < e.r - close && e.sweep < full) {
      // Seen from inside its circle, an arc turns one way only.
      const a = angleOf(e.a)
      const turn = (angleOf(e.b) - a + full) % full
      return turn < close || full - turn < close ? { from: 0, to: n - 1 } : between(a, a + turn)
    }
    if (d <= e.r) return { from: 0, to: n - 1 }
    // From outside, a circle is seen under twice the angle whose sine is r/d.
    const [away, half] = [Math.atan2(e.c.y, e.c.x), Math.asin(e.r / d)]
    return between(away - half, away + half)
  }
  const a = angleOf(e.a)
  let turn = angleOf(e.b) - a
  if (turn > Math.PI) turn -= full
  if (turn < -Math.PI) turn += full
  return turn < 0 ? between(a + turn, a) : between(a, a + turn)
}

function onSegment(e: Segment, rays: Rays, k: number, found: (k: number, r: number) => void): void {
  const [ux, uy] = [e.b.x - e.a.x, e.b.y - e.a.y]
  const cross = (rays.cos[k] as number) * uy - (rays.sin[k] as number) * ux
  if (Math.abs(cross) < 1e-12) return
  const r = (e.a.x * uy - e.a.y * ux) / cross
  if (r >= 0) found(k, r)
}

function onArc(e: Arc, rays: Rays, k: number, found: (k: number, r: number) => void): void {
  const ux = rays.cos[k] as number
  const uy = rays.sin[k] as number
  const ahead = e.c.x * ux + e.c.y * uy
  const aside = e.c.x * uy - e.c.y * ux
  const under = e.r * e.r - aside * aside
  // A ray that only touches is not lost to rounding.
  if (under < -1e-12) return
  const root = Math.sqrt(Math.max(0, under))
  reached(e, ahead - root, ux, uy, k, found)
  reached(e, ahead + root, ux, uy, k, found)
}

/** Tells of a point of a ray, r along it, that lies on the circle of an arc, if the arc has it. */
function reached(e: Arc, r: number, ux: number, uy: number, k: number, found: (k: number, r: number) => void): void {
  if (r < 0) return
  if (e.sweep >= full || along(e, Math.atan2(r * uy - e.c.y, r * ux - e.c.x)) !== undefined) found(k, r)
}

/** Where an edge comes nearest to the axis or goes farthest from it, its ends aside. */
function turning(e: Edge): Point[] {
  if (e.kind === 'segment') return [nearest(e, { x: 0, y: 0 })]
  if (isAboutAxis(e)) return []
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

/**
 * Grown by `grow` mm on all sides. A point at radius ρ is then seen under twice the angle whose sine is grow/ρ, from
 * ρ − grow to ρ + grow; one nearer to the axis than `grow` covers the axis, and goes `grow` beyond it at most.
 */
function swollen(p: Profile, n: number, grow: number): Profile {
  const inner = p.inner.map((r) => r - grow)
  const outer = p.outer.map((r) => r + grow)
  const least = outer.reduce((a, b) => Math.min(a, b))
  const limits = limitsFor({ n, grow })
  for (let i = 0; i < n; i++) {
    const nearest = p.inner[i] as number
    const farthest = p.outer[i] as number
    if (nearest === Number.POSITIVE_INFINITY) continue
    for (let k = 1; k <= n / 2; k++) {
      // Points of the cell that reach so far around lie within this radius.
      const limit = limits[k] as number
      if (limit < nearest) break
      const far = Math.min(farthest, limit) + grow
      // What is grown so little is in every cell already, and nothing comes nearer to the axis than the axis.
      if (far <= least && nearest === 0) break
      for (const j of [(i + k) % n, (i - k + n) % n]) {
        if (nearest - grow < (inner[j] as number)) inner[j] = nearest - grow
        if (far > (outer[j] as number)) outer[j] = far
      }
    }
  }
  const covers = inner.some((r) => r < 0)
  return { inner: covers ? inner.fill(0) : inner, outer }
}

/** For so many cells away the radius within which a point reaches there when it grows, mm; at least `grow`. */
const limitsFor = remember(
  64,
  (a: { readonly n: number; readonly grow: number }) => `${a.n} ${a.grow}`,
  ({ n, grow }) =>
    Float64Array.from({ length: n / 2 + 1 }, (_, k) => {
      const turn = (Math.max(0, k - 1) * full) / n
      return turn < Math.PI / 2 ? grow / Math.sin(turn) : grow
    }),
)

/** The ring of what a solid round about the axis has between two heights; undefined for any other. */
export function ringOver(s: Solid, over: Span, grow: number): Ring | undefined {
  return s.kind === 'radial' ? undefined : ringOf(sliceOver(s, over), grow + s.grow)
}

/** The profile of what a solid has between two heights. */
export function profileOver(s: Solid, over: Span, nTheta: number, grow: number): Profile {
  return profileOf(sliceOver(s, over), nTheta, grow + s.grow)
}
