import type { Mesh } from './mesh.ts'
import { laidDown, type Motion, standStill, turnedOver, type V3 } from './motion.ts'
import { type Stance, stanceOf } from './stance.ts'

export type End = 'rear' | 'blade'

/** Why a body is printed the way it is. */
export type OrientationReason =
  /** The other end gives no foot to stand on. */
  | 'only-foot'
  /** Less hangs over this way up. */
  | 'less-overhang'
  /** As good either way, and this end is where the sled was split. */
  | 'split-face'
  /** As good either way, and this foot is wider. */
  | 'wider-foot'
  /** Nothing speaks for turning it over. */
  | 'as-drawn'
  /** Neither end gives a foot: it lies on its flattest side. */
  | 'no-foot'

export interface Orientation {
  /** The end that stands on the bed, or the clock angle (degrees) that faces down where it is laid on its side. */
  readonly down: End | number
  readonly reason: OrientationReason
  readonly chosen: Stance
  /** Both ends, whichever was chosen. */
  readonly ends: Readonly<Record<End, Stance>>
}

/** Common practice, no source: mm² of a foot that a first layer holds by, and degrees a body may be tipped before it falls. */
export const footLimits = { area: 40, tip: 5 } as const
/** Overhangs and feet that differ by no more than this are as good as each other: a tenth, or so many mm². */
const alike = { share: 0.1, area: 15 }

/**
 * Which way a sled's body (its axis along z) is printed: upright where an end gives a foot, because layers across the
 * axis keep round nests round and let a cradle's arms bend within a layer; on the end under which less hangs over, then
 * on the face of a split, then on the wider foot, then as drawn. Laid on its flattest side where neither end will do.
 * `split`: the ends that are faces of a split.
 */
export function orientationOf(m: Mesh, split: ReadonlySet<End> = new Set()): Orientation {
  const ends = { rear: stanceOf(m, [0, 0, -1]), blade: stanceOf(m, [0, 0, 1]) }
  const stand = (down: End, reason: OrientationReason): Orientation => ({ down, reason, chosen: ends[down], ends })
  const { rear, blade } = ends
  if (!holds(rear) && !holds(blade)) return laid(m, ends)
  if (!holds(blade)) return stand('rear', 'only-foot')
  if (!holds(rear)) return stand('blade', 'only-foot')
  if (differ(rear.overhang, blade.overhang))
    return stand(rear.overhang < blade.overhang ? 'rear' : 'blade', 'less-overhang')
  if (split.size === 1) return stand(split.has('rear') ? 'rear' : 'blade', 'split-face')
  if (differ(rear.foot, blade.foot)) return stand(rear.foot > blade.foot ? 'rear' : 'blade', 'wider-foot')
  return stand('rear', 'as-drawn')
}

/** The turn that brings a body, as drawn, into its orientation. */
export function turnOf({ down }: Pick<Orientation, 'down'>): Motion {
  if (down === 'rear') return standStill
  return down === 'blade' ? turnedOver : laidDown(down)
}

const holds = (s: Stance): boolean => s.foot >= footLimits.area && s.tip >= footLimits.tip

const differ = (a: number, b: number): boolean => Math.abs(a - b) > Math.max(alike.area, alike.share * Math.max(a, b))

/** On the side with the largest flat face; of several, on the one under which least hangs over. */
function laid(m: Mesh, ends: Orientation['ends']): Orientation {
  const sides = clocksOfFaces(m).map((down) => ({ down, chosen: stanceOf(m, outward(down)) }))
  const best = sides.reduce((a, b) =>
    b.chosen.foot > a.chosen.foot + 1 ||
    (b.chosen.foot > a.chosen.foot - 1 && b.chosen.overhang < a.chosen.overhang - 1)
      ? b
      : a,
  )
  return { ...best, reason: 'no-foot', ends }
}

const outward = (theta: number): V3 => {
  const [, , z] = laidDown(theta)
  return [-z[0], -z[1], 0]
}

/** Clock angles that flat faces along the axis face, each once and in order; the four quarters in any case. */
function clocksOfFaces(m: Mesh): number[] {
  const v = m.vertices
  const found = new Set([0, 90, 180, 270])
  for (let t = 0; t < m.triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => 3 * (m.triangles[t + k] as number)) as [number, number, number]
    const edge = (to: number, k: number): number => (v[to + k] as number) - (v[a + k] as number)
    const [x, y, z] = [
      edge(b, 1) * edge(c, 2) - edge(b, 2) * edge(c, 1),
      edge(b, 2) * edge(c, 0) - edge(b, 0) * edge(c, 2),
      edge(b, 0) * edge(c, 1) - edge(b, 1) * edge(c, 0),
    ]
    const area = Math.sqrt(x * x + y * y + z * z)
    if (area > 0.1 && Math.abs(z) < 1e-4 * area) found.add(clock(x, y))
  }
  return [...found].sort((p, q) => p - q)
}

/** Hundredths of a degree: finer than the facets of any round. */
function clock(x: number, y: number): number {
  const theta = Math.round((Math.atan2(y, x) * 18000) / Math.PI) / 100
  return theta < 0 ? theta + 360 : theta + 0
}
