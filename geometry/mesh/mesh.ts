/** A triangle mesh as it leaves the kernel: typed arrays only, mm, float32 as in the file. */
export interface Mesh {
  /** x, y, z of each vertex. */
  readonly vertices: Float32Array
  /** Three vertex indices a triangle, counter-clockwise from outside. */
  readonly triangles: Uint32Array
  /** For each triangle the index of the plan item whose face it is a piece of. */
  readonly made: Uint16Array
}

export interface Bounds {
  readonly min: readonly [number, number, number]
  readonly max: readonly [number, number, number]
}

export const triangleCount = (m: Mesh): number => m.triangles.length / 3

/** Signed volume, mm³: positive where the triangles face outwards. */
export function volume(m: Mesh): number {
  let six = 0
  for (let i = 0; i < m.triangles.length; i += 3) six += sixfoldCone(m, i)
  return six / 6
}

/** Six times the volume of the cone from the origin over the triangle whose corners begin at i, mm³. */
export function sixfoldCone(m: Mesh, i: number): number {
  const v = m.vertices
  const [a, b, c] = [
    3 * (m.triangles[i] as number),
    3 * (m.triangles[i + 1] as number),
    3 * (m.triangles[i + 2] as number),
  ]
  const [ax, ay, az] = [v[a] as number, v[a + 1] as number, v[a + 2] as number]
  const [bx, by, bz] = [v[b] as number, v[b + 1] as number, v[b + 2] as number]
  const [cx, cy, cz] = [v[c] as number, v[c + 1] as number, v[c + 2] as number]
  return ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)
}

export function boundsOf(m: Mesh): Bounds {
  const min: [number, number, number] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]
  const max: [number, number, number] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (let i = 0; i < m.vertices.length; i++) {
    const k = (i % 3) as 0 | 1 | 2
    const value = m.vertices[i] as number
    if (value < min[k]) min[k] = value
    if (value > max[k]) max[k] = value
  }
  return { min, max }
}
