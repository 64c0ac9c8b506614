import type { Mesh } from '../../geometry/mesh/mesh.ts'
import type { PlanBody } from '../../geometry/plan/plan.ts'
import { type Convex, Hull, prism, Rod, shifted } from './convex.ts'
import { distanceBetween } from './gjk.ts'
import type { Column } from './half-plane.ts'
import { planHolds } from './plan-holds.ts'
import type { V2, V3 } from './vec.ts'

interface Slice {
  readonly za: number
  readonly zb: number
  /** What the mesh reaches at both ends of the slice: corners of the convex outline. */
  readonly low: readonly V2[]
  readonly high: readonly V2[]
}

/** Heights closer than this are one, mm: vertices are stored in single precision. */
const same = 2e-5

/** The printed sled as the kernel made it: its triangles, and how far it reaches from any axis over z. */
export class SledMesh {
  readonly #plan: PlanBody
  readonly #triangles: readonly Convex[]
  /** Least and greatest x, y, z of every triangle. */
  readonly #boxes: Float64Array
  readonly #slices: readonly Slice[]
  readonly #columns = new Map<string, readonly Column[]>()
  readonly corners: readonly V3[]

  constructor(mesh: Mesh, plan: PlanBody) {
    this.#plan = plan
    this.corners = Array.from({ length: mesh.vertices.length / 3 }, (_, i) => cornerOf(mesh, i))
    this.#triangles = trianglesOf(mesh, this.corners)
    this.#boxes = Float64Array.from(
      this.#triangles.flatMap((t) => [t.min.x, t.min.y, t.min.z, t.max.x, t.max.y, t.max.z]),
    )
    this.#slices = slicesOf(mesh, this.corners)
  }

  /** The reach about an axis of the slices that are kept. */
  columns(axis: V2, keep: Keep = all): readonly Column[] {
    const key = `${axis.x.toFixed(7)},${axis.y.toFixed(7)},${keep.key}`
    const known = this.#columns.get(key)
    if (known) return known
    const reach = (points: readonly V2[]): number =>
      points.reduce(
        (most, p) => (keep.point(p, axis) ? Math.max(most, Math.hypot(p.x - axis.x, p.y - axis.y)) : most),
        0,
      )
    const found = this.#slices
      .filter((s) => keep.slice(s.za, s.zb))
      .map((s): Column => ({ za: s.za, zb: s.zb, ra: reach(s.low), rb: reach(s.high) }))
    this.#columns.set(key, found)
    return found
  }

  /** To a convex solid; 0 where they touch or overlap. Beyond `enough` a lower bound. */
  distanceTo(c: Convex, enough: number): number {
    let best = enough
    for (const { t, d } of this.#near(c, enough)) {
      if (d >= best) break
      best = Math.min(best, distanceBetween(t, c, best))
      if (best === 0) return 0
    }
    return this.#holds(c.core) ? 0 : best
  }

  /** Triangles whose boxes are nearer than `within`, nearest first. */
  #near(c: Convex, within: number): { t: Convex; d: number }[] {
    const found: { t: Convex; d: number }[] = []
    const b = this.#boxes
    const [{ x: x0, y: y0, z: z0 }, { x: x1, y: y1, z: z1 }] = [c.min, c.max]
    const square = within * within
    for (let i = 0; i < this.#triangles.length; i++) {
      const k = 6 * i
      const z = Math.max((b[k + 2] as number) - z1, z0 - (b[k + 5] as number), 0)
      if (z >= within) continue
      const x = Math.max((b[k] as number) - x1, x0 - (b[k + 3] as number), 0)
      if (x >= within) continue
      const y = Math.max((b[k + 1] as number) - y1, y0 - (b[k + 4] as number), 0)
      const d2 = x * x + y * y + z * z
      if (d2 < square) found.push({ t: this.#triangles[i] as Convex, d: Math.sqrt(d2) })
    }
    return found.sort((p, q) => p.d - q.d)
  }

  /** What the sled is at most: its bodies and rings uncut. */
  hullOf(by: V3): Convex[] {
    return this.#plan.items.flatMap(({ op, solid: s }) =>
      op === 'add' && s.shape === 'cylinder'
        ? [shifted(new Rod({ x: s.x, y: s.y }, Math.max(s.r0, s.r1), s.z0, s.z1), by)]
        : [],
    )
  }

  /** Some of its corners, as points. */
  someCorners(by: V3): Convex[] {
    const every = Math.max(1, Math.floor(this.corners.length / 200))
    return this.corners.filter((_, i) => i % every === 0).map((p) => shifted(prism([{ x: p.x, y: p.y }], p.z, p.z), by))
  }

  #holds(p: V3): boolean {
    return planHolds(this.#plan, p)
  }
}

