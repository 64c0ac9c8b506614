import type { Supported } from './gjk.ts'
import type { Column } from './half-plane.ts'
import { atClock, plus, type V2, type V3, v3 } from './vec.ts'

/** A convex solid with true rounds, where it lies along z, and how far it reaches from any axis. */
export interface Convex extends Supported {
  readonly min: V3
  readonly max: V3
  /** All its numbers, for remembering distances. */
  readonly key: string
  readonly columns: (axis: V2) => readonly Column[]
}

const text = (...n: readonly number[]): string => n.map((k) => Math.round(k * 1e7).toString(36)).join()

/** Round about an axis along the hilt. */
export class Rod implements Convex {
  readonly core: V3
  readonly min: V3
  readonly max: V3
  readonly #c: V2
  readonly #r: number

  constructor(c: V2, r: number, z0: number, z1: number) {
    this.#c = c
    this.#r = r
    this.core = v3(c.x, c.y, (z0 + z1) / 2)
    this.min = v3(c.x - r, c.y - r, z0)
    this.max = v3(c.x + r, c.y + r, z1)
  }

  support(d: V3): V3 {
    const l = Math.hypot(d.x, d.y)
    const k = l > 0 ? this.#r / l : 0
    return { x: this.#c.x + k * d.x, y: this.#c.y + k * d.y, z: d.z > 0 ? this.max.z : this.min.z }
  }

  get key(): string {
    return `rod ${text(this.#c.x, this.#c.y, this.#r, this.min.z, this.max.z)}`
  }

  columns(axis: V2): Column[] {
    const reach = Math.hypot(this.#c.x - axis.x, this.#c.y - axis.y) + this.#r
    return [{ za: this.min.z, zb: this.max.z, ra: reach, rb: reach }]
  }
}

/** How finely a round seen from the side is cut for its reach; between cuts it is understated by less than 1e-3 mm. */
const roundCuts = 96

/** Round about an axis that points at the hilt's, from radius rIn to rOut; `aside` moves the whole. */
export class Spoke implements Convex {
  readonly core: V3
  readonly min: V3
  readonly max: V3
  readonly #u: V2
  readonly #ends: readonly [V2, V2]
  readonly #radius: number

  constructor(theta: number, z: number, radius: number, rIn: number, rOut: number, aside: V2) {
    const u = atClock(1, theta)
    const [a, b] = [rIn, rOut].map((r): V2 => ({ x: aside.x + r * u.x, y: aside.y + r * u.y })) as [V2, V2]
    this.#u = u
    this.#ends = [a, b]
    this.#radius = radius
    this.core = v3((a.x + b.x) / 2, (a.y + b.y) / 2, z)
    this.min = v3(Math.min(a.x, b.x) - radius, Math.min(a.y, b.y) - radius, z - radius)
    this.max = v3(Math.max(a.x, b.x) + radius, Math.max(a.y, b.y) + radius, z + radius)
  }

  support(d: V3): V3 {
    const u = this.#u
    const across = d.y * u.x - d.x * u.y
    const l = Math.hypot(across, d.z)
    const k = l > 0 ? this.#radius / l : 0
    const e = this.#ends[d.x * u.x + d.y * u.y > 0 ? 1 : 0]
    return { x: e.x - k * across * u.y, y: e.y + k * across * u.x, z: this.core.z + k * d.z }
  }

  get key(): string {
    const [a, b] = this.#ends
    return `spoke ${text(a.x, a.y, b.x, b.y, this.core.z, this.#radius)}`
  }

  columns(axis: V2): Column[] {
    const at = (i: number): { z: number; r: number } => {
      const t = -Math.cos((Math.PI * i) / roundCuts)
      return {
        z: this.core.z + this.#radius * t,
        r: this.#reach(this.#radius * Math.sqrt(Math.max(0, 1 - t * t)), axis),
      }
    }
    return Array.from({ length: roundCuts }, (_, i): Column => {
      const [a, b] = [at(i), at(i + 1)]
      return { za: a.z, zb: b.z, ra: a.r, rb: b.r }
    })
  }

  #reach(half: number, axis: V2): number {
    let most = 0
    for (const e of this.#ends)
      for (const s of [half, -half])
        most = Math.max(most, Math.hypot(e.x - s * this.#u.y - axis.x, e.y + s * this.#u.x - axis.y))
    return most
  }
}

/** The hull of points; corners of the first half and of the second belong together, rear and blade end. */
export class Hull implements Convex {
  readonly core: V3
  readonly min: V3
  readonly max: V3
  readonly points: readonly V3[]

  constructor(points: readonly V3[]) {
    this.points = points
    let [x0, y0, z0, x1, y1, z1, x, y, z] = [1e9, 1e9, 1e9, -1e9, -1e9, -1e9, 0, 0, 0]
    for (const p of points) {
      x0 = Math.min(x0, p.x)
      y0 = Math.min(y0, p.y)
      z0 = Math.min(z0, p.z)
      x1 = Math.max(x1, p.x)
      y1 = Math.max(y1, p.y)
      z1 = Math.max(z1, p.z)
      x += p.x
      y += p.y
      z += p.z
    }
    const n = points.length
    this.core = v3(x / n, y / n, z / n)
    this.min = v3(x0, y0, z0)
    this.max = v3(x1, y1, z1)
  }

  support(d: V3): V3 {
    let best = this.points[0] as V3
    let most = Number.NEGATIVE_INFINITY
    for (const p of this.points) {
      const s = p.x * d.x + p.y * d.y + p.z * d.z
      if (s > most) {
        best = p
        most = s
      }
    }
    return best
  }

  get key(): string {
    return `hull ${this.points.map((p) => text(p.x, p.y, p.z)).join(' ')}`
  }

  columns(axis: V2): Column[] {
    const half = this.points.length / 2
    const pairs = this.points.slice(0, half).map((p, i) => [p, this.points[half + i] as V3] as const)
    const n = pairs.every(([p, q]) => p.x === q.x && p.y === q.y) ? 1 : 16
    const reach = (t: number): number =>
      pairs.reduce(
        (most, [p, q]) => Math.max(most, Math.hypot(p.x + t * (q.x - p.x) - axis.x, p.y + t * (q.y - p.y) - axis.y)),
        0,
      )
    const z = (t: number): number => this.min.z + t * (this.max.z - this.min.z)
    return Array.from({ length: n }, (_, i) => ({
      za: z(i / n),
      zb: z((i + 1) / n),
      ra: reach(i / n),
      rb: reach((i + 1) / n),
    }))
  }
}

/** Straight from one convex outline at z0 to another, corner to corner, at z1. */
export const prism = (rear: readonly V2[], z0: number, z1: number, blade: readonly V2[] = rear): Hull =>
  new Hull([...rear.map((p) => v3(p.x, p.y, z0)), ...blade.map((p) => v3(p.x, p.y, z1))])

/** Corners of a rectangle: half width across and half height along the clock angle it faces. */
export function rectangleAt(c: V2, halfWidth: number, halfHeight: number, facing: number): V2[] {
  const u = atClock(1, facing)
  const corner = (v: number, w: number): V2 => ({ x: c.x + v * u.x - w * u.y, y: c.y + v * u.y + w * u.x })
  return [
    corner(-halfHeight, -halfWidth),
    corner(halfHeight, -halfWidth),
    corner(halfHeight, halfWidth),
    corner(-halfHeight, halfWidth),
  ]
}

/** Degrees of arc that one piece of a ring sector may span: at 20 mm the chord lies within 0.0008 mm of it. */
const pieceOfArc = 1

/** A ring sector about the axis as convex pieces; inside radius as chords, a hair farther in than the arc. */
export function sectorPieces(
  rIn: number,
  rOut: number,
  theta: number,
  half: number,
  z0: number,
  z1: number,
  aside: V2,
): Convex[] {
  const n = Math.max(1, Math.ceil((2 * half) / pieceOfArc))
  const on = (r: number, i: number): V2 => {
    const p = atClock(r, theta - half + (2 * half * i) / n)
    return { x: p.x + aside.x, y: p.y + aside.y }
  }
  return Array.from({ length: n }, (_, i) => prism([on(rIn, i), on(rOut, i), on(rOut, i + 1), on(rIn, i + 1)], z0, z1))
}

/** A solid drawn out along z by as much as it travels: from `lo` to `hi` beyond its place. */
export class Drawn implements Convex {
  readonly core: V3
  readonly min: V3
  readonly max: V3
  readonly #of: Convex
  readonly #lo: number
  readonly #hi: number

  constructor(of: Convex, lo: number, hi: number) {
    this.#of = of
    this.#lo = lo
    this.#hi = hi
    this.core = of.core
    this.min = v3(of.min.x, of.min.y, of.min.z + lo)
    this.max = v3(of.max.x, of.max.y, of.max.z + hi)
  }

  support(d: V3): V3 {
    const p = this.#of.support(d)
    return { x: p.x, y: p.y, z: p.z + (d.z > 0 ? this.#hi : this.#lo) }
  }

  get key(): string {
    return `${this.#of.key} out ${text(this.#lo, this.#hi)}`
  }

  columns(): never {
    throw new Error('a path is drawn out on the side of what is passed')
  }
}

class Shifted implements Convex {
  readonly core: V3
  readonly min: V3
  readonly max: V3
  readonly #of: Convex
  readonly #by: V3

  constructor(of: Convex, by: V3) {
    this.#of = of
    this.#by = by
    this.core = plus(of.core, by)
    this.min = plus(of.min, by)
    this.max = plus(of.max, by)
  }

  support(d: V3): V3 {
    return plus(this.#of.support(d), this.#by)
  }

  get key(): string {
    return `${this.#of.key} by ${text(this.#by.x, this.#by.y, this.#by.z)}`
  }

  columns(axis: V2): Column[] {
    const by = this.#by
    return this.#of
      .columns({ x: axis.x - by.x, y: axis.y - by.y })
      .map((k) => ({ ...k, za: k.za + by.z, zb: k.zb + by.z }))
  }
}

/** A solid at another place. */
export const shifted = (c: Convex, by: V3): Convex => (by.x === 0 && by.y === 0 && by.z === 0 ? c : new Shifted(c, by))

/** A lower bound of the distance between two boxes around solids. */
export function boxesApart(a: Convex, b: Convex): number {
  const x = Math.max(0, a.min.x - b.max.x, b.min.x - a.max.x)
  const y = Math.max(0, a.min.y - b.max.y, b.min.y - a.max.y)
  const z = Math.max(0, a.min.z - b.max.z, b.min.z - a.max.z)
  return Math.hypot(x, y, z)
}
