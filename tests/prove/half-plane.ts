/**
 * What is round about an axis, seen in its half-plane (z, r): a body as how far it reaches from the axis over z, the
 * metal of a bore as everything above a chain of straight pieces. Distances there are the distances in space, because
 * the nearest point of a round wall lies in the same half-plane.
 */

/** A stretch of a body's reach: straight from ra at za to rb at zb, filled down to the axis. */
export interface Column {
  readonly za: number
  readonly zb: number
  readonly ra: number
  readonly rb: number
}

interface P {
  readonly z: number
  readonly r: number
}

/** The wall of a bore step, from its rear end to its blade end; metal lies above it, and nowhere else. */
export type Wall = readonly P[]

/** Drawn out this far a thing has left every hilt, mm. */
const gone = 5000
const skyward = 1000

/** A bore step's wall. */
export const wallOf = (z0: number, z1: number, r0: number, r1: number): Wall => [
  { z: z0, r: r0 },
  { z: z1, r: r1 },
]

/**
 * The wall as a body sees it that comes along z: while the body travels towards the blade, the metal travels past it
 * towards the rear, so all the metal's places lie from where it ends up towards the blade.
 */
export function passed(wall: Wall, heading: 'blade' | 'rear'): Wall {
  const [a, b] = wall as readonly [P, P]
  const least = Math.min(a.r, b.r)
  if (heading === 'blade')
    return b.r < a.r
      ? [a, b, { z: gone, r: least }]
      : [
          { z: a.z, r: a.r },
          { z: gone, r: a.r },
        ]
  return a.r < b.r
    ? [{ z: -gone, r: least }, a, b]
    : [
        { z: -gone, r: b.r },
        { z: b.z, r: b.r },
      ]
}

/** From a body's reach to a wall: the distance, or minus how far the body stands into the metal. */
export function toWall(body: readonly Column[], wall: Wall): number {
  let best = Number.POSITIVE_INFINITY
  const [first, last] = [wall[0] as P, wall.at(-1) as P]
  const metal: P[] = [{ z: first.z, r: skyward }, ...wall, { z: last.z, r: skyward }]
  for (const c of body) {
    const into = standsIn(c, wall)
    if (into > 0) best = Math.min(best, -into)
    else best = Math.min(best, apart(c, metal))
  }
  return best
}

/** How far a column stands above the wall anywhere. */
function standsIn(c: Column, wall: Wall): number {
  let most = Number.NEGATIVE_INFINITY
  for (let i = 1; i < wall.length; i++) {
    const [a, b] = [wall[i - 1] as P, wall[i] as P]
    const [z0, z1] = [Math.max(a.z, c.za), Math.min(b.z, c.zb)]
    if (z0 > z1) continue
    for (const z of [z0, z1]) most = Math.max(most, along(c.za, c.ra, c.zb, c.rb, z) - along(a.z, a.r, b.z, b.r, z))
  }
  return most
}

function along(z0: number, r0: number, z1: number, r1: number, z: number): number {
  return z1 > z0 ? r0 + ((z - z0) / (z1 - z0)) * (r1 - r0) : Math.max(r0, r1)
}

function apart(c: Column, metal: readonly P[]): number {
  const body: readonly (readonly [P, P])[] = [
    [
      { z: c.za, r: c.ra },
      { z: c.zb, r: c.rb },
    ],
    [
      { z: c.za, r: 0 },
      { z: c.za, r: c.ra },
    ],
    [
      { z: c.zb, r: 0 },
      { z: c.zb, r: c.rb },
    ],
  ]
  let best = Number.POSITIVE_INFINITY
  for (let i = 1; i < metal.length; i++) {
    const [a, b] = [metal[i - 1] as P, metal[i] as P]
    for (const [p, q] of body)
      best = Math.min(best, toSegment(p, a, b), toSegment(q, a, b), toSegment(a, p, q), toSegment(b, p, q))
  }
  return best
}

function toSegment(p: P, a: P, b: P): number {
  const [uz, ur] = [b.z - a.z, b.r - a.r]
  const uu = uz * uz + ur * ur
  const t = uu > 0 ? Math.min(1, Math.max(0, ((p.z - a.z) * uz + (p.r - a.r) * ur) / uu)) : 0
  return Math.hypot(p.z - a.z - t * uz, p.r - a.r - t * ur)
}
