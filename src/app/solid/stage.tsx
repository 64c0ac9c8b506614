import { useThree } from '@react-three/fiber'
import { type Ref, useEffect, useImperativeHandle } from 'react'
import { type Object3D, type OrthographicCamera, type Plane, Raycaster, Vector2 } from 'three'
import type { Eye } from './eye.ts'
import { type Frame, looking, middleOf, seenSize } from './framing.ts'
import type { Picked } from './picked.ts'

/** What the page may ask of the picture. */
export interface StageHandle {
  /** What is at a place of the picture, 0 to 1 from its upper left corner. */
  readonly pick: (x: number, y: number) => Picked | undefined
  /** The picture as it is now. It is drawn anew for it. */
  readonly picture: () => HTMLCanvasElement
}

/** What a mesh says of itself when it is clicked: which triangle it was. */
export type Tells = (triangle: number) => Picked | undefined

/** Answers clicks and gives the picture away. */
export function Stage({ handle }: { readonly handle: Ref<StageHandle> }) {
  const get = useThree((three) => three.get)
  useImperativeHandle(
    handle,
    (): StageHandle => ({
      pick: (x, y) => {
        const { scene, camera } = get()
        const ray = new Raycaster()
        ray.setFromCamera(new Vector2(2 * x - 1, 1 - 2 * y), camera)
        // Bodies that the ray is in where the plane cuts them: their cut lies before all that is behind the plane.
        const inside = new Map<Object3D, readonly Plane[]>()
        for (const hit of ray.intersectObjects(scene.children, true)) {
          const tells = hit.object.userData['tells'] as Tells | undefined
          if (!tells || hit.faceIndex === undefined || hit.faceIndex === null) continue
          const planes = planesOf(hit.object)
          if (planes.some((p) => p.distanceToPoint(hit.point) < 0)) {
            if (!inside.delete(hit.object)) inside.set(hit.object, planes)
            continue
          }
          for (const [body, cuts] of inside)
            if (cuts.every((p) => p.distanceToPoint(hit.point) >= 0)) return body.userData['cut'] as Picked | undefined
          return tells(hit.faceIndex)
        }
        return undefined
      },
      picture: () => {
        const { gl, scene, camera } = get()
        gl.render(scene, camera)
        return gl.domElement
      },
    }),
    [get],
  )
  return undefined
}

/** What is clipped away cannot be clicked. */
function planesOf(object: Object3D): readonly Plane[] {
  const material = 'material' in object ? (object.material as { clippingPlanes?: readonly Plane[] | null }) : undefined
  return material?.clippingPlanes ?? []
}

/** Puts the eye where everything that is shown lies in the picture, from every side. */
export function FramedEye({ eye, frame }: { readonly eye: Eye; readonly frame: Frame }) {
  const get = useThree((three) => three.get)
  const size = useThree((three) => three.size)
  useEffect(() => {
    const { camera, invalidate } = get()
    const ortho = camera as OrthographicCamera
    const [x, y, z] = middleOf(frame)
    const { from } = looking(eye)
    ortho.position.set(x + 400 * from[0], y + 400 * from[1], z + 400 * from[2])
    // Looking straight down there is no upright to hold on to: the hilt stays level instead.
    const straight = Math.abs(eye.rise) > 89
    const turn = (eye.turn * Math.PI) / 180
    if (straight) ortho.up.set(-Math.sin(turn) * Math.sign(eye.rise), 0, -Math.cos(turn) * Math.sign(eye.rise))
    else ortho.up.set(0, 1, 0)
    ortho.lookAt(x, y, z)
    const { wide, high } = seenSize(frame, eye)
    ortho.zoom = eye.zoom * 0.92 * Math.min(size.width / Math.max(1, wide), size.height / Math.max(1, high))
    ortho.updateProjectionMatrix()
    invalidate()
  }, [eye, frame, size, get])
  return undefined
}
