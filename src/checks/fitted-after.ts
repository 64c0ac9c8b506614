import type { Body } from '../body/body.ts'
import type { Sled } from '../resolve/assembly.ts'
import { seenFrom } from './float.ts'
import type { Demand } from './group.ts'
import { rareChecks } from './rare.ts'
import { type Check, unitOf, type World } from './world.ts'

/** What comes through the wall once the sled is in: switch bodies with tags and wire bend, ports, screw tips. */
export const fittedAfter: Check = {
  name: 'fitted-after',
  title: 'Fitted after the sled',
  what: 'Gap of parts and screw tips fitted after the sled to the sled, its windows and what it carries.',
  run: (world) => (hasAny(world) ? rareChecks().besideFitted(world) : []),
}

const hasAny = ({ assembly: { intrusions, parts } }: World): boolean =>
  parts.some((p) => p.goesIn !== 'with-sled') || intrusions.some((i) => i.fitted === 'after')

/** A part or screw tip that comes through the wall last. */
export interface Fitting {
  readonly id: string
  readonly name: string
  readonly bodies: readonly Body[]
}

export function fittings(world: World): Fitting[] {
  const { parts, intrusions } = world.assembly
  return [
    ...parts
      .filter((p) => p.goesIn === 'after' && p.section !== undefined)
      .map((p) => ({ id: p.id, name: p.name, bodies: p.bodies })),
    ...intrusions
      .filter((i) => i.fitted === 'after')
      .map((i) => ({ id: i.body.id, name: i.body.name, bodies: [i.body] })),
  ]
}

/** What must keep its distance from something fitted once the sled is in. */
export function besideFitting(world: World, fitting: Fitting, sled: Sled): Demand[] {
  const limit = world.assembly.thresholds['fitted-gap'].value
  const unit = unitOf(world, sled)
  const { states } = world.assembly
  const closed = states.filter((s) => s.id === 'closed')
  // Where no state is called so, whichever there is may be the one it is used in.
  const seen = (closed.length > 0 ? closed : states).flatMap((s) => fitting.bodies.map(seenFrom(world, unit, s)))
  const inside = [...unit.outside, ...unit.contents]
  return seen.flatMap((b) => inside.map((a): Demand => ({ a, b, limit })))
}
