import { type PointerEvent, useState } from 'react'
import type { LengthwiseView } from '../../papers/lengthwise.ts'
import type { Frame } from './frame.ts'

/** The plane as a blue line; drawn along with the pointer from anywhere in the picture. */
export function SectionPlane({
  frame,
  z,
  view,
  onZ,
}: {
  readonly frame: Frame
  readonly z: number
  readonly view: LengthwiseView
  readonly onZ: (z: number) => void
}) {
  const [held, setHeld] = useState(false)
  const follow = (event: PointerEvent<SVGRectElement>) => {
    const left = event.currentTarget.ownerSVGElement?.getBoundingClientRect().left ?? 0
    const there = frame.z(event.clientX - left)
    onZ(Math.round(2 * Math.min(view.z1, Math.max(view.z0, there))) / 2)
  }
  const x = frame.x(z)
  return (
    <g className="plane">
      <line x1={x} x2={x} y1={20} y2={frame.y(-view.reach) + 5} />
      <path className="plane-flag" d={`M${x - 6} ${14}h12l-6 12z`} />
      <rect
        className="plane-catch"
        x={frame.x(view.z0)}
        y={0}
        width={frame.x(view.z1) - frame.x(view.z0)}
        height={frame.height - 30}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId)
          setHeld(true)
          follow(event)
        }}
        onPointerMove={(event) => held && follow(event)}
        onPointerUp={() => setHeld(false)}
        onPointerCancel={() => setHeld(false)}
      />
    </g>
  )
}
