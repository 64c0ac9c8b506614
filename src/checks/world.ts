import type { Plan } from '../../geometry/plan/plan.ts'
import type { Body } from '../body/body.ts'
import type { Assembly, Sled, State } from '../resolve/assembly.ts'
import type { SledFault } from '../sled/job.ts'
import { planOnce } from '../sled/plan-once.ts'
import type { Finding, NotChecked } from './finding.ts'

/** What a check sees. Plans and outsides are made once and shared. */
export interface World {
  readonly assembly: Assembly
  readonly plans: ReadonlyMap<string, Plan>
  /** What of a sled cannot be built as asked. */
  readonly faults: ReadonlyMap<string, readonly SledFault[]>
  /** The outside of each sled as bodies. */
  readonly outsides: ReadonlyMap<string, readonly Body[]>
  /** The states to look at. */
  readonly states: readonly State[]
}

export type Result = Finding | NotChecked

/** A check: its name, what it looks at, and how. Adding one is this file's neighbour and a line in `checks.ts`. */
export interface Check {
  readonly name: string
  readonly title: string
  /** In a sentence, for lists and help. */
  readonly what: string
  readonly run: (world: World) => Result[]
}

const made = new WeakMap<Assembly, World>()

/** The world of an assembly, made once; `state` narrows it to one state. */
export function worldOf(assembly: Assembly, state?: string): World {
  const world = made.get(assembly) ?? planned(assembly)
  made.set(assembly, world)
  return state === undefined ? world : { ...world, states: assembly.states.filter((s) => s.id === state) }
}

function planned(assembly: Assembly): World {
  const sleds = assembly.sleds.map((sled) => ({ sled, ...planOnce(assembly, sled) }))
  return {
    assembly,
    plans: new Map(sleds.map((p) => [p.sled.id, p.plan])),
    faults: new Map(sleds.map((p) => [p.sled.id, p.faults])),
    outsides: new Map(sleds.map((p) => [p.sled.id, p.outside])),
    states: assembly.states,
  }
}

/** All that moves as one with a sled: its own outside and everything laid into it. */
export interface Unit {
  readonly sled: Sled
  readonly outside: readonly Body[]
  readonly contents: readonly Body[]
}

export function unitOf(world: World, sled: Sled): Unit {
  const contents = world.assembly.parts
    .filter((p) => p.sled === sled.id && p.goesIn === 'with-sled')
    .flatMap((p) => p.bodies)
  return { sled, outside: world.outsides.get(sled.id) ?? [], contents }
}
