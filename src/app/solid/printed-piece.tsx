import { useThree } from '@react-three/fiber'
import { useEffect, useMemo } from 'react'
import { BufferAttribute, BufferGeometry, DoubleSide, type Plane } from 'three'
import type { FaceMaker, PrintedSolid } from '../../worker/job-solids.ts'
import { CutDepth } from './cut-face.tsx'
import { bodyGeometry, dispose } from './geometry.ts'
import type { Inks } from './inks.ts'
import type { Picked } from './picked.ts'
import type { Tells } from './stage.tsx'

/** A printed body as the kernel made it. Each face knows what made it; those that are lit lie in blue over the rest. */
export function PrintedPiece(props: {
  readonly sled: string
  readonly body: PrintedSolid
  readonly inks: Inks
  readonly planes: Plane[]
  readonly isLit: (maker: FaceMaker) => boolean
  /** When its cut is counted, among all that is drawn. */
  readonly order: number
}) {
  const { sled, body, inks, planes, isLit, order } = props
  const invalidate = useThree((three) => three.invalidate)
  const shown = useMemo(() => bodyGeometry(body), [body])
  // Given back when it is replaced, not only when the page goes: graphics memory is not garbage collected.
  useEffect(() => () => dispose(shown), [shown])
  const litMakers = body.makers.map((m, i) => (isLit(m) ? i : -1)).filter((i) => i >= 0)
  const key = litMakers.join(' ')
  const lit = useMemo(() => (key === '' ? undefined : facesOf(shown.faces, body.made, key)), [shown, body, key])
  useEffect(() => () => lit?.dispose(), [lit])
  useEffect(() => invalidate(), [shown, inks, planes, lit, invalidate])
  const tells: Tells = (triangle) => {
    const maker = body.makers[body.made[triangle] ?? -1]
    return maker && { kind: 'face', sled, nest: maker.nest, by: maker.by, maker }
  }
  return (
    <>
      <mesh
        geometry={shown.faces}
        userData={{ tells, cut: { kind: 'thing', id: sled, name: body.name } satisfies Picked }}
      >
        <meshLambertMaterial
          color={inks.sled}
          side={DoubleSide}
          clippingPlanes={planes}
          polygonOffset
          polygonOffsetFactor={1}
          polygonOffsetUnits={1}
        />
      </mesh>
      {planes.length > 0 && <CutDepth faces={shown.faces} planes={planes} order={order} />}
      {lit && (
        <mesh geometry={lit}>
          <meshLambertMaterial
            color={inks.blue}
            transparent
            opacity={0.6}
            side={DoubleSide}
            clippingPlanes={planes}
            depthWrite={false}
          />
        </mesh>
      )}
      <lineSegments geometry={shown.edges}>
        <lineBasicMaterial color={inks.ink} clippingPlanes={planes} />
      </lineSegments>
    </>
  )
}

/** The triangles that some of the makers made, as a geometry of their own. */
function facesOf(faces: BufferGeometry, made: Uint16Array, key: string): BufferGeometry {
  const makers = new Set(key.split(' ').map(Number))
  const picked = Array.from(made.keys()).filter((t) => makers.has(made[t] as number))
  const out = new BufferGeometry()
  for (const name of ['position', 'normal']) {
    const all = faces.getAttribute(name).array as Float32Array
    const some = new Float32Array(picked.length * 9)
    for (const [i, t] of picked.entries()) some.set(all.subarray(9 * t, 9 * t + 9), 9 * i)
    out.setAttribute(name, new BufferAttribute(some, 3))
  }
  return out
}
