import { widestChannel } from '../../geometry/packing/channel.ts'
import type { PlanItem } from '../../geometry/plan/plan.ts'
import { clock } from '../../geometry/region/point.ts'
import type { Body } from '../body/body.ts'
import { marginsOf, contributionsOf as shareOf } from '../quantity/margins.ts'
import { add, combine, exact, type Quantity } from '../quantity/quantity.ts'
import type { Bundle, Sled } from '../resolve/assembly.ts'
import { contentRegions } from '../sled/contents.ts'
import { sledJob } from '../sled/job.ts'
import { type Finding, type Fix, finding } from './finding.ts'
import { type Demand, tightest } from './group.ts'
import { reading } from './reading.ts'
import { holds } from './verdict.ts'
import { mm } from './words.ts'
import type { Check, World } from './world.ts'

/** Wires: the bundle in its channel, and the channel past everything the sled carries. */
export const wireChannel: Check = {
  name: 'wire-channel',
  title: 'Way for the wires',
  what: 'Whether the wire bundle goes through the channel, and the channel past all parts.',
  run: (world) =>
    world.assembly.sleds.flatMap((sled) =>
      channels(world, sled).flatMap((c) => [...bundleFits(world, sled, c), ...passes(world, sled, c)]),
    ),
}

type Channel = PlanItem & { readonly solid: Extract<PlanItem['solid'], { shape: 'cylinder' }> }

function channels(world: World, sled: Sled): Channel[] {
  const items = world.plans.get(sled.id)?.bodies.flatMap((b) => b.items) ?? []
  const own = items.filter((x): x is Channel => x.nest === 'wire channel' && x.solid.shape === 'cylinder')
  // A sled printed in pieces has one channel through all of them.
  return own.filter((x, i) => own.findIndex((o) => o.id === x.id) === i)
}

function bundleFits(world: World, sled: Sled, c: Channel): Finding[] {
  const own = world.assembly.wires.filter((w) => w.sled === sled.id)
  if (own.length === 0) return []
  const bundle = together(own)
  const play = world.assembly.thresholds['wire-gap']
  const width = 2 * c.solid.r0
  const margin = combine([
    [exact(width), 1],
    [bundle, -1],
    [sled.print.error, -2],
  ])
  const margins = marginsOf(margin)
  const contributions = shareOf(margin)
  return [
    finding({
      id: `wire-channel:${c.id}:bundle`,
      check: 'wire-channel',
      title: 'Wire bundle in its channel',
      value: width - bundle.nominal,
      limit: 0,
      unit: 'mm',
      margins,
      contributions,
      at: { z: sled.ends.rear.nominal, theta: 0, r: Math.hypot(c.solid.x, c.solid.y) },
      parts: own.map((w) => `wires/${w.id}`),
      state: 'every state',
      why: `Channel ${mm(width)} − bundle ${mm(bundle.nominal)} = ${mm(width - bundle.nominal)} on the diameter, ${mm(margins.worst)} at the worst.`,
      source: `play of a bundle: ${play.source}; envelope of equal wires by circle packing`,
      fix: holds(margins)
        ? []
        : [
            {
              text: `Make the channel ${mm(Math.ceil((width - margins.worst) * 20) / 20)} mm wide.`,
              path: `${c.id}/width`,
              value: Math.ceil((width - margins.worst) * 20) / 20,
            },
            ...reading(world, { contributions, margins }),
          ],
    }),
  ]
}

/** Several bundles in one channel: packed to 0.6 of its area, never below the two largest. */
function together(own: readonly Bundle[]): Quantity {
  if (own.length === 1) return (own[0] as Bundle).diameter
  const sorted = [...own].sort((a, b) => b.diameter.nominal - a.diameter.nominal)
  const two = add((sorted[0] as Bundle).diameter, (sorted[1] as Bundle).diameter)
  const packed = Math.sqrt(own.reduce((sum, w) => sum + w.diameter.nominal ** 2, 0) / 0.6)
  return packed > two.nominal ? { nominal: packed, terms: two.terms } : two
}

function passes(world: World, sled: Sled, c: Channel): Finding[] {
  const { x, y, r0, z0, z1 } = c.solid
  const body: Body = {
    id: c.id,
    of: c.id,
    name: 'wire channel',
    shape: { kind: 'round', x: exact(x), y: exact(y), r0: exact(r0), r1: exact(r0), z0: exact(z0), z1: exact(z1) },
  }
  const contents = world.assembly.parts
    .filter(
      (p) => p.sled === sled.id && p.goesIn === 'with-sled' && p.ends.blade.nominal > z0 && p.ends.rear.nominal < z1,
    )
    .flatMap((p) => p.bodies)
  const t = tightest(contents.map((o): Demand => ({ a: body, b: o, limit: 0 })))
  if (!t) return []
  const R = Math.min(...sled.pieces.map((p) => p.radius))
  const widest = !holds(t.margins) ? widestChannel(R, contentRegions(sledJob(world.assembly, sled))) : undefined
  return [
    finding({
      id: `wire-channel:${c.id}:past`,
      check: 'wire-channel',
      title: `Wire channel past ${t.pair.b.name}`,
      value: t.nominal.hi,
      limit: 0,
      unit: 'mm',
      margins: t.margins,
      contributions: t.contributions,
      at: t.at,
      parts: [c.id, t.pair.b.of],
      state: 'every state',
      why: `Channel ${mm(2 * r0)} wide at radius ${mm(Math.hypot(x, y))}: ${mm(t.nominal.hi)} mm to ${t.pair.b.name}, ${mm(t.margins.worst)} at the worst.${widest ? ` The widest straight channel that fits the whole length is ${mm(Math.max(0, 2 * widest.r))} mm.` : ''}`,
      source: 'a wire beside a part must not be squeezed',
      fix: holds(t.margins) ? [] : elsewhere(sled, c, widest),
    }),
  ]
}

/** Another way for a typed channel where there is one; else less to lead through it. */
function elsewhere(sled: Sled, c: Channel, widest: ReturnType<typeof widestChannel> | undefined): Fix[] {
  const typed = sled.input.channels?.find((o) => c.id === `sleds/${sled.id}/channels/${o.id}`)
  if (typed && widest && widest.r >= c.solid.r0) {
    const [theta, r] = [Number(clock(widest.c).toFixed(1)), Number(Math.hypot(widest.c.x, widest.c.y).toFixed(2))]
    return [{ text: `Lead it at θ ${theta}°, radius ${mm(r)} mm.`, path: c.id, value: { ...typed, theta, r } }]
  }
  const text =
    widest && widest.r > 0.4
      ? `Use wires whose bundle passes ${mm(2 * widest.r)} mm, or move a part.`
      : 'Move a part to make way for the wires.'
  return [{ text, path: `sleds/${sled.id}/channels` }]
}
