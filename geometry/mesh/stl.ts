import { type Mesh, triangleCount } from './mesh.ts'

const headerBytes = 80
const triangleBytes = 50

/**
 * Binary STL, millimetres: 80-byte header that does not begin with "solid", triangle count, then for each triangle
 * its normal, three corners and two empty bytes; all little-endian. Same mesh and title, same bytes.
 * Source: STL as described by P. Bourke (read) and REFERENCE.md section 11.
 */
export function stl(m: Mesh, title: string): Uint8Array<ArrayBuffer> {
  const n = triangleCount(m)
  const out = new Uint8Array(headerBytes + 4 + n * triangleBytes)
  out.set(header(title))
  const view = new DataView(out.buffer)
  view.setUint32(headerBytes, n, true)
  let at = headerBytes + 4
  const v = m.vertices
  for (let t = 0; t < m.triangles.length; t += 3) {
    const corners = [0, 1, 2].map((k) => {
      const i = 3 * (m.triangles[t + k] as number)
      return [v[i] as number, v[i + 1] as number, v[i + 2] as number] as const
    }) as [readonly [number, number, number], readonly [number, number, number], readonly [number, number, number]]
    for (const value of [...normal(...corners), ...corners.flat()]) {
      view.setFloat32(at, value, true)
      at += 4
    }
    at += 2
  }
  return out
}

function header(title: string): Uint8Array {
  const text = `Sledwright, mm: ${title}`.replace(/[^\x20-\x7e]/g, '?').slice(0, headerBytes)
  return new TextEncoder().encode(text.padEnd(headerBytes))
}

type Corner = readonly [number, number, number]

function normal(p: Corner, q: Corner, r: Corner): Corner {
  const [ux, uy, uz] = [q[0] - p[0], q[1] - p[1], q[2] - p[2]]
  const [wx, wy, wz] = [r[0] - p[0], r[1] - p[1], r[2] - p[2]]
  const [x, y, z] = [uy * wz - uz * wy, uz * wx - ux * wz, ux * wy - uy * wx]
  const l = Math.hypot(x, y, z)
  return l > 0 ? [x / l, y / l, z / l] : [0, 0, 0]
}
