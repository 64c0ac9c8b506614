import { roughGap } from '../body/rough.ts'
import { type Finding, type Fix, finding } from './finding.ts'
import { type Demand, tightest } from './group.ts'
import { reading } from './reading.ts'
import { holds } from './verdict.ts'
import { isInState, stateNames, type WallThing, wallThings } from './wall-things.ts'
import { gapReason } from './words.ts'
import type { World } from './world.ts'

/** Two things farther apart than this are not a pair worth telling of, mm. */
const worthTelling = 1

/** Every two things in the wall that are there at once must not be in one place; they may touch. */
export function besideEachOther(world: World): Finding[] {
  const things = wallThings(world)
  return things.flatMap((a, i) => things.slice(i + 1).flatMap((b) => beside(world, a, b)))
}

function beside(world: World, a: WallThing, b: WallThing): Finding[] {
  const demands = a.bodies
    .flatMap((p) => b.bodies.map((q): Demand => ({ a: p, b: q, limit: 0 })))
    .filter((d) => roughGap(d.a, d.b) < worthTelling)
  if (demands.length === 0 || meant(a, b) || meant(b, a)) return []
  const states = world.states.filter((s) => isInState(a, s) && isInState(b, s))
  const t = states.length > 0 ? tightest(demands) : undefined
  if (!t || t.margins.worst > worthTelling) return []
  return [
    finding({
      id: `in-the-wall:${a.id}:${b.id}`,
      check: 'in-the-wall',
      title: `${a.name} beside ${b.name}`,
      value: t.nominal.hi,
      limit: 0,
      unit: 'mm',
      margins: t.margins,
      contributions: t.contributions,
      at: t.at,
      parts: [a.id, b.id],
      state: stateNames(world, states),
      why: gapReason(t),
      source: 'two things cannot be in one place',
      fix: holds(t.margins)
        ? []
        : [
            { text: `Move ${a.name} or ${b.name}; where they touch, place one from the other.`, path: `${a.id}/at` },
            ...screwed(a, b),
            ...reading(world, t),
          ],
    }),
  ]
}

/** A screw that is meant to reach into a part is told from one that is in its way by how the part is held. */
function screwed(a: WallThing, b: WallThing): Fix[] {
  const [part] = [a, b].filter((t) => t.part)
  return part && [a, b].some(isScrew)
    ? [{ text: `If the screw is what holds ${part.name}, say that it is screwed.`, path: `${part.id}/held` }]
    : []
}

const isScrew = (t: WallThing): boolean => t.id.startsWith('screws/')

/** What belongs together as seen from the first. */
function meant(a: WallThing, b: WallThing): boolean {
  const input = a.part?.input
  if (a.part?.contact?.presses === b.id || input?.through === b.id) return true
  if (input?.held === 'screwed' && isScrew(b)) return true
  // The screw's thread, the rivet's hole and the hole a switch is put through are cut in lip and boss as in the wall.
  const throughMetal = !a.part || (a.part.goesIn === 'after' && input?.through !== undefined)
  return b.metal && a.section === b.section && throughMetal
}
