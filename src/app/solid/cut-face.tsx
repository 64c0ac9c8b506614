import { useThree } from '@react-three/fiber'
import { useEffect, useMemo } from 'react'
import {
  BackSide,
  type BufferGeometry,
  CanvasTexture,
  DecrementWrapStencilOp,
  FrontSide,
  IncrementWrapStencilOp,
  NotEqualStencilFunc,
  type Plane,
  RepeatWrapping,
  ReplaceStencilOp,
  SRGBColorSpace,
  type WebGLRenderer,
} from 'three'
import type { Inks } from './inks.ts'

/** Side of the square that the cut is drawn on, mm; and one turn of its hatching. */
const side = 2000
const hatchGap = 3

/**
 * Counts, for each point of the picture, how deep inside a body the cutting plane lies: a closed body has a back face
 * behind each point of its cut without a front face before it.
 */
export function CutDepth(props: { readonly faces: BufferGeometry; readonly planes: Plane[]; readonly order: number }) {
  const { faces, planes, order } = props
  const silent = { colorWrite: false, depthWrite: false, depthTest: false, stencilWrite: true, clippingPlanes: planes }
  const all = (op: typeof IncrementWrapStencilOp | typeof DecrementWrapStencilOp) => ({
    stencilFail: op,
    stencilZFail: op,
    stencilZPass: op,
  })
  return (
    <>
      <mesh geometry={faces} renderOrder={order}>
        <meshBasicMaterial side={BackSide} {...silent} {...all(IncrementWrapStencilOp)} />
      </mesh>
      <mesh geometry={faces} renderOrder={order}>
        <meshBasicMaterial side={FrontSide} {...silent} {...all(DecrementWrapStencilOp)} />
      </mesh>
    </>
  )
}

/** The cut itself, hatched, wherever the plane that faces the eye lies inside the body counted last. */
export function CutFace({ inks, order }: { readonly inks: Inks; readonly order: number }) {
  const invalidate = useThree((three) => three.invalidate)
  const hatching = useMemo(() => hatchOf(inks), [inks])
  useEffect(() => {
    invalidate()
    return () => hatching?.dispose()
  }, [hatching, invalidate])
  return (
    <mesh renderOrder={order} onAfterRender={(gl: WebGLRenderer) => gl.clearStencil()}>
      <planeGeometry args={[side, side]} />
      <meshBasicMaterial
        map={hatching ?? null}
        stencilWrite
        stencilRef={0}
        stencilFunc={NotEqualStencilFunc}
        stencilFail={ReplaceStencilOp}
        stencilZFail={ReplaceStencilOp}
        stencilZPass={ReplaceStencilOp}
      />
    </mesh>
  )
}

function hatchOf(inks: Inks): CanvasTexture | undefined {
  const tile = document.createElement('canvas')
  tile.width = 32
  tile.height = 32
  const pen = tile.getContext('2d')
  if (!pen) return undefined
  pen.fillStyle = inks.sled
  pen.fillRect(0, 0, 32, 32)
  pen.strokeStyle = inks['sled-hatch']
  pen.lineWidth = 2.5
  for (const x of [-32, 0, 32]) {
    pen.moveTo(x - 4, 36)
    pen.lineTo(x + 36, -4)
  }
  pen.stroke()
  const texture = new CanvasTexture(tile)
  texture.wrapS = RepeatWrapping
  texture.wrapT = RepeatWrapping
  texture.repeat.set(side / hatchGap, side / hatchGap)
  texture.colorSpace = SRGBColorSpace
  texture.anisotropy = 4
  return texture
}
