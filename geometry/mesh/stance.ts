import type { Mesh } from './mesh.ts'
import type { V3 } from './motion.ts'

/** How a body would stand on the bed with one of its directions pointing down. */
export interface Stance {
  /** Area of the faces that lie flat on the bed, mm². */
  readonly foot: number
  /** Area, seen from above, of what hangs over steeper than 45° and not on the bed, mm²: it wants supports or bridges. */
  readonly overhang: number
  /** How far it can be tipped before it falls over its foot, degrees; 0 or less where it does not stand at all. */
  readonly tip: number
}

/** Faces within this of the lowest place lie on the bed, mm; they are flat to about 1e-4 of a turn. */
const onBed = 0.01
const flat = 1 - 1e-8
/** Steeper than 45° from upright. Source: printing guides, which let 45° to 50° hang over without support: read. */
const hangs = Math.SQRT1_2 + 1e-3

/** Measures a stance on the mesh itself. `down`: a unit vector in the body's own frame. */
export function stanceOf(m: Mesh, down: V3): Stance {
  const [ex, ey] = across(down)
  const centre = centreOf(m)
  const lowest = reachAlong(m, down)
  const flatHere: { x: number; y: number }[] = []
  let [foot, overhang] = [0, 0]
  for (let t = 0; t < m.triangles.length; t += 3) {
    const corners = [0, 1, 2].map((k) => vertex(m, m.triangles[t + k] as number)) as [V3, V3, V3]
    const normal = cross(less(corners[1], corners[0]), less(corners[2], corners[0]))
    const length = Math.sqrt(dot(normal, normal))
    if (!(length > 0)) continue
    const facing = dot(normal, down) / length
    if (facing > flat && corners.every((c) => lowest - dot(c, down) < onBed)) {
      foot += length / 2
      flatHere.push(...corners.map((c) => ({ x: dot(c, ex), y: dot(c, ey) })))
    } else if (facing > hangs) overhang += (facing * length) / 2
  }
  const reach = reachInside(hullOf(flatHere), { x: dot(centre, ex), y: dot(centre, ey) })
  const tip = (Math.atan2(reach, lowest - dot(centre, down)) * 180) / Math.PI
  return { foot, overhang, tip }
}

/** How far the mesh reaches in a direction, mm from the origin. */
function reachAlong(m: Mesh, direction: V3): number {
  let most = Number.NEGATIVE_INFINITY
  for (let i = 0; i < m.vertices.length / 3; i++) most = Math.max(most, dot(vertex(m, i), direction))
  return most
}

/** The centre of mass of a closed mesh, mm. */
function centreOf(m: Mesh): V3 {
  let [x, y, z, volume] = [0, 0, 0, 0]
  for (let t = 0; t < m.triangles.length; t += 3) {
    const [p, q, r] = [0, 1, 2].map((k) => vertex(m, m.triangles[t + k] as number)) as [V3, V3, V3]
    const v = dot(p, cross(q, r))
    x += v * (p[0] + q[0] + r[0])
    y += v * (p[1] + q[1] + r[1])
    z += v * (p[2] + q[2] + r[2])
    volume += v
  }
  return [x / (4 * volume), y / (4 * volume), z / (4 * volume)]
}

interface P {
  readonly x: number
  readonly y: number
}

/** Corners of the convex hull, counter-clockwise (A. M. Andrew's monotone chain). */
function hullOf(points: readonly P[]): P[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y)
  const chain = (list: readonly P[]): P[] => {
    const kept: P[] = []
    for (const p of list) {
      while (kept.length > 1 && turn(kept.at(-2) as P, kept.at(-1) as P, p) <= 0) kept.pop()
      kept.push(p)
    }
    return kept.slice(0, -1)
  }
  return [...chain(sorted), ...chain(sorted.toReversed())]
}

const turn = (a: P, b: P, c: P): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)

/** How far inside a convex outline a point lies, mm; negative outside, and where there is no outline. */
function reachInside(hull: readonly P[], p: P): number {
  if (hull.length < 3) return Number.NEGATIVE_INFINITY
  return Math.min(
    ...hull.map((a, i) => {
      const b = hull[(i + 1) % hull.length] as P
      return turn(a, b, p) / Math.hypot(b.x - a.x, b.y - a.y)
    }),
  )
}

/** Two directions that span the bed. */
function across(down: V3): [V3, V3] {
  const aside: V3 = Math.abs(down[2]) > 0.5 ? [1, 0, 0] : [0, 0, 1]
  const ey = unit(cross(down, aside))
  return [cross(ey, down), ey]
}

const vertex = (m: Mesh, i: number): V3 => [
  m.vertices[3 * i] as number,
  m.vertices[3 * i + 1] as number,
  m.vertices[3 * i + 2] as number,
]
const dot = (a: V3, b: V3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
const less = (a: V3, b: V3): V3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
const cross = (a: V3, b: V3): V3 => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
const unit = (a: V3): V3 => {
  const l = Math.sqrt(dot(a, a))
  return [a[0] / l, a[1] / l, a[2] / l]
}
