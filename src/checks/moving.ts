import type { Body } from '../body/body.ts'
import { oneBody } from '../body/one-body.ts'
import { add, type Quantity } from '../quantity/quantity.ts'
import type { Insertion, Part, Sled } from '../resolve/assembly.ts'
import { boreSeenIn, outOf, seenIn, turnOf } from './frame.ts'
import { during, isInBefore, type Obstacles } from './obstacles.ts'
import { isSeat } from './seats.ts'
import { unitOf, type World } from './world.ts'

/** What one move of the insertion list brings past what. */
export interface Moving {
  /** What moves, or, for a tube drawn over it, what stays: the unit in the tube's own frame. */
  readonly bodies: readonly Body[]
  readonly obstacles: Obstacles
  readonly heading: Insertion['heading']
  readonly meant: (body: Body, obstacle: Body) => boolean
}

/** Each thing that moves; a tube passes every sled that is there. */
export function movingOf(world: World, i: Insertion): Moving[] {
  const { assembly } = world
  const [list, id] = i.moves.split('/') as [string, string]
  if (list === 'sections') return tubeOver(world, i, id)
  const { bores, intrusions } = during(world, i)
  if (list === 'parts') {
    const part = assembly.parts.find((p) => p.id === i.moves)
    const inside = assembly.sleds.flatMap((s) => insideOf(world, s)).filter((b) => b.of !== i.moves)
    const obstacles = { bores, intrusions: [...intrusions, ...inside] }
    return part ? [{ bodies: part.bodies, obstacles, heading: i.heading, meant: () => false }] : []
  }
  const sled = assembly.sleds.find((s) => s.id === id)
  if (!sled) return []
  const inside = assembly.sleds.filter((s) => s !== sled && sledIsIn(world, s, i)).flatMap((s) => insideOf(world, s))
  const [seen, boreSeen] = [seenIn(sled), boreSeenIn(sled)]
  return [
    {
      bodies: bodiesOf(world, sled),
      obstacles: {
        bores: bores.map((b) => ({ ...b, body: boreSeen(b.body) })),
        intrusions: [...intrusions, ...inside].map(turnedBy(turnOf(sled))).map(seen),
      },
      heading: i.heading,
      meant: (b, o) => isSeat(sled, b, o, i.heading),
    },
  ]
}

/**
 * A tube drawn over a unit that stands still: seen from the tube, the unit travels. Where the mouth named is the
 * tube's own, the unit goes in by it; where it is the one the tube is brought to, the unit travels the other way.
 */
function tubeOver(world: World, i: Insertion, id: string): Moving[] {
  const { assembly } = world
  const bores = assembly.bores.filter((b) => b.section === id)
  const isIn = isInBefore(world, i)
  const own = [
    ...assembly.intrusions.filter((x) => x.section === id && isIn(x.body.id, x.fitted)).map((x) => x.body),
    ...assembly.parts.filter((p) => p.section === id && isIn(p.id, p.goesIn)).flatMap((p) => p.bodies),
  ]
  const heading = i.section === id ? i.heading : i.heading === 'blade' ? 'rear' : 'blade'
  const standing = partsBefore(assembly, id, heading).filter((p) => isIn(p.id, p.goesIn))
  const sleds = assembly.sleds
    .filter((s) => sledIsIn(world, s, i))
    .map(
      (sled): Moving => ({
        bodies: bodiesOf(world, sled),
        obstacles: {
          bores: bores.map((b) => ({ ...b, body: boreSeenIn(sled)(b.body) })),
          intrusions: own.map(turnedBy(turnOf(sled))).map(seenIn(sled)),
        },
        heading,
        meant: (b, o) => isSeat(sled, b, o, heading),
      }),
    )
  const bodies = standing.flatMap((p) => p.bodies)
  return bodies.length > 0
    ? [...sleds, { bodies, obstacles: { bores, intrusions: own }, heading, meant: () => false }]
    : sleds
}

/** Parts in the walls of the sections that a tube is brought to, or that go in by themselves: they may stand out. */
function partsBefore({ parts, sections }: World['assembly'], tube: string, heading: Insertion['heading']): Part[] {
  const rear = (id: string | undefined) => sections.find((s) => s.id === id)?.ends.rear.nominal ?? 0
  return parts.filter((p) =>
    p.section === undefined
      ? p.goesIn !== 'with-sled'
      : p.section !== tube && rear(p.section) < rear(tube) === (heading === 'blade'),
  )
}

function bodiesOf(world: World, sled: Sled): Body[] {
  const unit = unitOf(world, sled)
  return [...unit.outside, ...unit.contents]
}

/** A sled and what it carries as something else meets them: where it truly lies, and turned as it may be. */
const insideOf = (world: World, sled: Sled): Body[] =>
  bodiesOf(world, sled)
    .map(outOf(sled))
    .map(turnedBy(turnOf(sled)))

/** A sled nobody says how to insert counts as there, so that nothing is left out. */
function sledIsIn(world: World, sled: Sled, i: Insertion): boolean {
  return world.assembly.insertions.some(
    (o) =>
      o.moves === `sleds/${sled.id}` && (o.order < i.order || (o.path === 'insertions' && i.path !== 'insertions')),
  )
}

/** What sticks in, turned against a sled that may be off its clock angle. */
const turnedBy =
  (turn: Quantity | undefined) =>
  (b: Body): Body =>
    turn ? oneBody({ ...b, turn: b.turn ? add(b.turn, turn) : turn }) : b