/** Which slices and which of their corners count. */
export interface Keep {
  readonly key: string
  readonly slice: (za: number, zb: number) => boolean
  readonly point: (p: V2, axis: V2) => boolean
}

export const all: Keep = { key: '', slice: () => true, point: () => true }

function cornerOf(m: Mesh, i: number): V3 {
  return { x: m.vertices[3 * i] as number, y: m.vertices[3 * i + 1] as number, z: m.vertices[3 * i + 2] as number }
}

const trianglesOf = (m: Mesh, corners: readonly V3[]): Hull[] =>
  Array.from(
    { length: m.triangles.length / 3 },
    (_, t) => new Hull([0, 1, 2].map((k) => corners[m.triangles[3 * t + k] as number] as V3)),
  )

/** The mesh cut at every height at which it has a corner: between two of them its outline runs straight. */
function slicesOf(m: Mesh, corners: readonly V3[]): Slice[] {
  const stations: number[] = []
  for (const z of corners.map((c) => c.z).sort((a, b) => a - b))
    if (stations.length === 0 || z - (stations.at(-1) as number) > same) stations.push(z)
  const index = (z: number): number => {
    let [lo, hi] = [0, stations.length - 1]
    while (lo < hi) {
      const middle = (lo + hi + 1) >> 1
      if ((stations[middle] as number) <= z + same / 2) lo = middle
      else hi = middle - 1
    }
    return lo
  }
  const ends = stations.slice(1).map(() => ({ low: [] as V2[], high: [] as V2[] }))
  for (const [a, b] of edgesOf(m)) {
    const [p, q] = [corners[a], corners[b]].sort((s, t) => (s as V3).z - (t as V3).z) as [V3, V3]
    const [from, to] = [index(p.z), index(q.z)]
    for (let i = from; i < to; i++) {
      const at = (z: number): V2 => {
        const t = Math.min(1, Math.max(0, (z - p.z) / (q.z - p.z)))
        return { x: p.x + t * (q.x - p.x), y: p.y + t * (q.y - p.y) }
      }
      ends[i]?.low.push(at(stations[i] as number))
      ends[i]?.high.push(at(stations[i + 1] as number))
    }
  }
  return ends.map((e, i) => ({
    za: stations[i] as number,
    zb: stations[i + 1] as number,
    low: hull(e.low),
    high: hull(e.high),
  }))
}

function edgesOf(m: Mesh): (readonly [number, number])[] {
  const n = m.vertices.length / 3
  const seen = new Set<number>()
  for (let t = 0; t < m.triangles.length; t += 3) {
    const [a, b, c] = [m.triangles[t], m.triangles[t + 1], m.triangles[t + 2]] as [number, number, number]
    for (const [p, q] of [
      [a, b],
      [b, c],
      [c, a],
    ] as const)
      seen.add(Math.min(p, q) * n + Math.max(p, q))
  }
  return [...seen].map((k) => [Math.floor(k / n), k % n])
}

/** Corners of the convex outline of points. */
function hull(points: readonly V2[]): V2[] {
  const sorted = points.toSorted((a, b) => a.x - b.x || a.y - b.y)
  const half = (list: readonly V2[]): V2[] => {
    const chain: V2[] = []
    for (const p of list) {
      while (chain.length > 1) {
        const [a, b] = [chain.at(-2), chain.at(-1)] as [V2, V2]
        if ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x) > 0) break
        chain.pop()
      }
      chain.push(p)
    }
    return chain
  }
  return [...half(sorted), ...half(sorted.toReversed())]
}
