import { withoutFlat } from './flat-triangles.ts'
import type { Mesh } from './mesh.ts'

/**
 * As fine as float32 is from 8 to 16 mm. Near 0 it is finer than a kernel's own noise, so that one corner would come
 * out as several a billionth apart.
 */
const onGrid = (x: number): number => (Math.abs(x) < 8 ? Math.round(x * 2 ** 20) / 2 ** 20 : x)

/**
 * The mesh with vertices at the same float32 position made one; triangles that thereby lost an edge are dropped, and
 * those that lost their area are joined to their neighbours. This is what a reader of the file will see.
 */
export function weld(m: Mesh): Mesh {
  const seen = new Map<string, number>()
  const at = new Uint32Array(m.vertices.length / 3)
  const kept: number[] = []
  for (let i = 0; i < at.length; i++) {
    const [x, y, z] = [0, 1, 2].map((k) => onGrid(m.vertices[3 * i + k] as number)) as [number, number, number]
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
  const vertices = Float32Array.from(kept)
  const faces = withoutFlat(vertices, { triangles, made })
  return { vertices, triangles: Uint32Array.from(faces.triangles), made: Uint16Array.from(faces.made) }
}
