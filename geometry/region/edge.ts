import { distance, norm, type Point, point } from './point.ts'

/** The boundary of a region is made of straight pieces and circular arcs; nothing is faceted. */
export interface Segment {
  readonly kind: 'segment'
  readonly a: Point
  readonly b: Point
}

/** From `start` (radians) over `sweep` > 0, counted the way θ grows; a full circle has sweep 2π. */
export interface Arc {
  readonly kind: 'arc'
  readonly c: Point
  readonly r: number
  readonly start: number
  readonly sweep: number
  /** Its two ends. */
  readonly a: Point
  readonly b: Point
}

export type Edge = Segment | Arc

const full = 2 * Math.PI
const angular = 1e-12

export const segment = (a: Point, b: Point): Segment => ({ kind: 'segment', a, b })

export function arc(c: Point, r: number, start: number, sweep: number): Arc {
  const turn = Math.min(sweep, full)
  const a = onCircle(c, r, start)
  return { kind: 'arc', c, r, start, sweep: turn, a, b: turn === full ? a : onCircle(c, r, start + turn) }
}

const onCircle = (c: Point, r: number, angle: number): Point =>
  point(c.x + r * Math.cos(angle), c.y + r * Math.sin(angle))

export const circle = (c: Point, r: number): Arc => arc(c, r, 0, full)

/** How far along the arc the direction lies, 0…1, or undefined where the arc does not reach it. */
export function along(a: Arc, angle: number): number | undefined {
  let turn = (angle - a.start) % full
  if (turn < 0) turn += full
  if (turn <= a.sweep + angular) return a.sweep === 0 ? 0 : Math.min(1, turn / a.sweep)
  return full - turn <= angular ? 0 : undefined
}

/** The point at parameter t in 0…1. */
export function pointAt(e: Edge, t: number): Point {
  if (t === 0) return e.a
  if (t === 1) return e.b
  if (e.kind === 'segment') return point(e.a.x + t * (e.b.x - e.a.x), e.a.y + t * (e.b.y - e.a.y))
  return onCircle(e.c, e.r, e.start + t * e.sweep)
}

/** The part of an edge between two parameters. */
export function piece(e: Edge, t0: number, t1: number): Edge {
  return e.kind === 'segment'
    ? segment(pointAt(e, t0), pointAt(e, t1))
    : arc(e.c, e.r, e.start + t0 * e.sweep, (t1 - t0) * e.sweep)
}

export function lengthOf(e: Edge): number {
  return e.kind === 'segment' ? distance(e.a, e.b) : e.r * e.sweep
}

/** Parameters on `e` where it meets `other`; where two pieces lie on one line or circle, the ends of `other` on `e`. */
export function crossings(e: Edge, other: Edge): readonly number[] {
  if (e.kind === 'segment') {
    if (other.kind === 'segment') return segmentSegment(e, other)
    const ts = segmentCircle(e, other)
    return ts.length === 0 ? ts : ts.filter((t) => onArc(other, pointAt(e, t)))
  }
  const hits = other.kind === 'segment' ? segmentCircle(other, e).map((t) => pointAt(other, t)) : circleCircle(e, other)
  const ends = [other.a, other.b].filter((p) => Math.abs(distance(p, e.c) - e.r) < 1e-9)
  return [...hits, ...ends].flatMap((p) => {
    const t = along(e, Math.atan2(p.y - e.c.y, p.x - e.c.x))
    return t === undefined ? [] : [t]
  })
}

/** Most edges do not meet: asked for millions of times, this makes no objects. */
const nowhere: readonly number[] = []

function onArc(a: Arc, p: Point): boolean {
  return along(a, Math.atan2(p.y - a.c.y, p.x - a.c.x)) !== undefined
}

function segmentSegment(e: Segment, o: Segment): readonly number[] {
  const ux = e.b.x - e.a.x
  const uy = e.b.y - e.a.y
  const vx = o.b.x - o.a.x
  const vy = o.b.y - o.a.y
  const wx = o.a.x - e.a.x
  const wy = o.a.y - e.a.y
  const cross = ux * vy - uy * vx
  const scale = norm(ux, uy) * norm(vx, vy)
  if (Math.abs(cross) > 1e-12 * scale) {
    const t = (wx * vy - wy * vx) / cross
    return inside01(t) && inside01((wx * uy - wy * ux) / cross) ? [clamp01(t)] : nowhere
  }
  if (Math.abs(wx * uy - wy * ux) > 1e-9 * norm(ux, uy)) return nowhere
  const uu = ux * ux + uy * uy
  return [(wx * ux + wy * uy) / uu, ((o.b.x - e.a.x) * ux + (o.b.y - e.a.y) * uy) / uu].filter(inside01).map(clamp01)
}

function segmentCircle(e: Segment, a: Arc): readonly number[] {
  const ux = e.b.x - e.a.x
  const uy = e.b.y - e.a.y
  const wx = e.a.x - a.c.x
  const wy = e.a.y - a.c.y
  const A = ux * ux + uy * uy
  if (A === 0) return nowhere
  const B = ux * wx + uy * wy
  const D = B * B - A * (wx * wx + wy * wy - a.r * a.r)
  if (D < 0) return nowhere
  const root = Math.sqrt(D)
  const first = (-B - root) / A
  const second = (-B + root) / A
  if (!inside01(first)) return inside01(second) ? [clamp01(second)] : nowhere
  return inside01(second) ? [clamp01(first), clamp01(second)] : [clamp01(first)]
}

function circleCircle(a: Arc, b: Arc): readonly Point[] {
  const d = distance(a.c, b.c)
  if (d < 1e-12 || d > a.r + b.r || d < Math.abs(a.r - b.r)) return []
  const k = (d * d + a.r * a.r - b.r * b.r) / (2 * d)
  const h = Math.sqrt(Math.max(0, a.r * a.r - k * k))
  const [ux, uy] = [(b.c.x - a.c.x) / d, (b.c.y - a.c.y) / d]
  const base = point(a.c.x + k * ux, a.c.y + k * uy)
  return [point(base.x - h * uy, base.y + h * ux), point(base.x + h * uy, base.y - h * ux)].filter((p) => onArc(b, p))
}

const inside01 = (t: number): boolean => t >= -1e-12 && t <= 1 + 1e-12
const clamp01 = (t: number): number => Math.min(1, Math.max(0, t))
