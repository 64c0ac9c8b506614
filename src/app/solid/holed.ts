import type { Material } from 'three'
import type { WallHole } from '../../worker/wall-holes.ts'

/** What makes a material leave out what lies in a round hole of the wall. To be spread over it. */
export interface Holed {
  readonly key: string
  readonly onBeforeCompile: Material['onBeforeCompile']
  readonly customProgramCacheKey: () => string
}

/**
 * Nothing that is drawn with such a material, in the frame of the hilt, is painted inside of a hole. The holes are
 * written into the program of the material: another set of them is another program, so the key is theirs.
 */
export function holed(holes: readonly WallHole[]): Holed {
  const key = `holes ${holes.map((h) => [h.z, h.theta, h.radius].map((n) => n.toFixed(4)).join(' ')).join(', ')}`
  return {
    key,
    customProgramCacheKey: () => key,
    onBeforeCompile: (shader) => {
      if (holes.length === 0) return
      shader.vertexShader = shader.vertexShader
        .replace('void main() {', 'varying vec3 inHilt;\nvoid main() {')
        .replace('#include <begin_vertex>', '#include <begin_vertex>\ninHilt = position;')
      shader.fragmentShader = shader.fragmentShader
        .replace('void main() {', 'varying vec3 inHilt;\nvoid main() {')
        .replace(
          '#include <clipping_planes_fragment>',
          ['#include <clipping_planes_fragment>', ...holes.map(left)].join('\n'),
        )
    },
  }
}

/** Leaves out what is nearer to the middle of a hole than its radius, on its side of the axis. */
function left({ z, theta, radius }: WallHole): string {
  const w = (theta * Math.PI) / 180
  const [c, s] = [Math.cos(w).toFixed(6), Math.sin(w).toFixed(6)]
  const along = `(inHilt.z - (${z.toFixed(4)}))`
  const across = `(inHilt.y * (${c}) - inHilt.x * (${s}))`
  const out = `(inHilt.x * (${c}) + inHilt.y * (${s}))`
  const room = (radius * radius).toFixed(4)
  return `if (${out} > 0.0 && ${along} * ${along} + ${across} * ${across} < ${room}) discard;`
}
