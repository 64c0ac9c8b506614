import { useThree } from '@react-three/fiber'
import { useEffect, useMemo } from 'react'
import { DoubleSide } from 'three'
import type { MetalLeaf } from '../../papers/metal-leaves.ts'
import type { Inks } from './inks.ts'
import type { Tells } from './stage.tsx'
import { leafGeometry } from './turned-geometry.ts'

/** A piece of a section's metal: round faces, and, where the wedge cuts it, its hatched profile. */
export function LeafPiece(props: {
  readonly leaf: MetalLeaf
  readonly from: number
  readonly to: number
  readonly inks: Inks
  readonly lit: boolean
}) {
  const { leaf, from, to, inks, lit } = props
  const invalidate = useThree((three) => three.invalidate)
  const shown = useMemo(() => leafGeometry(leaf, from, to), [leaf, from, to])
  useEffect(
    () => () => {
      for (const g of shown ? [shown.faces, shown.edges, shown.caps, shown.hatching] : []) g.dispose()
    },
    [shown],
  )
  useEffect(() => invalidate(), [shown, inks, lit, invalidate])
  if (!shown) return undefined
  const tells: Tells = () => ({ kind: 'thing', id: leaf.section, name: leaf.name })
  const behind = { side: DoubleSide, polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 }
  return (
    <>
      <mesh geometry={shown.faces} userData={{ tells }}>
        <meshLambertMaterial color={inks.metal} {...behind} />
      </mesh>
      <mesh geometry={shown.caps} userData={{ tells }}>
        <meshBasicMaterial color={inks.metal} {...behind} />
      </mesh>
      <lineSegments geometry={shown.hatching}>
        <lineBasicMaterial color={inks['metal-hatch']} />
      </lineSegments>
      <lineSegments geometry={shown.edges}>
        <lineBasicMaterial color={lit ? inks.blue : inks.ink} />
      </lineSegments>
    </>
  )
}
