import type { Bounds, Mesh } from './mesh.ts'
import { weld } from './weld.ts'

/** A direction or place, mm. */
export type V3 = readonly [number, number, number]

type Row = readonly [number, number, number, number]

/** A turn and a shift: x' = first row · (x, y, z, 1), and so on. Nothing is ever mirrored or scaled. */
export type Motion = readonly [Row, Row, Row]

export const standStill: Motion = [
  [1, 0, 0, 0],
  [0, 1, 0, 0],
  [0, 0, 1, 0],
]

/** Half a turn about x: what pointed along z points the other way. */
export const turnedOver: Motion = [
  [1, 0, 0, 0],
  [0, -1, 0, 0],
  [0, 0, -1, 0],
]

/** Laid down: z becomes x, and what faced the clock angle θ (degrees) faces down. */
export function laidDown(theta: number): Motion {
  const [c, s] = [exactly(Math.cos((theta * Math.PI) / 180)), exactly(Math.sin((theta * Math.PI) / 180))]
  return [
    [0, 0, 1, 0],
    [-s, c, 0, 0],
    [-c, -s, 0, 0],
  ]
}

/** Quarter turns give whole numbers: their faces stay flat to the last bit. */
const exactly = (n: number): number => (Math.abs(n - Math.round(n)) < 1e-12 ? Math.round(n) + 0 : n)

export function shifted([x, y, z]: Motion, by: V3): Motion {
  return [
    [x[0], x[1], x[2], x[3] + by[0]],
    [y[0], y[1], y[2], y[3] + by[1]],
    [z[0], z[1], z[2], z[3] + by[2]],
  ]
}

/** The mesh where a motion takes it: moved exactly, rounded once to float32, and welded anew. */
export function moved(m: Mesh, motion: Motion): Mesh {
  const vertices = new Float32Array(m.vertices.length)
  for (let i = 0; i < vertices.length; i += 3) vertices.set(placeOf(m, i, motion), i)
  return weld({ ...m, vertices })
}

/** Bounds of a mesh where a motion takes it, before any rounding, mm. */
export function boundsAfter(m: Mesh, motion: Motion): Bounds {
  const min: [number, number, number] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]
  const max: [number, number, number] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (let i = 0; i < m.vertices.length; i += 3) {
    const at = placeOf(m, i, motion)
    for (const k of [0, 1, 2] as const) {
      if (at[k] < min[k]) min[k] = at[k]
      if (at[k] > max[k]) max[k] = at[k]
    }
  }
  return { min, max }
}

function placeOf(m: Mesh, i: number, [a, b, c]: Motion): V3 {
  const [x, y, z] = [m.vertices[i] as number, m.vertices[i + 1] as number, m.vertices[i + 2] as number]
  return [
    a[0] * x + a[1] * y + a[2] * z + a[3],
    b[0] * x + b[1] * y + b[2] * z + b[3],
    c[0] * x + c[1] * y + c[2] * z + c[3],
  ]
}
