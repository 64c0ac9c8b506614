import type { Mesh } from './mesh.ts'

/** Where a ray first leaves the material: distance and triangle. */
export interface Hit {
  readonly t: number
  readonly triangle: number
}

const leafSize = 6
/** A hit nearer than this is the face the ray starts on, mm. */
const nearest = 1e-5

/** A tree of boxes over a mesh's triangles, for the first hit of a ray. */
export class RayTree {
  readonly #v: Float32Array
  readonly #t: Uint32Array
  readonly #order: Uint32Array
  readonly #boxes: number[] = []
  /** For each node: first triangle and count for a leaf, or −1 and the index of its second child (the first follows it). */
  readonly #nodes: number[] = []

  constructor(m: Mesh) {
    this.#v = m.vertices
    this.#t = m.triangles
    const n = m.triangles.length / 3
    this.#order = Uint32Array.from({ length: n }, (_, i) => i)
    const centres = Float32Array.from({ length: 3 * n }, (_, i) => this.#centre(Math.floor(i / 3), i % 3))
    if (n > 0) this.#split(0, n, centres)
  }

  /** The first hit from (ox, oy, oz) along the unit vector (dx, dy, dz), no farther than `reach`. */
  first(ox: number, oy: number, oz: number, dx: number, dy: number, dz: number, reach: number): Hit | undefined {
    let best = reach
    const [ix, iy, iz] = [1 / dx, 1 / dy, 1 / dz]
    let triangle = -1
    const stack = this.#nodes.length > 0 ? [0] : []
    while (stack.length > 0) {
      const node = stack.pop() as number
      if (!this.#meets(node, ox, oy, oz, ix, iy, iz, best)) continue
      const first = this.#nodes[2 * node] as number
      if (first < 0) {
        stack.push(this.#nodes[2 * node + 1] as number, node + 1)
        continue
      }
      for (let i = first; i < first + (this.#nodes[2 * node + 1] as number); i++) {
        const k = this.#order[i] as number
        const t = this.#distance(k, ox, oy, oz, dx, dy, dz)
        if (t > nearest && t < best) {
          best = t
          triangle = k
        }
      }
    }
    return triangle < 0 ? undefined : { t: best, triangle }
  }

  #centre(triangle: number, axis: number): number {
    const at = (k: number) => this.#v[3 * (this.#t[3 * triangle + k] as number) + axis] as number
    return (at(0) + at(1) + at(2)) / 3
  }

  #split(from: number, to: number, centres: Float32Array): void {
    const node = this.#nodes.length / 2
    this.#nodes.push(0, 0)
    this.#boxes.push(...this.#box(from, to))
    if (to - from <= leafSize) {
      this.#nodes[2 * node] = from
      this.#nodes[2 * node + 1] = to - from
      return
    }
    const b = 6 * node
    const size = [0, 1, 2].map((k) => (this.#boxes[b + 3 + k] as number) - (this.#boxes[b + k] as number))
    const axis = size.indexOf(Math.max(...size))
    const part = this.#order.subarray(from, to)
    part.sort((x, y) => (centres[3 * x + axis] as number) - (centres[3 * y + axis] as number))
    const middle = (from + to) >> 1
    this.#split(from, middle, centres)
    this.#nodes[2 * node] = -1
    this.#nodes[2 * node + 1] = this.#nodes.length / 2
    this.#split(middle, to, centres)
  }

  #box(from: number, to: number): number[] {
    const box = [1, 1, 1, -1, -1, -1].map((s) => s * Number.POSITIVE_INFINITY)
    for (let i = from; i < to; i++) {
      for (let k = 0; k < 3; k++) {
        for (let axis = 0; axis < 3; axis++) {
          const value = this.#v[3 * (this.#t[3 * (this.#order[i] as number) + k] as number) + axis] as number
          box[axis] = Math.min(box[axis] as number, value)
          box[3 + axis] = Math.max(box[3 + axis] as number, value)
        }
      }
    }
    return box
  }

  /** Whether a ray enters a node's box before `best`; an axis it does not move along has an endless inverse. */
  #meets(node: number, ox: number, oy: number, oz: number, ix: number, iy: number, iz: number, best: number): boolean {
    const b = 6 * node
    const box = this.#boxes
    const x0 = ((box[b] as number) - ox) * ix
    const x1 = ((box[b + 3] as number) - ox) * ix
    const y0 = ((box[b + 1] as number) - oy) * iy
    const y1 = ((box[b + 4] as number) - oy) * iy
    const z0 = ((box[b + 2] as number) - oz) * iz
    const z1 = ((box[b + 5] as number) - oz) * iz
    // Math.min and Math.max would keep the NaN of 0 · ∞; a ray lying in a face of the box then counts as meeting it.
    const near = larger(larger(smaller(x0, x1), smaller(y0, y1)), larger(smaller(z0, z1), 0))
    const far = smaller(smaller(larger(x0, x1), larger(y0, y1)), smaller(larger(z0, z1), best))
    return !(near > far + 1e-6)
  }

  /** Distance along a ray to a triangle (Möller and Trumbore); Infinity where it passes by. */
  #distance(triangle: number, ox: number, oy: number, oz: number, dx: number, dy: number, dz: number): number {
    const a = 3 * (this.#t[3 * triangle] as number)
    const b = 3 * (this.#t[3 * triangle + 1] as number)
    const c = 3 * (this.#t[3 * triangle + 2] as number)
    const v = this.#v
    const [ax, ay, az] = [v[a] as number, v[a + 1] as number, v[a + 2] as number]
    const [ux, uy, uz] = [(v[b] as number) - ax, (v[b + 1] as number) - ay, (v[b + 2] as number) - az]
    const [wx, wy, wz] = [(v[c] as number) - ax, (v[c + 1] as number) - ay, (v[c + 2] as number) - az]
    const [px, py, pz] = [dy * wz - dz * wy, dz * wx - dx * wz, dx * wy - dy * wx]
    const det = ux * px + uy * py + uz * pz
    if (Math.abs(det) < 1e-14) return Number.POSITIVE_INFINITY
    const [sx, sy, sz] = [ox - ax, oy - ay, oz - az]
    const s = (sx * px + sy * py + sz * pz) / det
    if (s < -1e-9 || s > 1 + 1e-9) return Number.POSITIVE_INFINITY
    const [qx, qy, qz] = [sy * uz - sz * uy, sz * ux - sx * uz, sx * uy - sy * ux]
    const t = (dx * qx + dy * qy + dz * qz) / det
    if (t < -1e-9 || s + t > 1 + 1e-9) return Number.POSITIVE_INFINITY
    return (wx * qx + wy * qy + wz * qz) / det
  }
}

const smaller = (a: number, b: number): number => (b < a ? b : a)
const larger = (a: number, b: number): number => (b > a ? b : a)
