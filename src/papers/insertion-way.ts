import type { Body } from '../body/body.ts'
import { type Pair, pairOf } from '../body/pair.ts'
import type { Where } from '../checks/finding.ts'
import { firstOf } from '../checks/first-touch.ts'
import { groupBy } from '../checks/group-by.ts'
import { type Moving, movingOf } from '../checks/moving.ts'
import { all } from '../checks/obstacles.ts'
import { type World, worldOf } from '../checks/world.ts'
import type { Assembly, Insertion } from '../resolve/assembly.ts'
import { absentDuring } from './absent-during.ts'
import { gapAlong, type WaySample } from './gap-along.ts'
import { carriedBy } from './rides.ts'

/**
 * One move of the insertion list, from outside the mouth to its place. Depths are heights of the moving unit's
 * blade-side face, mm, as the findings count them; where the unit goes in towards the rear they fall on the way.
 */
export interface InsertionWay {
  /** Tells ways apart: a tube may be drawn over several units. */
  readonly id: string
  readonly insertion: string
  readonly name: string
  /** What is moved: `sleds/main`, `parts/plug`, `sections/tube`. */
  readonly moves: string
  /** The unit whose way it is: what is moved, or the sled that a tube is drawn over. */
  readonly unit: string
  /** Which way the unit travels, seen from what it passes. */
  readonly heading: Insertion['heading']
  readonly from: number
  readonly to: number
  /** Least gap that is asked for, mm. */
  readonly limit: number
  /** From outside to its place; every touch is one of them. */
  readonly samples: readonly WaySample[]
  /** Where it comes against something or too near to it, in the order in which that happens. */
  readonly touches: readonly WayTouch[]
  /** References of what is not there while it moves. */
  readonly absent: readonly string[]
  /** References of all that moves with it, itself first. */
  readonly carries: readonly string[]
}

/** What comes against what, first on the way in, at measured sizes. */
export interface WayTouch {
  readonly depth: number
  readonly at: Where
  /** How far the two would overlap at most, mm; 0 where they only come nearer than they may. */
  readonly overlap: number
  readonly mover: string
  readonly obstacle: string
  /** References of the two: `parts/cell`, `sections/body/mouth`. */
  readonly parts: readonly [string, string]
}

/** The way begins so far outside the mouth, mm. */
const before = 2
/** Depths looked at are at most this far apart, mm, unless the way is very long. */
const finest = 0.5
const mostSamples = 400

/** Every move of the insertion list, by the same bodies and the same obstacles as the check of the way in. */
export function insertionWays(assembly: Assembly): InsertionWay[] {
  const world = worldOf(assembly)
  return assembly.insertions.flatMap((i) =>
    movingOf(world, i)
      .filter((m) => m.bodies.length > 0)
      .map((m) => wayOf(world, i, m)),
  )
}

function wayOf(world: World, i: Insertion, moving: Moving): InsertionWay {
  const { assembly } = world
  const sled = moving.bodies.find((b) => b.of.startsWith('sleds/'))?.of
  const unit = i.moves.startsWith('sections/') ? (sled ?? i.moves) : i.moves
  const limit = assembly.thresholds.clearance.value
  const pairs = moving.bodies.flatMap((a) =>
    all(moving.obstacles)
      .filter((o) => !moving.meant(a, o))
      .map((b) => pairOf(a, b, moving.heading)),
  )
  const { from, to, sign } = travel(i, moving)
  const named = (b: Body): string =>
    b.of.startsWith('sleds/') ? (assembly.sleds.find((s) => `sleds/${s.id}` === b.of)?.name ?? b.name) : b.name
  const touches = touchesOf(pairs, limit, to, sign, named)
  const depths = depthsOf(from, to, touches)
  return {
    id: `${i.id}:${unit}`,
    insertion: i.id,
    name: i.name,
    moves: i.moves,
    unit,
    heading: moving.heading,
    from,
    to,
    limit,
    samples: gapAlong(pairs, depths, to, named),
    touches,
    absent: absentDuring(assembly, i, moving),
    carries: carriedBy(assembly, i.moves),
  }
}

/** From where its leading face stands a little outside the mouth to its place. */
function travel(i: Insertion, m: Moving): { from: number; to: number; sign: 1 | -1 } {
  const ends = m.bodies.map((b) => {
    const s = b.shape
    return s.kind === 'pin'
      ? { rear: s.z.nominal - s.radius.nominal, blade: s.z.nominal }
      : { rear: s.z0.nominal, blade: s.z1.nominal }
  })
  const to = Math.max(...ends.map((e) => e.blade))
  const sign = m.heading === 'blade' ? 1 : -1
  const leading = sign > 0 ? to : Math.min(...ends.map((e) => e.rear))
  const way = Math.max(0, sign * (leading - i.opening)) + before
  return { from: to - sign * way, to, sign }
}

/** The first touch of each thing that moves with each thing it meets. */
function touchesOf(
  pairs: readonly Pair[],
  limit: number,
  to: number,
  sign: 1 | -1,
  named: (b: Body) => string,
): WayTouch[] {
  const groups = groupBy(pairs, ({ a, b }) => `${a.of} ${b.id}`)
  return [...groups.values()]
    .flatMap((group): WayTouch[] => {
      const touch = firstOf(
        group.map((pair) => ({ pair, limit })),
        to,
      )
      if (!touch) return []
      const { depth, at, overlap, demand } = touch
      const { a, b } = demand.pair
      return [{ depth, at, overlap, mover: named(a), obstacle: b.name, parts: [a.of, b.of] }]
    })
    .sort((a, b) => sign * (a.depth - b.depth))
}

/** Evenly from outside to its place, and every touch that lies between. */
function depthsOf(from: number, to: number, touches: readonly WayTouch[]): number[] {
  const way = Math.abs(to - from)
  const step = Math.max(finest, way / mostSamples)
  const count = Math.max(1, Math.ceil(way / step))
  const even = Array.from({ length: count + 1 }, (_, k) => from + ((to - from) * k) / count)
  const between = touches.map((t) => t.depth).filter((d) => (d - from) * (to - d) > 0)
  const sign = Math.sign(to - from)
  return [...new Set([...even, ...between])].toSorted((a, b) => sign * (a - b))
}
