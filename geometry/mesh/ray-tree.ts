import type { Mesh } from './mesh.ts'
import { reachesOf, TreeCutter } from './tree-cut.ts'

const leafSize = 4
/** A hit nearer than this is the face the ray starts on, mm. */
const nearest = 1e-5

/**
 * A tree of boxes over a mesh's triangles, for the first hit of a ray. All of it lies in typed arrays; the triangles of
 * a leaf lie side by side. What a ray meets depends on the mesh alone, never on how the tree was cut.
 */
export class RayTree {
  /** The triangle that the last ray met, −1 where it met none. */
  struck = -1
  readonly #order: Uint32Array
  /** Of each place in the order: a corner and the two edges from it. */
  readonly #faces: Float64Array
  /** For each node how far it reaches along −x, −y, −z, x, y, z. */
  readonly #boxes: Float32Array
  /** For each node: first place and count of a leaf, or −1 − the axis it is halved along, and its second child. */
  readonly #nodes: Int32Array
  /** Nodes a ray has yet to look at: one more than the tree is deep. */
  readonly #stack: Int32Array
  #count = 0
  #deepest = 0

  constructor(m: Mesh) {
    const n = m.triangles.length / 3
    this.#order = Uint32Array.from({ length: n }, (_, i) => i)
    this.#nodes = new Int32Array(4 * Math.max(1, n))
    this.#boxes = new Float32Array(12 * Math.max(1, n))
    const reaches = reachesOf(m)
    if (n > 0) this.#split(0, n, reaches, new TreeCutter(this.#order, reaches), 1)
    this.#stack = new Int32Array(this.#deepest + 1)
    this.#faces = facesOf(m, this.#order)
  }

