/** A profile turned about the hilt's axis: [z, distance from the axis], mm, at each of its clock angles, degrees. */
export interface Turned {
  readonly angles: readonly number[]
  readonly rings: readonly (readonly (readonly [number, number])[])[]
}

export type Point3 = readonly [number, number, number]

/** One pass of the round is drawn in so many degrees at most. */
const chord = 6

/**
 * What is left of a turned piece between two clock angles, in steps fine enough to look round. The piece may begin
 * anywhere; `to` is at most a whole turn above `from`. Each stretch that is left comes by itself.
 */
export function leftBetween(t: Turned, from: number, to: number): Turned[] {
  const [first, last] = [t.angles[0] as number, t.angles.at(-1) as number]
  const turns = [-720, -360, 0, 360, 720]
  if (last - first > 360 - 1e-6) {
    // A whole round has no seam: it is taken twice around, so that every stretch of it is in one piece.
    const twice = {
      angles: [...t.angles, ...t.angles.slice(1).map((a) => a + 360)],
      rings: [...t.rings, ...t.rings.slice(1)],
    }
    const start = first + ((((from - first) % 360) + 360) % 360)
    return [stepped(twice, start, start + to - from)]
  }
  return turns.flatMap((turn): Turned[] => {
    const [a, b] = [Math.max(first, from + turn), Math.min(last, to + turn)]
    return b - a < 1e-3 ? [] : [stepped(t, a, b)]
  })
}

/** The same piece in steps fine enough to look round. */
export const finer = (t: Turned): Turned => stepped(t, t.angles[0] as number, t.angles.at(-1) as number)

function stepped(t: Turned, from: number, to: number): Turned {
  const count = Math.max(1, Math.ceil((to - from) / chord))
  const angles = Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count)
  return { angles, rings: angles.map((angle) => ringAt(t, angle)) }
}

/** The profile at a clock angle, straight between those that are known. */
export function ringAt(t: Turned, angle: number): (readonly [number, number])[] {
  const k = Math.max(
    1,
    t.angles.findIndex((a) => a >= angle),
  )
  const [a, b] = [t.angles[k - 1] as number, t.angles[k] as number]
  const share = b > a ? Math.min(1, Math.max(0, (angle - a) / (b - a))) : 0
  const [low, high] = [t.rings[k - 1] ?? [], t.rings[k] ?? []]
  return low.map(([z, r], i): [number, number] => {
    const [z1, r1] = high[i] ?? [z, r]
    return [z + share * (z1 - z), r + share * (r1 - r)]
  })
}

/** The faces of a turned piece as triangles with their normals, corner after corner; without its two end faces. */
export function turnedFaces({ angles, rings }: Turned): { positions: Float32Array; normals: Float32Array } {
  const corners = rings[0]?.length ?? 0
  const size = Math.max(0, angles.length - 1) * corners * 18
  const positions = new Float32Array(size)
  const normals = new Float32Array(size)
  let at = 0
  for (let i = 0; i + 1 < angles.length; i++)
    for (let k = 0; k < corners; k++) {
      const next = (k + 1) % corners
      for (const [station, corner] of [
        [i, k],
        [i, next],
        [i + 1, next],
        [i, k],
        [i + 1, next],
        [i + 1, k],
      ] as const) {
        const ring = rings[station] as Turned['rings'][number]
        const [z, r] = ring[corner] as readonly [number, number]
        const [from, to] = [ring[k] as readonly [number, number], ring[next] as readonly [number, number]]
        const long = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1
        // The profile is counted so that the metal lies on its left: out of it is to the right.
        const [outZ, outR] = [(to[1] - from[1]) / long, -(to[0] - from[0]) / long]
        const w = ((angles[station] as number) * Math.PI) / 180
        const [c, s] = [Math.cos(w), Math.sin(w)]
        positions.set([r * c, r * s, z], at)
        normals.set([outR * c, outR * s, outZ], at)
        at += 3
      }
    }
  return { positions, normals }
}

/** Corners sharper than this are drawn as edges, as the cosine of the turn. */
const smooth = Math.cos(Math.PI / 7)

/** Lines around the round at the sharp corners of the profile, and the profile itself where it is cut. */
export function turnedEdges({ angles, rings }: Turned, cut: readonly [boolean, boolean]): Float32Array {
  const lines: number[] = []
  const first = rings[0] ?? []
  for (const k of first.keys()) {
    if (!sharp(first, k) || winding(first, k)) continue
    for (let i = 0; i + 1 < angles.length; i++)
      lines.push(...at(angles[i], rings[i]?.[k]), ...at(angles[i + 1], rings[i + 1]?.[k]))
  }
  for (const [end, drawn] of [[0, cut[0]] as const, [-1, cut[1]] as const]) {
    const ring = rings.at(end) ?? []
    if (drawn)
      for (const k of ring.keys())
        lines.push(...at(angles.at(end), ring[k]), ...at(angles.at(end), ring[(k + 1) % ring.length]))
  }
  return Float32Array.from(lines)
}

/** A point of a profile at its clock angle, in the frame of the hilt. */
export function at(angle: number | undefined, point: readonly [number, number] | undefined): [number, number, number] {
  const [z, r] = point ?? [0, 0]
  const w = ((angle ?? 0) * Math.PI) / 180
  return [r * Math.cos(w), r * Math.sin(w), z]
}

/** Turns of a thread are too close for lines: light and shade show them. */
const closest = 2.6

function winding(ring: Turned['rings'][number], k: number): boolean {
  const n = ring.length
  const [a, b] = [ring[(k + n - 2) % n], ring[(k + 2) % n]]
  return n > 8 && a !== undefined && b !== undefined && Math.abs(b[0] - a[0]) < closest && Math.abs(b[1] - a[1]) < 0.1
}

function sharp(ring: Turned['rings'][number], k: number): boolean {
  const n = ring.length
  const [a, b, c] = [ring[(k + n - 1) % n], ring[k], ring[(k + 1) % n]]
  if (!a || !b || !c || b[1] === 0) return false
  const [u, v] = [
    [b[0] - a[0], b[1] - a[1]],
    [c[0] - b[0], c[1] - b[1]],
  ] as [[number, number], [number, number]]
  const both = Math.hypot(...u) * Math.hypot(...v)
  return both > 0 && (u[0] * v[0] + u[1] * v[1]) / both < smooth
}
