import type { Where } from '../../checks/finding.ts'
import type { InkName } from './inks.ts'

/** A place that is pointed out: where a finding lies, or where a unit touches. */
export interface Mark {
  readonly key: string
  /** What it lies on, and moves with: `sections/body`. */
  readonly on: string
  readonly at: Where
  readonly tone: InkName
}

/** A ball at the place, seen through everything. */
export function MarkPiece({ mark, colour }: { readonly mark: Mark; readonly colour: string }) {
  const { z, theta, r } = mark.at
  const w = (theta * Math.PI) / 180
  return (
    <mesh position={[r * Math.cos(w), r * Math.sin(w), z]} renderOrder={10}>
      <sphereGeometry args={[1.5, 20, 14]} />
      <meshBasicMaterial color={colour} depthTest={false} transparent />
    </mesh>
  )
}