  /**
   * How far along the unit vector (dx, dy, dz) a ray from (ox, oy, oz) first meets a triangle, mm, and `struck` which;
   * Infinity where it meets none nearer than `reach`. Of triangles met at one place the first of the mesh counts.
   */
  first(ox: number, oy: number, oz: number, dx: number, dy: number, dz: number, reach: number): number {
    const [nodes, faces, stack] = [this.#nodes, this.#faces, this.#stack]
    const ix = 1 / dx
    const iy = 1 / dy
    const iz = 1 / dz
    let best = reach
    let struck = -1
    let waiting = 0
    if (this.#count > 0) stack[waiting++] = 0
    while (waiting > 0) {
      const node = stack[--waiting] as number
      if (!this.#meets(node, ox, oy, oz, ix, iy, iz, best)) continue
      const from = nodes[2 * node] as number
      const other = nodes[2 * node + 1] as number
      if (from < 0) {
        // The half the ray comes to first is looked at first.
        const along = from === -1 ? dx : from === -2 ? dy : dz
        stack[waiting++] = along < 0 ? node + 1 : other
        stack[waiting++] = along < 0 ? other : node + 1
        continue
      }
      for (let i = from; i < from + other; i++) {
        const t = distance(faces, 9 * i, ox, oy, oz, dx, dy, dz)
        if (t > nearest && (t < best || (t === best && struck > (this.#order[i] as number)))) {
          best = t
          struck = this.#order[i] as number
        }
      }
    }
    this.struck = struck
    return struck < 0 ? Number.POSITIVE_INFINITY : best
  }

  #split(from: number, to: number, reaches: Float32Array, cutter: TreeCutter, depth: number): void {
    const node = this.#count++
    this.#deepest = Math.max(this.#deepest, depth)
    this.#bound(node, from, to, reaches)
    const middle = to - from > leafSize ? cutter.cut(from, to) : 0
    if (middle === 0) {
      this.#nodes[2 * node] = from
      this.#nodes[2 * node + 1] = to - from
      return
    }
    this.#nodes[2 * node] = -1 - cutter.axis
    this.#split(from, middle, reaches, cutter, depth + 1)
    this.#nodes[2 * node + 1] = this.#count
    this.#split(middle, to, reaches, cutter, depth + 1)
  }

  #bound(node: number, from: number, to: number, reaches: Float32Array): void {
    const [box, at] = [this.#boxes, 6 * node]
    box.fill(Number.NEGATIVE_INFINITY, at, at + 6)
    for (let i = from; i < to; i++) {
      const t = 6 * (this.#order[i] as number)
      for (let k = 0; k < 6; k++) {
        const value = reaches[t + k] as number
        if (value > (box[at + k] as number)) box[at + k] = value
      }
    }
  }

  /** Whether a ray enters a node's box before `best`; an axis it does not move along has an endless inverse. */
  #meets(node: number, ox: number, oy: number, oz: number, ix: number, iy: number, iz: number, best: number): boolean {
    const b = 6 * node
    const box = this.#boxes
    const x0 = (-(box[b] as number) - ox) * ix
    const x1 = ((box[b + 3] as number) - ox) * ix
    const y0 = (-(box[b + 1] as number) - oy) * iy
    const y1 = ((box[b + 4] as number) - oy) * iy
    const z0 = (-(box[b + 2] as number) - oz) * iz
    const z1 = ((box[b + 5] as number) - oz) * iz
    // Math.min and Math.max would keep the NaN of 0 · ∞; a ray lying in a face of the box then counts as meeting it.
    const near = larger(larger(smaller(x0, x1), smaller(y0, y1)), larger(smaller(z0, z1), 0))
    const far = smaller(smaller(larger(x0, x1), larger(y0, y1)), smaller(larger(z0, z1), best))
    return !(near > far + 1e-6)
  }
}

function facesOf(m: Mesh, order: Uint32Array): Float64Array {
  const faces = new Float64Array(9 * order.length)
  for (let i = 0; i < order.length; i++) {
    const t = 3 * (order[i] as number)
    for (let k = 0; k < 3; k++) {
      const a = m.vertices[3 * (m.triangles[t] as number) + k] as number
      faces[9 * i + k] = a
      faces[9 * i + 3 + k] = (m.vertices[3 * (m.triangles[t + 1] as number) + k] as number) - a
      faces[9 * i + 6 + k] = (m.vertices[3 * (m.triangles[t + 2] as number) + k] as number) - a
    }
  }
  return faces
}

/** Distance along a ray to the triangle written at `at` (Möller and Trumbore); Infinity where it passes by. */
function distance(
  f: Float64Array,
  at: number,
  ox: number,
  oy: number,
  oz: number,
  dx: number,
  dy: number,
  dz: number,
): number {
  const ux = f[at + 3] as number
  const uy = f[at + 4] as number
  const uz = f[at + 5] as number
  const wx = f[at + 6] as number
  const wy = f[at + 7] as number
  const wz = f[at + 8] as number
  const px = dy * wz - dz * wy
  const py = dz * wx - dx * wz
  const pz = dx * wy - dy * wx
  const det = ux * px + uy * py + uz * pz
  if (Math.abs(det) < 1e-14) return Number.POSITIVE_INFINITY
  const sx = ox - (f[at] as number)
  const sy = oy - (f[at + 1] as number)
  const sz = oz - (f[at + 2] as number)
  const s = (sx * px + sy * py + sz * pz) / det
  if (s < -1e-9 || s > 1 + 1e-9) return Number.POSITIVE_INFINITY
  const qx = sy * uz - sz * uy
  const qy = sz * ux - sx * uz
  const qz = sx * uy - sy * ux
  const t = (dx * qx + dy * qy + dz * qz) / det
  if (t < -1e-9 || s + t > 1 + 1e-9) return Number.POSITIVE_INFINITY
  return (wx * qx + wy * qy + wz * qz) / det
}

const smaller = (a: number, b: number): number => (b < a ? b : a)
const larger = (a: number, b: number): number => (b > a ? b : a)
