import type { Mesh } from './mesh.ts'

/**
 * The mesh with vertices at the same float32 position made one, and triangles that thereby lost their area dropped
 * together with what they left open healed by the weld itself. This is what a reader of the file will see.
 */
export function weld(m: Mesh): Mesh {
  const seen = new Map<string, number>()
  const at = new Uint32Array(m.vertices.length / 3)
  const kept: number[] = []
  for (let i = 0; i < at.length; i++) {
    const [x, y, z] = [m.vertices[3 * i] as number, m.vertices[3 * i + 1] as number, m.vertices[3 * i + 2] as number]
    // −0 and 0 are one place.
    const key = `${x + 0},${y + 0},${z + 0}`
    const known = seen.get(key)
    if (known !== undefined) at[i] = known
    else {
      at[i] = kept.length / 3
      seen.set(key, kept.length / 3)
      kept.push(x + 0, y + 0, z + 0)
    }
  }
  const triangles: number[] = []
  const made: number[] = []
  for (let t = 0; t < m.triangles.length; t += 3) {
    const [a, b, c] = [
      at[m.triangles[t] as number] as number,
      at[m.triangles[t + 1] as number] as number,
      at[m.triangles[t + 2] as number] as number,
    ]
    if (a === b || b === c || c === a) continue
    triangles.push(a, b, c)
    made.push(m.made[t / 3] as number)
  }
  return { vertices: Float32Array.from(kept), triangles: Uint32Array.from(triangles), made: Uint16Array.from(made) }
}
