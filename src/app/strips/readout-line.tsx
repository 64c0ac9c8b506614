import { useStore } from 'zustand'
import { readoutAt } from '../../papers/readout.ts'
import type { JobStrips } from '../../worker/job-bench.ts'
import { fixed } from '../sheet/numbers.ts'
import type { Cursor } from '../work/view-store.ts'
import { clock } from './cursor-layer.tsx'
import type { HoverStore } from './hover-store.ts'
import { seamShort } from './seam-names.ts'

export interface ReadoutLineProps {
  readonly strips: JobStrips | undefined
  readonly cursor: Cursor
  readonly hover: HoverStore
  /** While something is pushed in, what there is to say of it: the values are of what is in its place. */
  readonly pushed: string | undefined
}

/** The place under the pointer, or at the cursor, and what there is, in one line. */
export function ReadoutLine({ strips, cursor, hover, pushed }: ReadoutLineProps) {
  const at = useStore(hover, (h) => h.at) ?? cursor
  const here = strips && pushed === undefined ? readoutAt(strips.gap, strips.unrolled, at.z, at.theta) : undefined
  const { radii, cell, wide, seam } = here ?? {}
  // What was named before it is not named again.
  const named = cell?.between[0] === radii?.filledBy && cell?.between[1] === radii?.freeBy
  const r = radii && Number.isFinite(radii.free) ? radii.free : undefined
  return (
    <p className="readout number">
      <b>
        z {fixed(at.z, 1)} θ {fixed(clock(at.theta), 0)}°{r !== undefined && ` r ${fixed(r)}`}
      </b>
      {pushed !== undefined && <span>{pushed}</span>}
      {r !== undefined && (
        <span>
          free to {radii?.freeBy}
          {seam && <span className="readout-doubt">, {seamShort(seam)}</span>}
        </span>
      )}
      {radii && radii.filled > 0 && (
        <span>
          {radii.filledBy} to r {fixed(radii.filled)}
        </span>
      )}
      {cell && wide === undefined && (
        <span>
          gap here {fixed(cell.nominal)}, at worst {fixed(cell.worst)}
          {cell.worstTo !== undefined && ` to ${cell.worstTo}`}
          {`, needed ${fixed(cell.limit)}`}
          {!named && `: ${cell.between.join(' to ')}`}
        </span>
      )}
      {cell && wide !== undefined && <span>nothing nearer than {fixed(wide, 0)} mm</span>}
    </p>
  )
}
