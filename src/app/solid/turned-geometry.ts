import { BufferAttribute, BufferGeometry, ShapeUtils, Vector2 } from 'three'
import type { Shown } from './geometry.ts'
import { type Turned, turnedEdges, turnedFaces } from './turned.ts'

/** A turned piece with its round faces and edges; `cut` says that it does not close on itself. */
export function turnedGeometry(turned: Turned, cut: boolean): Shown {
  const round = turnedFaces(turned)
  const caps = cut ? capsOf(turned) : { positions: [], normals: [] }
  const faces = new BufferGeometry()
  faces.setAttribute('position', joined(round.positions, caps.positions))
  faces.setAttribute('normal', joined(round.normals, caps.normals))
  const edges = new BufferGeometry()
  edges.setAttribute('position', new BufferAttribute(turnedEdges(turned, cut), 3))
  return { faces, edges }
}

/** The two faces where a turned piece is cut. */
export function capGeometry(turned: Turned): BufferGeometry {
  const caps = capsOf(turned)
  const faces = new BufferGeometry()
  faces.setAttribute('position', joined(caps.positions, []))
  faces.setAttribute('normal', joined(caps.normals, []))
  return faces
}

function capsOf({ angles, rings }: Turned): { positions: number[]; normals: number[] } {
  const positions: number[] = []
  const normals: number[] = []
  for (const [station, out] of [
    [0, -1],
    [angles.length - 1, 1],
  ] as const) {
    const ring = rings[station] ?? []
    const w = ((angles[station] as number) * Math.PI) / 180
    const [c, s] = [Math.cos(w), Math.sin(w)]
    const corners = ShapeUtils.triangulateShape(
      ring.map(([z, r]) => new Vector2(z, r)),
      [],
    )
    for (const corner of corners.flat()) {
      const [z, r] = ring[corner] ?? [0, 0]
      positions.push(r * c, r * s, z)
      normals.push(-out * s, out * c, 0)
    }
  }
  return { positions, normals }
}

function joined(a: Float32Array | readonly number[], b: readonly number[]): BufferAttribute {
  const all = new Float32Array(a.length + b.length)
  all.set(a)
  all.set(b, a.length)
  return new BufferAttribute(all, 3)
}
