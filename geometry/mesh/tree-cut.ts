import type { Mesh } from './mesh.ts'

/** Bins along an axis: more find hardly better cuts. */
const bins = 12

/** How far each triangle reaches along −x, −y, −z, x, y, z: six numbers a triangle, mm. */
export function reachesOf(m: Mesh): Float32Array {
  const reaches = new Float32Array(2 * m.triangles.length).fill(Number.NEGATIVE_INFINITY)
  for (let c = 0; c < m.triangles.length; c++) {
    const at = 6 * Math.floor(c / 3)
    for (let k = 0; k < 3; k++) {
      const value = m.vertices[3 * (m.triangles[c] as number) + k] as number
      if (-value > (reaches[at + k] as number)) reaches[at + k] = -value
      if (value > (reaches[at + 3 + k] as number)) reaches[at + 3 + k] = value
    }
  }
  return reaches
}

/** Halves sets of triangles for a tree of boxes. */
export class TreeCutter {
  /** The axis of the last cut. */
  axis = 0
  readonly #order: Uint32Array
  readonly #reaches: Float32Array
  readonly #counts = new Uint32Array(bins)
  readonly #boxes = new Float32Array(6 * bins)
  readonly #costs = new Float64Array(bins)

  constructor(order: Uint32Array, reaches: Float32Array) {
    this.#order = order
    this.#reaches = reaches
  }

  /**
   * Sorts the triangles from one place of the order to another into two halves and returns where the second begins; 0
   * where their centres all lie at one place. They are cut across the axis along which their centres are spread
   * farthest, where a ray is served cheapest: the area of a half's box is the chance that a ray meets it, its triangles
   * are what that costs (J. D. MacDonald and K. S. Booth, Heuristics for ray tracing using space subdivision, 1990:
   * from memory).
   */
  cut(from: number, to: number): number {
    const order = this.#order
    let [first, spread] = [0, 0]
    for (let axis = 0; axis < 3; axis++) {
      let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
      for (let i = from; i < to; i++) {
        const value = this.#centre(order[i] as number, axis)
        if (value < low) low = value
        if (value > high) high = value
      }
      if (!(high - low > spread)) continue
      this.axis = axis
      first = low
      spread = high - low
    }
    if (spread === 0) return 0
    const scale = bins / spread
    const bin = this.#cheapest(from, to, first, scale)
    let middle = from
    for (let i = from; i < to; i++) {
      const triangle = order[i] as number
      if (this.#binOf(triangle, first, scale) >= bin) continue
      order[i] = order[middle] as number
      order[middle++] = triangle
    }
    return middle
  }

  /** Twice the middle of a triangle's box. */
  #centre(triangle: number, axis: number): number {
    return (this.#reaches[6 * triangle + 3 + axis] as number) - (this.#reaches[6 * triangle + axis] as number)
  }

  #binOf(triangle: number, first: number, scale: number): number {
    const bin = Math.floor((this.#centre(triangle, this.axis) - first) * scale)
    return bin < bins ? bin : bins - 1
  }

  /** The first bin of the second half, where both halves together cost least. */
  #cheapest(from: number, to: number, first: number, scale: number): number {
    const [counts, boxes, costs] = [this.#counts.fill(0), this.#boxes, this.#costs.fill(0)]
    boxes.fill(Number.NEGATIVE_INFINITY)
    for (let i = from; i < to; i++) {
      const triangle = this.#order[i] as number
      const bin = this.#binOf(triangle, first, scale)
      counts[bin] = (counts[bin] as number) + 1
      widen(boxes, 6 * bin, this.#reaches, 6 * triangle)
    }
    const half = new Float32Array(6)
    for (let before = 0; before < 2; before++) {
      half.fill(Number.NEGATIVE_INFINITY)
      let inside = 0
      for (let step = 0; step < bins - 1; step++) {
        const bin = before === 1 ? step : bins - 1 - step
        inside += counts[bin] as number
        widen(half, 0, boxes, 6 * bin)
        const cut = bin + before
        costs[cut] = (costs[cut] as number) + (inside > 0 ? inside * areaOf(half) : Number.POSITIVE_INFINITY)
      }
    }
    let best = 1
    for (let cut = 2; cut < bins; cut++) if ((costs[cut] as number) < (costs[best] as number)) best = cut
    return best
  }
}

function widen(box: Float32Array, at: number, by: Float32Array, from: number): void {
  for (let k = 0; k < 6; k++) {
    const value = by[from + k] as number
    if (value > (box[at + k] as number)) box[at + k] = value
  }
}

/** Half the area of a box written as its reaches. */
function areaOf(box: Float32Array): number {
  const x = (box[0] as number) + (box[3] as number)
  const y = (box[1] as number) + (box[4] as number)
  const z = (box[2] as number) + (box[5] as number)
  return x * y + y * z + z * x
}
