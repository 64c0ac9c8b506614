import { useThree } from '@react-three/fiber'
import { useEffect, useMemo } from 'react'
import { DoubleSide } from 'three'
import type { Thing } from '../../papers/hilt-solid.ts'
import { dispose, simpleGeometry } from './geometry.ts'
import type { Inks } from './inks.ts'
import type { Tells } from './stage.tsx'

/** A part, a rod, a screw tip, with all its pieces. */
export function ThingPiece({
  thing,
  inks,
  lit,
}: {
  readonly thing: Thing
  readonly inks: Inks
  readonly lit: boolean
}) {
  const invalidate = useThree((three) => three.invalidate)
  const shown = useMemo(() => thing.solids.map(simpleGeometry), [thing])
  useEffect(
    () => () => {
      for (const s of shown) dispose(s)
    },
    [shown],
  )
  useEffect(() => invalidate(), [shown, inks, lit, invalidate])
  const tells: Tells = () => ({ kind: 'thing', id: thing.id, name: thing.name })
  return shown.map((s) => (
    <group key={s.faces.uuid}>
      <mesh geometry={s.faces} userData={{ tells }}>
        <meshLambertMaterial
          color={washOf(thing, inks)}
          side={DoubleSide}
          polygonOffset
          polygonOffsetFactor={1}
          polygonOffsetUnits={1}
        />
      </mesh>
      <lineSegments geometry={s.edges}>
        <lineBasicMaterial color={lit ? inks.blue : inks.ink} />
      </lineSegments>
    </group>
  ))
}

function washOf({ kind }: Thing, inks: Inks): string {
  if (kind === 'cell' || kind === 'board' || kind === 'speaker' || kind === 'contact') return inks[kind]
  return kind === 'intrusion' || kind === 'rod' ? inks['metal-hatch'] : inks.other
}
