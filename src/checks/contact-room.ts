import type { PlanItem } from '../../geometry/plan/plan.ts'
import type { Body } from '../body/body.ts'
import { exact } from '../quantity/quantity.ts'
import type { Part, Sled } from '../resolve/assembly.ts'
import { type Finding, type Fix, finding } from './finding.ts'
import { downTo } from './fix-value.ts'
import { type Demand, tightest } from './group.ts'
import { reading } from './reading.ts'
import { holds } from './verdict.ts'
import { mm } from './words.ts'
import type { World } from './world.ts'

/** A contact lives in the round pocket of what it presses on and must not be wider than that. */
export function contactRoom(world: World, sled: Sled, contact: Part): Finding[] {
  const walls = pocketsOf(world, sled, contact.contact?.presses ?? '').map((p) => wallOf(sled, p))
  const demands = contact.bodies.flatMap((a) => walls.map((b): Demand => ({ a, b, limit: 0 })))
  const t = tightest(demands)
  if (!t) return []
  return [
    finding({
      id: `nest-fit:${contact.id}`,
      check: 'nest-fit',
      title: `${contact.name} in the pocket it stands in`,
      value: t.nominal.hi,
      limit: 0,
      unit: 'mm',
      margins: t.margins,
      contributions: t.contributions,
      at: t.at,
      parts: [contact.id, `sleds/${sled.id}`],
      state: 'every state',
      why: `${contact.name} to the wall of the pocket: ${mm(t.nominal.hi)} mm as measured, ${mm(t.margins.worst)} at the worst; it must go in.`,
      source: `print error: ${sled.print.source}`,
      fix: holds(t.margins) ? [] : [narrower(contact, -t.margins.worst), ...reading(world, t)],
    }),
  ]
}

/** The widest contact that goes in; one from a preset is chosen anew. */
function narrower({ id, extent, input }: Part, lack: number): Fix {
  const value = downTo(2 * (extent.halfU.nominal - lack))
  const text = `Choose a contact of at most ${mm(value)} mm, or measure the one at hand.`
  const shape = input.body?.shape
  return shape === 'cylinder' && value > 0
    ? { text, path: `${id}/body/diameter`, value }
    : { text, path: input.body ? `${id}/body` : `${id}/preset` }
}

type Pocket = Extract<PlanItem['solid'], { shape: 'cylinder' }>

function pocketsOf(world: World, sled: Sled, of: string): Pocket[] {
  const items = world.plans.get(sled.id)?.bodies.flatMap((b) => b.items) ?? []
  return items.flatMap((x) => (x.by === of && x.op === 'cut' && x.solid.shape === 'cylinder' ? [x.solid] : []))
}

function wallOf(sled: Sled, s: Pocket): Body {
  return {
    id: `sleds/${sled.id}/pocket`,
    of: `sleds/${sled.id}`,
    name: 'wall of the pocket',
    shape: {
      kind: 'bore',
      x: exact(s.x),
      y: exact(s.y),
      z0: exact(s.z0),
      z1: exact(s.z1),
      r0: exact(s.r0),
      r1: exact(s.r1),
    },
    swell: sled.print.error,
  }
}
