import { useThree } from '@react-three/fiber'
import { useEffect, useMemo } from 'react'
import { DoubleSide } from 'three'
import type { MetalLeaf } from '../../papers/metal-leaves.ts'
import type { WallHole } from '../../worker/wall-holes.ts'
import { HolePiece } from './hole-piece.tsx'
import { holeTube } from './hole-tube.ts'
import { holed } from './holed.ts'
import type { Inks } from './inks.ts'
import type { Tells } from './stage.tsx'
import { leafGeometry } from './turned-geometry.ts'

/** A piece of a section's metal: round faces, and, where the wedge cuts it, its hatched profile. */
export function LeafPiece(props: {
  readonly leaf: MetalLeaf
  /** Those through its section. */
  readonly holes: readonly WallHole[]
  readonly from: number
  readonly to: number
  readonly inks: Inks
  readonly lit: boolean
}) {
  const { leaf, holes, from, to, inks, lit } = props
  const invalidate = useThree((three) => three.invalidate)
  const shown = useMemo(() => leafGeometry(leaf, from, to), [leaf, from, to])
  useEffect(
    () => () => {
      for (const g of shown ? [shown.faces, shown.edges, shown.caps, shown.hatching] : []) g.dispose()
    },
    [shown],
  )
  useEffect(() => invalidate(), [shown, inks, lit, invalidate])
  const cut = useMemo(() => holed(holes), [holes])
  const tubes = useMemo(
    () => holes.flatMap((hole) => [holeTube(leaf, hole, from, to)].flatMap((tube) => (tube ? [{ hole, tube }] : []))),
    [holes, leaf, from, to],
  )
  if (!shown) return undefined
  const tells: Tells = () => ({ kind: 'thing', id: leaf.section, name: leaf.name })
  const { key, ...program } = cut
  const behind = { ...program, side: DoubleSide, polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 }
  return (
    <>
      <mesh geometry={shown.faces} userData={{ tells }}>
        <meshLambertMaterial key={key} color={inks.metal} {...behind} />
      </mesh>
      <mesh geometry={shown.caps} userData={{ tells }}>
        <meshBasicMaterial key={key} color={inks.metal} {...behind} />
      </mesh>
      <lineSegments geometry={shown.hatching}>
        <lineBasicMaterial key={key} color={inks['metal-hatch']} {...program} />
      </lineSegments>
      <lineSegments geometry={shown.edges}>
        <lineBasicMaterial key={key} color={lit ? inks.blue : inks.ink} {...program} />
      </lineSegments>
      {tubes.map(({ hole, tube }) => (
        <HolePiece key={hole.id} tube={tube} inks={inks} lit={lit} />
      ))}
    </>
  )
}
