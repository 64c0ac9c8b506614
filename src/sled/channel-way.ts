import { widestChannel } from '../../geometry/packing/channel.ts'
import { sectionOf } from '../../geometry/plan/cross-section.ts'
import { type PlanItem, planSpan } from '../../geometry/plan/plan.ts'
import { nearest } from '../../geometry/region/edge-distance.ts'
import { clock, distance, type Point, polar } from '../../geometry/region/point.ts'
import type { Region } from '../../geometry/region/region.ts'
import { remember } from '../../geometry/remember.ts'

/**
 * How the wires run: in a round way with walls about it; in a groove open to the outside; or merged into the nests
 * they pass, where nothing else is left.
 */
export interface Way {
  readonly style: 'round' | 'groove' | 'merged'
  readonly theta: number
  readonly r: number
  /** Whether it is open to the outside: a groove, or what would leave less than a wall there. */
  readonly open: boolean
  /** Nests it opens into, because no wall would be left to them. */
  readonly into?: readonly Joint[]
}

/** Where a way meets a nest. */
export interface Joint {
  readonly at: Point
  readonly z0: number
  readonly z1: number
}

export interface WayAsk {
  readonly R: number
  readonly width: number
  readonly wall: number
  /** What is cut out of the sled along the way. */
  readonly cuts: readonly PlanItem[]
  /** Cut out too, but the way may open into it. */
  readonly mayOpen: readonly PlanItem[]
  /** What stands in a nest and must not be cut off: a cradle's arms. */
  readonly standing: readonly PlanItem[]
  /** What lies in it. */
  readonly contents: readonly Region[]
}

/** The best straight way for a bundle, in the order round, groove, merged. The dearest step of a plan. */
export const wayFor: (ask: WayAsk) => Way = remember(
  16,
  (ask) =>
    JSON.stringify([
      ask.R,
      ask.width,
      ask.wall,
      [...ask.cuts, ...ask.mayOpen].map((c) => c.solid),
      ask.standing.map((c) => c.solid),
      ask.contents.map((c) => c.form),
    ]),
  search,
)

function search(ask: WayAsk): Way {
  const way = straight(ask)
  const c = polar(way.r, way.theta)
  const open = way.style === 'groove' || way.r + ask.width / 2 > ask.R - ask.wall + 1e-6
  const merged = way.style === 'merged' ? joints(ask, ask.cuts, c, ask.wall) : []
  // What looks out of an end is where a walled way begins, however far aside: else no wire could get into it.
  const begins = joints(ask, ask.mayOpen, c, way.style === 'round' ? Number.POSITIVE_INFINITY : ask.wall)
  return { ...way, open, into: [...merged, ...begins] }
}

function straight(ask: WayAsk): Omit<Way, 'into' | 'open'> {
  const { R, width, wall } = ask
  const standing = ask.standing.flatMap((c) => sectionOf(c.solid) ?? [])
  const pockets = [...ask.cuts.flatMap((c) => sectionOf(c.solid) ?? []), ...standing]
  const walled = widestChannel(R, pockets, wall, width / 2)
  if (walled.r >= width / 2) return { style: 'round', ...polarOf(walled.c) }
  const groove = bestGroove(ask, pockets)
  if (groove !== undefined) return { style: 'groove', theta: groove, r: R - width / 2 }
  // Clear of what stands in the nests with a wall outside; else without the wall; else as wide as the contents leave it.
  const full = [...ask.contents, ...standing]
  const within = standing.length > 0 ? [R - wall, R] : [R - wall]
  const free =
    within.map((most) => widestChannel(most, full, 0, width / 2)).find((way) => way.r >= width / 2) ??
    widestChannel(R, ask.contents)
  return { style: 'merged', ...polarOf(free.c) }
}

/** Every nest that would leave less than so much material to the channel, mm, and does not reach into it anyway. */
function joints(ask: WayAsk, cuts: readonly PlanItem[], c: Point, most: number): Joint[] {
  return cuts.flatMap(({ solid }): Joint[] => {
    const region = sectionOf(solid)
    if (!region || region.contains(c)) return []
    const at = nearestOn(region, c)
    const wall = distance(c, at) - ask.width / 2
    return wall > -deepEnough && wall < most ? besideStanding(ask, c, { at, ...planSpan(solid) }) : []
  })
}

/** A joint only between what stands in its way: a cradle's arms go on where the nest between them is opened. */
function besideStanding(ask: WayAsk, c: Point, joint: Joint): Joint[] {
  const line = [0, 0.2, 0.4, 0.6, 0.8, 1].map((t) => ({
    x: c.x + t * (joint.at.x - c.x),
    y: c.y + t * (joint.at.y - c.y),
  }))
  const inTheWay = ask.standing.filter((s) => {
    const region = sectionOf(s.solid)
    return region && line.some((p) => region.contains(p))
  })
  return inTheWay.reduce<Joint[]>(
    (left, { solid }) => {
      const { z0, z1 } = planSpan(solid)
      return left.flatMap((j) =>
        [
          { ...j, z1: Math.min(j.z1, z0) },
          { ...j, z0: Math.max(j.z0, z1) },
        ].filter((part) => part.z1 - part.z0 > ask.wall),
      )
    },
    [joint],
  )
}

/** A channel that reaches this far into a nest is open to it, mm. */
const deepEnough = 0.3

function polarOf(p: Point): { theta: number; r: number } {
  const r = Math.hypot(p.x, p.y)
  return { theta: r > 1e-6 ? Number(clock(p).toFixed(2)) : 0, r: Number(r.toFixed(3)) }
}

/** The clock angle at which a groove keeps most distance from every pocket; undefined where none keeps a wall. */
function bestGroove(ask: WayAsk, pockets: readonly Region[]): number | undefined {
  const { R, width, wall } = ask
  let best: { theta: number; free: number } | undefined
  for (let theta = 0; theta < 360; theta += 2) {
    const c = polar(R - width / 2, theta)
    const free = Math.min(R, ...pockets.map((p) => (p.contains(c) ? -1 : distance(c, nearestOn(p, c)))))
    if (!best || free > best.free + 1e-9) best = { theta, free }
  }
  return best && best.free >= width / 2 + wall ? best.theta : undefined
}

function nearestOn(region: Region, p: Point): Point {
  return region.edges.map((e) => nearest(e, p)).reduce((a, b) => (distance(a, p) <= distance(b, p) ? a : b))
}

/** The items of a list that a stretch of the axis passes. */
export function along(items: readonly PlanItem[], z0: number, z1: number): PlanItem[] {
  return items.filter(({ solid }) => planSpan(solid).z1 > z0 && planSpan(solid).z0 < z1)
}
