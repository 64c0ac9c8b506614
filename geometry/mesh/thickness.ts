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
/** Faces are the two sides of a wall where they turn away from each other by at least 150°: a sharp edge is no wall. */
const opposed = -Math.cos((30 * Math.PI) / 180)
/** A thin patch smaller than this is a crumb at an edge, mm²; samples within so many mm are one patch. */
const leastPatch = 1
const patchReach = 3
/** Judged as drawn, with this much for facets, mm. */
export const facetError = 0.02
/** Walls thicker than this are not looked for, mm. */
const reach = 6

interface Sample extends WallPlace {
  readonly area: number
}

/**
 * Walls measured on the mesh itself: from every face a ray straight into the material, to where it comes out again.
 * `limit`: what counts as thin, mm. `relief`: items whose faces are shallow engraving; what stands between two strokes
 * is no wall. Deterministic.
 */
export function thickness(m: Mesh, limit: number, relief: ReadonlySet<number> = new Set()): ThicknessReport {
  const samples = sampleWalls(m, relief).sort((a, b) => a.thickness - b.thickness)
  const thin = samples.filter((s) => s.thickness < limit - facetError)
  const patches = patchesOf(thin).filter((p) => p.reduce((sum, s) => sum + s.area, 0) >= leastPatch)
  const thinnest = firstOfSize(samples)
  return {
    thinnest,
    thinArea: patches.flat().reduce((sum, s) => sum + s.area, 0),
    thin: patches.map((p) => p[0] as Sample).sort((a, b) => a.thickness - b.thickness),
  }
}

/** The thinnest sample that has enough as thin around it. */
function firstOfSize(samples: readonly Sample[]): WallPlace | undefined {
  for (const [i, s] of samples.entries()) {
    let area = 0
    for (let k = i; k < samples.length && area < leastPatch; k++) {
      const o = samples[k] as Sample
      if (o.thickness > s.thickness + 0.1) break
      if (near(s, o)) area += o.area
    }
    if (area >= leastPatch) return s
  }
  return samples[0]
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

function sampleWalls(m: Mesh, relief: ReadonlySet<number>): Sample[] {
  const tree = new RayTree(m)
  const faces = Array.from({ length: m.triangles.length / 3 }, (_, i) => faceOf(m, i))
  return faces.flatMap((f, i): Sample[] => {
    if (f.area < leastTriangle || relief.has(m.made[i] as number)) return []
    const count = Math.max(1, Math.round(f.area / sampleArea))
    return Array.from({ length: count }, (_, k) => spread(f, k)).flatMap(([x, y, z]) => {
      const hit = tree.first(x, y, z, -f.normal[0], -f.normal[1], -f.normal[2], reach)
      if (!hit) return []
      const other = (faces[hit.triangle] as Face).normal
      const turn = f.normal[0] * other[0] + f.normal[1] * other[1] + f.normal[2] * other[2]
      if (turn > opposed || relief.has(m.made[hit.triangle] as number)) return []
      const made = [m.made[i] as number, m.made[hit.triangle] as number] as const
      return [{ thickness: hit.t, at: [x, y, z] as const, made, area: f.area / count }]
    })
  })
}

type V3 = readonly [number, number, number]

interface Face {
  readonly corners: readonly [V3, V3, V3]
  readonly normal: V3
  readonly area: number
}

function faceOf(m: Mesh, i: number): Face {
  const corner = (k: number): V3 => {
    const v = 3 * (m.triangles[3 * i + k] as number)
    return [m.vertices[v] as number, m.vertices[v + 1] as number, m.vertices[v + 2] as number]
  }
  const corners = [corner(0), corner(1), corner(2)] as const
  const [p, q, r] = corners
  const [ux, uy, uz] = [q[0] - p[0], q[1] - p[1], q[2] - p[2]]
  const [wx, wy, wz] = [r[0] - p[0], r[1] - p[1], r[2] - p[2]]
  const [nx, ny, nz] = [uy * wz - uz * wy, uz * wx - ux * wz, ux * wy - uy * wx]
  const length = Math.sqrt(nx * nx + ny * ny + nz * nz)
  return { corners, normal: length > 0 ? [nx / length, ny / length, nz / length] : [0, 0, 0], area: length / 2 }
}

/** The k-th of evenly spread points of a triangle (the additive R2 sequence, folded into it). */
function spread({ corners: [p, q, r] }: Face, k: number): V3 {
  let [s, t] = [(1 / 3 + k * 0.7548776662466927) % 1, (1 / 3 + k * 0.5698402909980532) % 1]
  if (s + t > 1) [s, t] = [1 - s, 1 - t]
  const at = (i: 0 | 1 | 2): number => p[i] + s * (q[i] - p[i]) + t * (r[i] - p[i])
  return [at(0), at(1), at(2)]
}
