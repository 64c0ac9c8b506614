import { BoxGeometry, BufferAttribute, BufferGeometry, CylinderGeometry, EdgesGeometry, Matrix4, Vector3 } from 'three'
import { toCreasedNormals } from 'three/addons/utils/BufferGeometryUtils.js'
import type { ContentSolid } from '../../papers/solid-contents.ts'
import type { SolidBody } from '../../worker/press.ts'

/** A body to look at: its faces, and the edges a draughtsman would draw. */
export interface Shown {
  readonly faces: BufferGeometry
  readonly edges: BufferGeometry
}

/** Faces that meet at less than this are one round face. */
const crease = Math.PI / 7
const creaseDegrees = 180 / 7

/** The printed body as the kernel made it. */
export function bodyGeometry(body: SolidBody): Shown {
  const raw = new BufferGeometry()
  raw.setAttribute('position', new BufferAttribute(body.vertices, 3))
  raw.setIndex(new BufferAttribute(body.triangles, 1))
  const faces = toCreasedNormals(raw, crease)
  const edges = new EdgesGeometry(raw, creaseDegrees)
  raw.dispose()
  return { faces, edges }
}

/** A part that lies in the sled. */
export function contentGeometry(c: ContentSolid): Shown {
  const height = c.z1 - c.z0
  const faces =
    c.shape === 'cylinder'
      ? new CylinderGeometry(c.r1, c.r0, height, 64).rotateX(Math.PI / 2)
      : new BoxGeometry(c.height, c.width, height).rotateZ((c.facing * Math.PI) / 180)
  faces.translate(c.x, c.y, (c.z0 + c.z1) / 2)
  return { faces, edges: new EdgesGeometry(faces, creaseDegrees) }
}

export function dispose(shown: Shown): void {
  shown.faces.dispose()
  shown.edges.dispose()
}

/** The hilt lies along the screen: z to the right, θ = 0 up, θ = 90° towards the eye. */
export const lying = new Matrix4().makeBasis(new Vector3(0, 1, 0), new Vector3(0, 0, 1), new Vector3(1, 0, 0))
