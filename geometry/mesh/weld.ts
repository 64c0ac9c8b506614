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
  const { at, vertices } = places(m.vertices)
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
  const faces = withoutFlat(vertices, { triangles, made })
  return { vertices, triangles: Uint32Array.from(faces.triangles), made: Uint16Array.from(faces.made) }
}

/** The corners that are at different places, and for each vertex the number of its place. */
function places(all: Float32Array): { readonly at: Uint32Array; readonly vertices: Float32Array } {
  const n = all.length / 3
  // −0 and 0 are one place: adding 0 makes them so.
  const kept = Float32Array.from(all, (x) => onGrid(x) + 0)
  const bits = new Uint32Array(kept.buffer)
  const at = new Uint32Array(n)
  // Open addressing, never more than half full; a slot holds 1 + the number of a place.
  const size = 2 ** Math.ceil(Math.log2(2 * n + 2))
  const slots = new Uint32Array(size)
  let count = 0
  for (let i = 0; i < n; i++) {
    const [x, y, z] = [kept[3 * i] as number, kept[3 * i + 1] as number, kept[3 * i + 2] as number]
    const mixed =
      Math.imul(bits[3 * i] as number, 0x9e3779b1) ^
      Math.imul(bits[3 * i + 1] as number, 0x85ebca77) ^
      Math.imul(bits[3 * i + 2] as number, 0xc2b2ae3d)
    let slot = (mixed ^ (mixed >>> 15)) & (size - 1)
    for (;;) {
      const known = (slots[slot] as number) - 1
      if (known < 0) {
        kept.set([x, y, z], 3 * count)
        at[i] = count++
        slots[slot] = count
        break
      }
      if (kept[3 * known] === x && kept[3 * known + 1] === y && kept[3 * known + 2] === z) {
        at[i] = known
        break
      }
      slot = (slot + 1) & (size - 1)
    }
  }
  return { at, vertices: kept.slice(0, 3 * count) }
}
