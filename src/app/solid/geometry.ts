import { BoxGeometry, BufferAttribute, BufferGeometry, CylinderGeometry, EdgesGeometry, Matrix4, Vector3 } from 'three'
import { toCreasedNormals } from 'three/addons/utils/BufferGeometryUtils.js'
import type { SimpleSolid } from '../../papers/simple-solid.ts'
import { finer } from './turned.ts'
import { turnedGeometry } from './turned-geometry.ts'

/** A body to look at: its faces, and the edges a draughtsman would draw. */
export interface Shown {
  readonly faces: BufferGeometry
  readonly edges: BufferGeometry
}

/** What the kernel made, to be drawn. */
export interface Triangles {
  readonly vertices: Float32Array
  readonly triangles: Uint32Array
}

/** Faces that meet at less than this are one round face. */
const crease = Math.PI / 7
const creaseDegrees = 180 / 7

/** The printed body as the kernel made it. Its triangles keep their order. */
export function bodyGeometry(body: Triangles): Shown {
  const raw = new BufferGeometry()
  raw.setAttribute('position', new BufferAttribute(body.vertices, 3))
  raw.setIndex(new BufferAttribute(body.triangles, 1))
  const faces = toCreasedNormals(raw, crease)
  const edges = new EdgesGeometry(raw, creaseDegrees)
  raw.dispose()
  return { faces, edges }
}

/** A part that lies in the hilt, or something that sticks into it. */
export function simpleGeometry(s: SimpleSolid): Shown {
  if (s.shape === 'sector') {
    const { z0, z1, rIn, rOut, theta, half } = s
    const ring = [
      [z0, rIn],
      [z1, rIn],
      [z1, rOut],
      [z0, rOut],
    ] as const
    const turned = { angles: [theta - half, theta + half], rings: [ring, ring] }
    return turnedGeometry(finer(turned), half < 180)
  }
  const faces = plain(s)
  return { faces, edges: new EdgesGeometry(faces, creaseDegrees) }
}

function plain(s: Exclude<SimpleSolid, { shape: 'sector' }>): BufferGeometry {
  if (s.shape === 'pin')
    return new CylinderGeometry(s.radius, s.radius, s.rOut - s.rIn, 32)
      .rotateZ(-Math.PI / 2)
      .translate((s.rIn + s.rOut) / 2, 0, 0)
      .rotateZ((s.theta * Math.PI) / 180)
      .translate(0, 0, s.z)
  const height = s.z1 - s.z0
  const faces =
    s.shape === 'cylinder'
      ? new CylinderGeometry(s.r1, s.r0, height, 64).rotateX(Math.PI / 2)
      : new BoxGeometry(s.height, s.width, height).rotateZ((s.facing * Math.PI) / 180)
  return faces.translate(s.x, s.y, (s.z0 + s.z1) / 2)
}

export function dispose(shown: Shown): void {
  shown.faces.dispose()
  shown.edges.dispose()
}

/** The hilt lies along the screen: z to the right, θ = 0 up, θ = 90° towards the eye. */
export const lying = new Matrix4().makeBasis(new Vector3(0, 1, 0), new Vector3(0, 0, 1), new Vector3(1, 0, 0))
