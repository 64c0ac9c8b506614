import { type MouseEvent, type PointerEvent, useState } from 'react'
import type { LengthwiseView } from '../../papers/lengthwise.ts'
import type { Frame } from './frame.ts'

export interface SectionPlaneProps {
  readonly frame: Frame
  readonly z: number
  readonly view: LengthwiseView
  readonly onZ: (z: number) => void
  /** The strip is wider than the screen: then a finger moves the strip, and a tap the plane. */
  readonly scrolls: boolean
}

/** The plane as a blue line; drawn along with the pointer from anywhere in the picture. */
export function SectionPlane(props: SectionPlaneProps) {
  const { frame, z, view, onZ, scrolls } = props
  const [held, setHeld] = useState(false)
  const follow = (event: MouseEvent<SVGRectElement>) => {
    const left = event.currentTarget.ownerSVGElement?.getBoundingClientRect().left ?? 0
    const there = frame.z(event.clientX - left)
    onZ(Math.round(2 * Math.min(view.z1, Math.max(view.z0, there))) / 2)
  }
  const byFinger = (event: PointerEvent) => scrolls && event.pointerType === 'touch'
  const x = frame.x(z)
  return (
    <g className="plane">
      <line x1={x} x2={x} y1={20} y2={frame.y(-view.reach) + 5} />
      <path className="plane-flag" d={`M${x - 6} ${14}h12l-6 12z`} />
      <rect
        className={scrolls ? 'plane-catch plane-catch-tap' : 'plane-catch'}
        x={frame.x(view.z0)}
        y={0}
        width={frame.x(view.z1) - frame.x(view.z0)}
        height={frame.height - 30}
        onClick={follow}
        onPointerDown={(event) => {
          if (byFinger(event)) return
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
