import { facetError, leastPatch, opposed } from '../wall.ts'
import type { Mesh } from './mesh.ts'
import { RayTree } from './ray-tree.ts'

/** One place of a wall: how thick, where, and which two items of the plan made its faces. */
export interface WallPlace {
  readonly thickness: number
  readonly at: readonly [number, number, number]
  readonly made: readonly [number, number]
}

export interface ThicknessReport {
  /** The thinnest wall that is more than a crumb; undefined where no wall is thinner than 6 mm. */
  readonly thinnest: WallPlace | undefined
  /** Area of faces with less than the limit behind them, mm². */
  readonly thinArea: number
  /** The thinnest place of each thin patch, thinnest first. */
  readonly thin: readonly WallPlace[]
}

/** One sample for so many mm², and at least one on every triangle that has any size. */
const sampleArea = 1.5
const leastTriangle = 0.02
/** Samples within so many mm are one patch. */
const patchReach = 3
/** Samples that are no thicker than the thinnest by this are as thin as it, mm. */
const band = 0.1
/** Walls thicker than this are not looked for, mm. */
const reach = 6

interface Sample extends WallPlace {
  readonly area: number
}

/**
 * Walls measured on the mesh itself: from every face a ray straight into the material, to where it comes out again.
 * `limit`: what counts as thin, mm. `relief`: items whose faces are shallow engraving; what stands between two strokes
 * is no wall. Deterministic. Thin walls are looked for first: where there is one it alone is asked about, and walls
 * thicker than it by more than the band of one place say nothing.
 */
export function thickness(m: Mesh, limit: number, relief: ReadonlySet<number> = new Set()): ThicknessReport {
  const walls = new WallRays(m, relief)
  const close = Math.max(2 * limit, limit + band)
  let samples = walls.within(Math.min(close, reach))
  let thinnest = firstOfSize(samples)
  if (close < reach && !(thinnest && thinnest.thickness + band < close)) {
    samples = walls.within(reach)
    thinnest = firstOfSize(samples)
  }
  const thin = samples.filter((s) => s.thickness < limit - facetError)
  const patches = patchesOf(thin).filter((p) => p.reduce((sum, s) => sum + s.area, 0) >= leastPatch)
  return {
    thinnest: thinnest ?? samples[0],
    thinArea: patches.flat().reduce((sum, s) => sum + s.area, 0),
    thin: patches.map((p) => p[0] as Sample).sort((a, b) => a.thickness - b.thickness),
  }
}

/** The thinnest sample that has enough as thin around it; undefined where none has. */
function firstOfSize(samples: readonly Sample[]): WallPlace | undefined {
  for (const [i, s] of samples.entries()) {
    let area = 0
    for (let k = i; k < samples.length && area < leastPatch; k++) {
      const o = samples[k] as Sample
      if (o.thickness > s.thickness + band) break
      if (near(s, o)) area += o.area
    }
    if (area >= leastPatch) return s
  }
  return undefined
}

const near = (a: Sample, b: Sample): boolean =>
  (a.at[0] - b.at[0]) ** 2 + (a.at[1] - b.at[1]) ** 2 + (a.at[2] - b.at[2]) ** 2 <= patchReach ** 2

/** Thin samples that hang together, each patch thinnest first. */
function patchesOf(thin: readonly Sample[]): Sample[][] {
  const left = new Set(thin)
  const patches: Sample[][] = []
  for (const seed of thin) {
    if (!left.delete(seed)) continue
    const patch = [seed]
    for (let i = 0; i < patch.length; i++) {
      for (const o of left) {
        if (!near(patch[i] as Sample, o)) continue
        left.delete(o)
        patch.push(o)
      }
    }
    patches.push(patch.sort((a, b) => a.thickness - b.thickness))
  }
  return patches
}

/** Rays from the faces of a mesh into the material. */
class WallRays {
  readonly #m: Mesh
  readonly #relief: ReadonlySet<number>
  readonly #tree: RayTree
  /** Unit normal of each triangle and its area. */
  readonly #normals: Float64Array
  readonly #areas: Float64Array

  constructor(m: Mesh, relief: ReadonlySet<number>) {
    const n = m.triangles.length / 3
    this.#m = m
    this.#relief = relief
    this.#tree = new RayTree(m)
    this.#normals = new Float64Array(3 * n)
    this.#areas = new Float64Array(n)
    for (let i = 0; i < n; i++) this.#measure(i)
  }

  /** Samples of all walls thinner than `far`, mm, thinnest first. */
  within(far: number): Sample[] {
    const found: Sample[] = []
    const { made } = this.#m
    const [normals, tree] = [this.#normals, this.#tree]
    for (let i = 0; i < this.#areas.length; i++) {
      const area = this.#areas[i] as number
      if (area < leastTriangle || this.#relief.has(made[i] as number)) continue
      const count = Math.max(1, Math.round(area / sampleArea))
      const nx = normals[3 * i] as number
      const ny = normals[3 * i + 1] as number
      const nz = normals[3 * i + 2] as number
      for (let k = 0; k < count; k++) {
        const at = this.#spread(i, k)
        const t = tree.first(at[0], at[1], at[2], -nx, -ny, -nz, far)
        const other = tree.struck
        if (other < 0) continue
        const turn =
          nx * (normals[3 * other] as number) +
          ny * (normals[3 * other + 1] as number) +
          nz * (normals[3 * other + 2] as number)
        if (turn > -opposed || this.#relief.has(made[other] as number)) continue
        found.push({ thickness: t, at, made: [made[i] as number, made[other] as number], area: area / count })
      }
    }
    return found.sort((a, b) => a.thickness - b.thickness)
  }

  #corner(triangle: number, k: 0 | 1 | 2): number {
    return 3 * (this.#m.triangles[3 * triangle + k] as number)
  }

  #measure(i: number): void {
    const v = this.#m.vertices
    const [p, q, r] = [this.#corner(i, 0), this.#corner(i, 1), this.#corner(i, 2)]
    const from = (corner: number, k: 0 | 1 | 2) => (v[corner + k] as number) - (v[p + k] as number)
    const [ux, uy, uz] = [from(q, 0), from(q, 1), from(q, 2)]
    const [wx, wy, wz] = [from(r, 0), from(r, 1), from(r, 2)]
    const [nx, ny, nz] = [uy * wz - uz * wy, uz * wx - ux * wz, ux * wy - uy * wx]
    const length = Math.sqrt(nx * nx + ny * ny + nz * nz)
    this.#areas[i] = length / 2
    if (length > 0) this.#normals.set([nx / length, ny / length, nz / length], 3 * i)
  }

  /** The k-th of evenly spread points of a triangle (the additive R2 sequence, folded into it). */
  #spread(i: number, k: number): readonly [number, number, number] {
    let [s, t] = [(1 / 3 + k * 0.7548776662466927) % 1, (1 / 3 + k * 0.5698402909980532) % 1]
    if (s + t > 1) [s, t] = [1 - s, 1 - t]
    const v = this.#m.vertices
    const [p, q, r] = [this.#corner(i, 0), this.#corner(i, 1), this.#corner(i, 2)]
    const at = (n: 0 | 1 | 2): number => {
      const origin = v[p + n] as number
      return origin + s * ((v[q + n] as number) - origin) + t * ((v[r + n] as number) - origin)
    }
    return [at(0), at(1), at(2)]
  }
}
