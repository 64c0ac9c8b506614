import type { State } from '../resolve/assembly.ts'
import { type Finding, finding } from './finding.ts'
import { gapFixes } from './fixes.ts'
import { seenFrom } from './float.ts'
import { boreSeenIn } from './frame.ts'
import { type Demand, tightest } from './group.ts'
import { groupBy } from './group-by.ts'
import { all, around } from './obstacles.ts'
import { isSeat } from './seats.ts'
import { gapReason } from './words.ts'
import { type Check, type Unit, unitOf, type World } from './world.ts'

/** Parts that keep this much more than they need are not reported one by one, mm: the sled around them is. */
const worthTelling = 1

/** In place, in every state: the sled and each thing in it against the hilt and what sticks into it. */
export const clearance: Check = {
  name: 'clearance',
  title: 'In place in the hilt',
  what: 'Gap of the sled and everything in it to the bore and to what sticks into it, where it sits, in every state.',
  run: (world) =>
    world.assembly.sleds.flatMap((sled) => {
      const unit = unitOf(world, sled)
      return alike(world, unit).flatMap(({ state, names }) => inState(world, unit, state, names))
    }),
}

/** States with the same surroundings, and the same of the sled, are looked at once. */
function alike(world: World, { sled, contents }: Unit): { state: State; names: string }[] {
  const own = [`sleds/${sled.id}`, ...new Set(contents.map((b) => b.of))]
  const surroundings = (state: State) =>
    [...all(around(world, state)).map((b) => b.id), 'without', ...own.filter((of) => state.without.has(of))].join()
  const groups = groupBy(world.states, surroundings)
  return [...groups.values()].map((states) => ({
    state: states[0] as State,
    names: states.length === world.assembly.states.length ? 'every state' : states.map((s) => s.name).join(', '),
  }))
}

function inState(world: World, unit: Unit, state: State, names: string): Finding[] {
  const limit = world.assembly.thresholds.clearance
  return [...inPlace(world, unit, state)].flatMap(([of, demands]): Finding[] => {
    const t = tightest(demands)
    if (!t) return []
    const isSled = of === `sleds/${unit.sled.id}`
    if (!isSled && t.margins.worst > worthTelling) return []
    const name = isSled ? unit.sled.name : (demands[0] as Demand).a.name
    return [
      finding({
        id: `clearance:${of}:${state.id}`,
        check: 'clearance',
        title: `${name} in place: ${t.pair.b.name}`,
        value: t.nominal.hi,
        limit: limit.value,
        unit: 'mm',
        margins: t.margins,
        contributions: t.contributions,
        at: t.at,
        parts: [of, t.pair.b.of],
        state: names,
        why: gapReason(t),
        source: `least clearance: ${limit.source}`,
        fix: gapFixes(world, t, of),
      }),
    ]
  })
}

/** What must keep its distance in place, by the record it belongs to. Nothing where the sled is not there. */
export function inPlace(world: World, unit: Unit, state: State): Map<string, Demand[]> {
  const { sled } = unit
  if (state.without.has(`sleds/${sled.id}`)) return new Map()
  const limit = world.assembly.thresholds.clearance.value
  const obstacles = around(world, state)
  const present = unit.contents.filter((b) => !state.without.has(b.of))
  const seen = boreSeenIn(sled)
  const intrusions = obstacles.intrusions.map(seenFrom(world, unit, state))
  const groups = groupBy([...unit.outside, ...present], (b) => b.of)
  return new Map(
    [...groups].map(([of, bodies]) => [
      of,
      bodies.flatMap((body): Demand[] => [
        ...obstacles.bores.filter((b) => !isSeat(sled, body, b.body)).map((b) => ({ a: body, b: seen(b.body), limit })),
        ...intrusions.map((b) => ({ a: body, b, limit })),
      ]),
    ]),
  )
}
