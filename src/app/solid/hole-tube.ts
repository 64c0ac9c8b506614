import type { WallHole } from '../../worker/wall-holes.ts'
import { type Point3, ringAt, type Turned } from './turned.ts'

/** The wall of a round hole: its rims on the inside and on the outside of the metal, corner by corner around it. */
export interface HoleTube {
  readonly inner: readonly Point3[]
  readonly outer: readonly Point3[]
  /** Towards the middle of the hole. */
  readonly normals: readonly Point3[]
  /** Whether the stretch from a corner to the next lies between the two clock angles. */
  readonly there: readonly boolean[]
}

/** Corners of a rim: so many look round. */
const corners = 48

/**
 * The wall of a hole through a turned piece, as far as it lies between two clock angles, degrees; undefined where the
 * middle of the hole is not in this piece. Where it runs out of the metal its rim lies on the last of it.
 */
export function holeTube(metal: Turned, hole: WallHole, from: number, to: number): HoleTube | undefined {
  const [first, last] = [metal.angles[0] as number, metal.angles.at(-1) as number]
  const theta = first + turned(hole.theta - first)
  if (theta > last || !wallAt(metal, theta, hole.z)) return undefined
  const w = (hole.theta * Math.PI) / 180
  const [c, s] = [Math.cos(w), Math.sin(w)]
  const rims = Array.from({ length: corners }, (_, i) => {
    const turn = (2 * Math.PI * i) / corners
    const [dz, across] = [hole.radius * Math.cos(turn), hole.radius * Math.sin(turn)]
    const wall = wallAt(metal, theta, hole.z + dz) ?? wallAt(metal, theta, hole.z + 0.999 * dz) ?? [0, 0]
    const point = (r: number): Point3 => {
      const out = Math.sqrt(Math.max(0, r * r - across * across))
      return [out * c - across * s, out * s + across * c, hole.z + dz]
    }
    const normal: Point3 = [Math.sin(turn) * s, -Math.sin(turn) * c, -Math.cos(turn)]
    const [inner, outer] = [point(wall[0]), point(wall[1])]
    return { inner, outer, normal, inside: turned(angleOf(outer) - from) <= to - from, drawn: wall[1] > 0 }
  })
  return {
    inner: rims.map((r) => r.inner),
    outer: rims.map((r) => r.outer),
    normals: rims.map((r) => r.normal),
    there: rims.map((r, i) => {
      const next = rims[(i + 1) % corners]
      return next !== undefined && r.inside && next.inside && r.drawn && next.drawn
    }),
  }
}

/** Where the metal begins and ends at a height, from the axis, mm. */
function wallAt(metal: Turned, theta: number, z: number): readonly [number, number] | undefined {
  const ring = ringAt(metal, theta)
  const crossed = ring.flatMap(([z0, r0], i): number[] => {
    const [z1, r1] = ring[(i + 1) % ring.length] ?? [z0, r0]
    return z0 <= z !== z1 <= z ? [r0 + ((z - z0) / (z1 - z0)) * (r1 - r0)] : []
  })
  return crossed.length < 2 ? undefined : [Math.min(...crossed), Math.max(...crossed)]
}

const angleOf = ([x, y]: Point3): number => (Math.atan2(y, x) * 180) / Math.PI
/** An angle from 0 up to a whole turn. */
const turned = (angle: number): number => ((angle % 360) + 360) % 360
