import { BufferAttribute, BufferGeometry, ShapeUtils, Vector2 } from 'three'
import type { MetalLeaf } from '../../papers/metal-leaves.ts'
import type { Shown } from './geometry.ts'
import { hatch } from './hatch.ts'
import { at, leftBetween, type Turned, turnedEdges, turnedFaces } from './turned.ts'

/** A turned piece; `cut` says that it does not close on itself. */
export function turnedGeometry(turned: Turned, cut: boolean): Shown {
  const round = turnedFaces(turned)
  const caps = cut ? capsOf(turned) : { positions: [], normals: [] }
  return {
    faces: geometry([...round.positions, ...caps.positions], [...round.normals, ...caps.normals]),
    edges: geometry([...turnedEdges(turned, [cut, cut])]),
  }
}

/** A leaf of metal with its cut faces and their hatching. */
export interface ShownLeaf extends Shown {
  readonly caps: BufferGeometry
  readonly hatching: BufferGeometry
}

/** Hatch lines this far apart, mm. */
const hatchGap = 2.2

/** What is left of a leaf of metal between two clock angles; nothing is cut where they are a whole turn apart. */
export function leafGeometry(leaf: MetalLeaf, from: number, to: number): ShownLeaf | undefined {
  const whole = to - from >= 360
  const [first, last] = [leaf.angles[0] as number, leaf.angles.at(-1) as number]
  const pieces = leftBetween(leaf, from, to)
  if (pieces.length === 0) return undefined
  const ends = pieces.map(({ angles }): [boolean, boolean] =>
    // Where the wedge ends a piece it is cut; where it ends by itself its neighbour goes on.
    whole ? [false, false] : [same(angles[0], from), same(angles.at(-1), to)],
  )
  const own = pieces.flatMap(({ angles }) => [
    ...(same(angles[0], first) ? sideLines(leaf.sides[0], angles[0]) : []),
    ...(same(angles.at(-1), last) ? sideLines(leaf.sides[1], angles.at(-1)) : []),
  ])
  const faces = pieces.map(turnedFaces)
  const caps = pieces.map(capsOf)
  const lean = leaf.order % 2 === 0 ? 1 : -1
  const hatching = pieces.flatMap(({ angles, rings }, i) =>
    ([0, -1] as const)
      .filter((end) => ends[i]?.[end === 0 ? 0 : 1])
      .flatMap((end) => sideLines(hatch(rings.at(end) ?? [], hatchGap, lean), angles.at(end))),
  )
  return {
    faces: geometry(
      faces.flatMap((f) => [...f.positions]),
      faces.flatMap((f) => [...f.normals]),
    ),
    edges: geometry([...pieces.flatMap((p, i) => [...turnedEdges(p, ends[i] ?? [false, false])]), ...own]),
    caps: geometry(
      caps.flatMap((c) => c.positions),
      caps.flatMap((c) => c.normals),
    ),
    hatching: geometry(hatching),
  }
}

/** The same clock angle, a turn more or less. */
function same(a: number | undefined, b: number): boolean {
  const off = (((a ?? 0) - b) % 360) + 360
  return Math.min(off % 360, 360 - (off % 360)) < 1e-3
}

const sideLines = (lines: MetalLeaf['sides'][0], angle: number | undefined): number[] =>
  lines.flatMap(([a, b]) => [...at(angle, a), ...at(angle, b)])

function capsOf({ angles, rings }: Turned): { positions: number[]; normals: number[] } {
  const positions: number[] = []
  const normals: number[] = []
  for (const [end, out] of [[0, -1] as const, [-1, 1] as const]) {
    const ring = rings.at(end) ?? []
    const w = ((angles.at(end) ?? 0) * Math.PI) / 180
    const corners = ShapeUtils.triangulateShape(
      ring.map(([z, r]) => new Vector2(z, r)),
      [],
    )
    for (const corner of corners.flat()) {
      positions.push(...at(angles.at(end), ring[corner]))
      normals.push(-out * Math.sin(w), out * Math.cos(w), 0)
    }
  }
  return { positions, normals }
}

function geometry(positions: readonly number[], normals?: readonly number[]): BufferGeometry {
  const made = new BufferGeometry()
  made.setAttribute('position', new BufferAttribute(Float32Array.from(positions), 3))
  if (normals) made.setAttribute('normal', new BufferAttribute(Float32Array.from(normals), 3))
  return made
}
