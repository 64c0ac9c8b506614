import { type KeyboardEvent, type PointerEvent, useRef } from 'react'
import { Ruler } from '../drawing/ruler.tsx'
import { fixed } from '../sheet/numbers.ts'
import { panned, type Range, type StripLayout, zoomed } from './strip-frame.ts'

export interface RulerStripProps {
  readonly layout: StripLayout
  readonly whole: Range
  readonly onRange: (range: Range | undefined) => void
}

/** The z ruler that all strips share: drawn along it pans, two fingers or keys zoom. */
export function RulerStrip({ layout, whole, onRange }: RulerStripProps) {
  const { frame, range, left, width, ruler } = layout
  const fingers = useRef(new Map<number, number>())
  const shown = { z0: Math.max(range.z0, whole.z0), z1: Math.min(range.z1, whole.z1) }
  const zAt = (event: PointerEvent<Element>): number => {
    const box = event.currentTarget.getBoundingClientRect()
    return frame.z(event.clientX - box.left + left)
  }
  const move = (event: PointerEvent<Element>) => {
    const before = fingers.current.get(event.pointerId)
    if (before === undefined) return
    const now = event.clientX
    const others = [...fingers.current].filter(([id]) => id !== event.pointerId).map(([, x]) => x)
    fingers.current.set(event.pointerId, now)
    const [other] = others
    if (other === undefined) return onRange(panned(shown, whole, (before - now) / frame.scale))
    const factor = Math.abs(now - other) / Math.max(8, Math.abs(before - other))
    onRange(zoomed(shown, whole, factor, zAt(event)))
  }
  const lift = (event: PointerEvent<Element>) => fingers.current.delete(event.pointerId)
  return (
    <g
      className="ruler-strip"
      // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- a drawing has no input to offer.
      role="slider"
      tabIndex={0}
      aria-label="Ruler: the stretch that all strips show"
      aria-valuemin={Math.floor(whole.z0)}
      aria-valuemax={Math.ceil(whole.z1)}
      aria-valuenow={Math.round((shown.z0 + shown.z1) / 2)}
      aria-valuetext={`z ${fixed(shown.z0, 0)} to ${fixed(shown.z1, 0)} mm`}
      onKeyDown={(event) => keyed(event, shown, whole, onRange)}
    >
      <Ruler frame={frame} z0={Math.ceil(shown.z0)} z1={Math.floor(shown.z1)} y={ruler.height - 4} />
      <text className="axis-name" x={8} y={ruler.height - 8}>
        {/* The first number of a small sheet begins where the longer word ends. */}
        {left < 60 ? 'mm' : 'z mm'}
      </text>
      <rect
        className="ruler-catch"
        x={left}
        y={0}
        width={Math.max(1, width - left)}
        height={ruler.height}
        onPointerDown={(event) => {
          event.stopPropagation()
          event.currentTarget.setPointerCapture(event.pointerId)
          fingers.current.set(event.pointerId, event.clientX)
        }}
        onPointerMove={move}
        onPointerUp={lift}
        onPointerCancel={lift}
        onDoubleClick={() => onRange(undefined)}
      />
    </g>
  )
}

function keyed(event: KeyboardEvent, shown: Range, whole: Range, onRange: (r: Range | undefined) => void): void {
  const far = (shown.z1 - shown.z0) / 8
  const to: Readonly<Record<string, () => Range | undefined>> = {
    '+': () => zoomed(shown, whole, 1.5),
    '=': () => zoomed(shown, whole, 1.5),
    '-': () => zoomed(shown, whole, 1 / 1.5),
    '0': () => undefined,
    ArrowLeft: () => panned(shown, whole, -far),
    ArrowRight: () => panned(shown, whole, far),
  }
  const range = to[event.key]
  if (!range || event.ctrlKey || event.metaKey) return
  event.preventDefault()
  onRange(range())
}
