import { Canvas } from '@react-three/fiber'
import { type KeyboardEvent, type PointerEvent, useRef, useState } from 'react'
import type { SolidView } from '../../worker/press.ts'
import { Survival, Watcher } from './canvas-care.tsx'
import { keys, moved, nearer, start, views } from './eye.ts'
import { Scene } from './scene.tsx'

/** The solid view itself. Turned by dragging, by keys or by buttons; drawn only when something changes. */
export default function SolidScene({ solid, theme }: { readonly solid: SolidView; readonly theme: string }) {
  const [eye, setEye] = useState(start)
  const [contents, setContents] = useState(true)
  const [open, setOpen] = useState(false)
  const [lost, setLost] = useState(false)
  const [life, setLife] = useState(0)
  const drag = useRef<{ x: number; y: number } | undefined>(undefined)
  const onKey = (event: KeyboardEvent) => {
    const turn = keys[event.key]
    if (!turn) return
    event.preventDefault()
    setEye(turn)
  }
  const onMove = (event: PointerEvent) => {
    const from = drag.current
    if (!from) return
    drag.current = { x: event.clientX, y: event.clientY }
    setEye((e) => moved(e, (from.x - event.clientX) / 2, (event.clientY - from.y) / 2))
  }
  return (
    <div className="solid-scene">
      {/* The picture is turned in place, by hand or by keys; every move has a button too. */}
      {/* oxlint-disable jsx-a11y/no-noninteractive-element-interactions, jsx-a11y/no-noninteractive-tabindex */}
      <div
        className="solid-canvas"
        role="application"
        aria-label={`The sled as a solid, ${solid.size.map((s) => s.toFixed(1)).join(' by ')} millimetres. Arrow keys turn it, plus and minus zoom.`}
        tabIndex={0}
        onKeyDown={onKey}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId)
          drag.current = { x: event.clientX, y: event.clientY }
        }}
        onPointerMove={onMove}
        onPointerUp={() => {
          drag.current = undefined
        }}
        onPointerCancel={() => {
          drag.current = undefined
        }}
      >
        <Canvas
          orthographic
          flat
          frameloop="demand"
          dpr={[1, 2]}
          gl={{ antialias: true, localClippingEnabled: true } as object}
          camera={{ near: -1000, far: 1000 }}
        >
          <Survival onLost={setLost} onRestored={() => setLife((n) => n + 1)} />
          <Watcher eye={eye} length={solid.size[2]} breadth={solid.size[0]} />
          <Scene key={life} solid={solid} contents={contents} open={open} theme={theme} />
        </Canvas>
      </div>
      {lost && (
        <p className="small" aria-live="polite">
          The graphics card took the picture away; it comes back by itself. The drawings are not touched by it.
        </p>
      )}
      <fieldset className="solid-tools">
        <legend className="unseen">View of the solid</legend>
        {views.map(([name, to]) => (
          <button
            key={name}
            type="button"
            className="button button-small"
            onClick={() => setEye((e) => ({ ...e, ...to }))}
          >
            {name}
          </button>
        ))}
        <button
          type="button"
          className="button button-small"
          aria-label="Nearer"
          onClick={() => setEye((e) => nearer(e, 1.25))}
        >
          +
        </button>
        <button
          type="button"
          className="button button-small"
          aria-label="Farther"
          onClick={() => setEye((e) => nearer(e, 0.8))}
        >
          −
        </button>
        <label className="tick">
          <input type="checkbox" checked={contents} onChange={(event) => setContents(event.target.checked)} />
          Contents
        </label>
        <label className="tick">
          <input type="checkbox" checked={open} onChange={(event) => setOpen(event.target.checked)} />
          Cut open
        </label>
      </fieldset>
    </div>
  )
}
