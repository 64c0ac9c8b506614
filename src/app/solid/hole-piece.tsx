import { useThree } from '@react-three/fiber'
import { useEffect, useMemo } from 'react'
import { BufferAttribute, BufferGeometry, DoubleSide } from 'three'
import { dispose, type Shown } from './geometry.ts'
import type { HoleTube } from './hole-tube.ts'
import type { Inks } from './inks.ts'

/** The wall of a round hole, and its two rims. */
export function HolePiece({
  tube,
  inks,
  lit,
}: {
  readonly tube: HoleTube
  readonly inks: Inks
  readonly lit: boolean
}) {
  const invalidate = useThree((three) => three.invalidate)
  const shown = useMemo(() => geometryOf(tube), [tube])
  useEffect(() => () => dispose(shown), [shown])
  useEffect(() => invalidate(), [shown, inks, lit, invalidate])
  return (
    <>
      <mesh geometry={shown.faces}>
        <meshLambertMaterial
          color={inks.metal}
          side={DoubleSide}
          polygonOffset
          polygonOffsetFactor={1}
          polygonOffsetUnits={1}
        />
      </mesh>
      <lineSegments geometry={shown.edges}>
        <lineBasicMaterial color={lit ? inks.blue : inks.ink} />
      </lineSegments>
    </>
  )
}

function geometryOf({ inner, outer, normals, there }: HoleTube): Shown {
  const positions: number[] = []
  const facing: number[] = []
  const lines: number[] = []
  for (const [i, drawn] of there.entries()) {
    const k = (i + 1) % there.length
    const [a, b, c, d] = [inner[i], inner[k], outer[k], outer[i]]
    const [n, m] = [normals[i], normals[k]]
    if (!drawn || !a || !b || !c || !d || !n || !m) continue
    positions.push(...a, ...b, ...c, ...a, ...c, ...d)
    facing.push(...n, ...m, ...m, ...n, ...m, ...n)
    lines.push(...a, ...b, ...d, ...c)
  }
  const faces = new BufferGeometry()
  faces.setAttribute('position', new BufferAttribute(Float32Array.from(positions), 3))
  faces.setAttribute('normal', new BufferAttribute(Float32Array.from(facing), 3))
  const edges = new BufferGeometry()
  edges.setAttribute('position', new BufferAttribute(Float32Array.from(lines), 3))
  return { faces, edges }
}
