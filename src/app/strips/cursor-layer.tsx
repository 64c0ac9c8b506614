import type { KeyboardEvent } from 'react'
import { useStore } from 'zustand'
import { round } from '../drawing/frame.ts'
import { fixed } from '../sheet/numbers.ts'
import type { Cursor } from '../work/view-store.ts'
import type { HoverStore } from './hover-store.ts'
import type { Range, StripLayout } from './strip-frame.ts'

export interface CursorLayerProps {
  readonly layout: StripLayout
  readonly whole: Range
  readonly cursor: Cursor
  readonly hover: HoverStore
  readonly onCursor: (cursor: Cursor) => void
}

/** The one cursor in all strips, and the thin line under the pointer. */
export function CursorLayer({ layout, whole, cursor, hover, onCursor }: CursorLayerProps) {
  const { frame, ruler, height, unrolled } = layout
  const x = round(frame.x(cursor.z))
  const dot = round(unrolled.y + (clock(cursor.theta) / 360) * unrolled.height)
  return (
    <g className="strip-cursor">
      <HoverLine layout={layout} hover={hover} />
      <g
        className="cursor-line"
        // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- a drawing has no input to offer.
        role="slider"
        tabIndex={0}
        aria-label="Cursor along the hilt: plane of the cross-section"
        aria-valuemin={Math.floor(whole.z0)}
        aria-valuemax={Math.ceil(whole.z1)}
        aria-valuenow={Number(cursor.z.toFixed(1))}
        aria-valuetext={`z ${fixed(cursor.z, 1)} mm, θ ${fixed(clock(cursor.theta), 0)}°`}
        onKeyDown={(event) => keyed(event, cursor, whole, onCursor)}
      >
        <line x1={x} x2={x} y1={ruler.height - 4} y2={height - 4} />
        <path d={`M${x - 6} ${ruler.height - 15}h12l-6 11z`} />
        <circle className="cursor-halo" cx={x} cy={dot} r="4.5" />
        <circle cx={x} cy={dot} r="4.5" />
      </g>
    </g>
  )
}

function HoverLine({ layout, hover }: { readonly layout: StripLayout; readonly hover: HoverStore }) {
  const at = useStore(hover, (h) => h.at)
  if (!at) return undefined
  const x = round(layout.frame.x(at.z))
  return <line className="hover-line" x1={x} x2={x} y1={layout.ruler.height - 4} y2={layout.height - 4} />
}

export const clock = (theta: number): number => ((theta % 360) + 360) % 360

function keyed(event: KeyboardEvent, { z, theta }: Cursor, whole: Range, onCursor: (c: Cursor) => void): void {
  const [far, turn] = event.shiftKey ? [5, 15] : event.altKey ? [0.1, 1] : [0.5, 5]
  const to: Readonly<Record<string, Cursor>> = {
    ArrowLeft: { z: z - far, theta },
    ArrowRight: { z: z + far, theta },
    ArrowUp: { z, theta: clock(theta - turn) },
    ArrowDown: { z, theta: clock(theta + turn) },
    Home: { z: whole.z0, theta },
    End: { z: whole.z1, theta },
  }
  const next = to[event.key]
  if (!next || event.ctrlKey || event.metaKey) return
  event.preventDefault()
  onCursor({ z: Number(Math.min(whole.z1, Math.max(whole.z0, next.z)).toFixed(2)), theta: next.theta })
}
