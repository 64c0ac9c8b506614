import { useThree } from '@react-three/fiber'
import { useEffect, useMemo } from 'react'
import { DoubleSide, Plane, Vector3 } from 'three'
import type { ContentSolid } from '../../papers/solid-contents.ts'
import type { SolidView } from '../../worker/press.ts'
import { bodyGeometry, dispose, lying, type Shown, simpleGeometry } from './geometry.ts'
import { type InkName, useInks } from './inks.ts'

/** The sled with its contents, lying along the screen, its middle in the middle. */
export function Scene(props: {
  readonly solid: SolidView
  readonly contents: boolean
  readonly open: boolean
  readonly theme: string
}) {
  const { solid, contents, open, theme } = props
  const inks = useInks(theme)
  const middle = useMemo(() => middleOf(solid), [solid])
  const planes = useMemo(() => (open ? [new Plane(new Vector3(0, 0, -1), 0)] : []), [open])
  return (
    <>
      <ambientLight intensity={2.1} />
      <directionalLight position={[-60, 120, 160]} intensity={1.3} />
      <group position={[-middle, 0, 0]}>
        <group matrix={lying} matrixAutoUpdate={false}>
          {solid.bodies.map((b) => (
            <Piece key={b.id} make={bodyGeometry} of={b} colour={inks.sled} ink={inks.ink} planes={planes} />
          ))}
          {contents &&
            solid.contents.map((c) => (
              <Piece
                key={`${c.id} ${c.name}`}
                make={simpleGeometry}
                of={c}
                colour={inks[washOf(c)]}
                ink={inks.ink}
                planes={[]}
              />
            ))}
        </group>
      </group>
    </>
  )
}

const washOf = ({ kind }: ContentSolid): InkName =>
  kind === 'cell' || kind === 'board' || kind === 'speaker' || kind === 'contact' ? kind : 'other'

function Piece<T>(props: {
  readonly make: (of: T) => Shown
  readonly of: T
  readonly colour: string | undefined
  readonly ink: string | undefined
  readonly planes: Plane[]
}) {
  const { make, of, colour = '#888', ink = '#222', planes } = props
  const { invalidate } = useThree()
  const shown = useMemo(() => make(of), [make, of])
  // Given back when it is replaced, not only when the page goes: graphics memory is not garbage collected.
  useEffect(() => () => dispose(shown), [shown])
  useEffect(() => invalidate(), [shown, colour, ink, planes, invalidate])
  return (
    <>
      <mesh geometry={shown.faces}>
        <meshLambertMaterial
          color={colour}
          side={DoubleSide}
          clippingPlanes={planes}
          polygonOffset
          polygonOffsetFactor={1}
          polygonOffsetUnits={1}
        />
      </mesh>
      <lineSegments geometry={shown.edges}>
        <lineBasicMaterial color={ink} clippingPlanes={planes} />
      </lineSegments>
    </>
  )
}

/** Half way along the sled, mm. */
function middleOf(solid: SolidView): number {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const b of solid.bodies)
    for (let i = 2; i < b.vertices.length; i += 3) {
      const z = b.vertices[i] as number
      low = Math.min(low, z)
      high = Math.max(high, z)
    }
  return high > low ? (low + high) / 2 : 0
}
