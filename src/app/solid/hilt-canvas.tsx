import { Canvas } from '@react-three/fiber'
import { type KeyboardEvent, type PointerEvent, type RefObject, useRef, useState } from 'react'
import { Survival } from './canvas-care.tsx'
import { type Eye, keys, moved } from './eye.ts'
import type { Frame } from './framing.ts'
import { HiltScene, type HiltSceneProps } from './hilt-scene.tsx'
import type { Picked } from './picked.ts'
import { FramedEye, Stage, type StageHandle } from './stage.tsx'

export interface HiltCanvasProps extends HiltSceneProps {
  readonly stage: RefObject<StageHandle | null>
  readonly eye: Eye
  readonly onEye: (turn: (eye: Eye) => Eye) => void
  readonly frame: Frame
  readonly onPick: (picked: Picked | undefined) => void
  readonly onLost: (lost: boolean) => void
}

/** A press that moves less than this is a click, pixels. */
const still = 4

/** The picture itself: turned by dragging or by keys, clicked to ask what something is; drawn only when something changes. */
export default function HiltCanvas(props: HiltCanvasProps) {
  const { stage, eye, onEye, frame, onPick, onLost, ...scene } = props
  const [life, setLife] = useState(0)
  const drag = useRef<{ x: number; y: number; far: number } | undefined>(undefined)
  const onKey = (event: KeyboardEvent) => {
    const turn = keys[event.key]
    if (!turn || event.ctrlKey || event.metaKey || event.altKey) return
    event.preventDefault()
    onEye(turn)
  }
  const onMove = (event: PointerEvent) => {
    const from = drag.current
    if (!from) return
    const [dx, dy] = [from.x - event.clientX, event.clientY - from.y]
    drag.current = { x: event.clientX, y: event.clientY, far: from.far + Math.abs(dx) + Math.abs(dy) }
    onEye((e) => moved(e, dx / 2, dy / 2))
  }
  const onUp = (event: PointerEvent) => {
    const from = drag.current
    drag.current = undefined
    if (!from || from.far > still) return
    const box = event.currentTarget.getBoundingClientRect()
    onPick(stage.current?.pick((event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height))
  }
  return (
    // The picture is turned in place, by hand or by keys; every move has a button too.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions
    <div
      className="solid-canvas hilt-canvas"
      role="application"
      aria-label="The hilt as a solid; the list below says the same in words. Arrow keys turn it, plus and minus zoom."
      // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
      tabIndex={0}
      onKeyDown={onKey}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId)
        drag.current = { x: event.clientX, y: event.clientY, far: 0 }
      }}
      onPointerMove={onMove}
      onPointerUp={onUp}
      onPointerCancel={() => {
        drag.current = undefined
      }}
    >
      <Canvas
        orthographic
        flat
        frameloop="demand"
        dpr={[1, 2]}
        gl={{ antialias: true, stencil: true, localClippingEnabled: true } as object}
        camera={{ near: -2000, far: 3000 }}
      >
        <Survival onLost={onLost} onRestored={() => setLife((n) => n + 1)} />
        <FramedEye eye={eye} frame={frame} />
        <Stage handle={stage} />
        <HiltScene key={life} {...scene} />
      </Canvas>
    </div>
  )
}
