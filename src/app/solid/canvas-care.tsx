import { useThree } from '@react-three/fiber'
import { useEffect, useRef } from 'react'
import type { OrthographicCamera } from 'three'
import type { Eye } from './eye.ts'

/**
 * A lost context is given back by the browser only if we do not take the loss as final. Then everything is made anew
 * from the arrays: what was changed meanwhile never reached the card.
 */
export function Survival(props: { readonly onLost: (lost: boolean) => void; readonly onRestored: () => void }) {
  const { onLost } = props
  const canvas = useThree((three) => three.gl.domElement)
  const restored = useRef(props.onRestored)
  useEffect(() => {
    restored.current = props.onRestored
  })
  useEffect(() => {
    const lose = (event: Event) => {
      event.preventDefault()
      onLost(true)
    }
    const restore = () => {
      onLost(false)
      restored.current()
    }
    canvas.addEventListener('webglcontextlost', lose)
    canvas.addEventListener('webglcontextrestored', restore)
    return () => {
      canvas.removeEventListener('webglcontextlost', lose)
      canvas.removeEventListener('webglcontextrestored', restore)
    }
  }, [canvas, onLost])
  return undefined
}

/** Puts the eye where it belongs, so that the whole sled is in the picture from every side. */
export function Watcher({
  eye,
  length,
  breadth,
}: {
  readonly eye: Eye
  readonly length: number
  readonly breadth: number
}) {
  const get = useThree((three) => three.get)
  const size = useThree((three) => three.size)
  useEffect(() => {
    const { camera, invalidate } = get()
    const ortho = camera as OrthographicCamera
    const [turn, rise] = [(eye.turn * Math.PI) / 180, (eye.rise * Math.PI) / 180]
    const level = Math.cos(rise)
    ortho.position.set(Math.sin(turn) * level, Math.sin(rise), Math.cos(turn) * level).multiplyScalar(300)
    // Looking straight down there is no upright to hold on to: the hilt stays level instead.
    const straight = Math.abs(eye.rise) > 89
    ortho.up.set(0, straight ? 0 : 1, straight ? -Math.sign(eye.rise) : 0)
    ortho.lookAt(0, 0, 0)
    const across = length * Math.abs(Math.cos(turn)) + breadth * Math.abs(Math.sin(turn))
    const upright = length * Math.abs(Math.sin(turn) * Math.sin(rise)) + breadth
    ortho.zoom = eye.zoom * 0.86 * Math.min(size.width / across, size.height / upright)
    ortho.updateProjectionMatrix()
    invalidate()
  }, [eye, length, breadth, size, get])
  return undefined
}
