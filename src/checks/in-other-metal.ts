import type { Body } from '../body/body.ts'
import { roughGap } from '../body/rough.ts'
import { isThere } from '../body/there.ts'
import { least, most, reachOf } from '../quantity/quantity.ts'
import type { Section, Step } from '../resolve/metal.ts'
import { filled, nearest } from './cross-reach.ts'
import { type Finding, finding } from './finding.ts'
import { type Demand, tightest } from './group.ts'
import { reading } from './reading.ts'
import { holds } from './verdict.ts'
import { isInState, stateNames, type WallThing, wallThings } from './wall-things.ts'
import { gapReason, mm } from './words.ts'
import type { Result, World } from './world.ts'

/** What keeps this much more than it needs is not told, mm. */
const worthTelling = 1
/** No press fit takes up more than this on the diameter, mm: common practice, no source. */
const mostPressed = 0.5

/** Parts in the wall and the metal that is not their own, and those that would take the place of their own. */
export function inOtherMetal(world: World): Result[] {
  const { sections } = world.assembly
  return wallThings(world)
    .filter((t) => t.part)
    .flatMap((thing) => [
      ...sections.filter((s) => s.id !== thing.section).flatMap((s) => inBore(world, thing, s)),
      ...sections.filter((s) => s.id === thing.section).flatMap((s) => acrossOwn(thing, s)),
    ])
}

function inBore(world: World, thing: WallThing, section: Section): Finding[] {
  const states = world.states.filter((s) => isInState(thing, s) && !s.without.has(`sections/${section.id}`))
  // What points at the axis goes through the walls of both where tubes engage.
  const bodies = thing.bodies.filter((b) => b.shape.kind !== 'pin' && !isOver(b, section))
  const bores = world.assembly.bores.filter(
    (b) => b.section === section.id && states.some((s) => isThere(b.body.states, s.id)),
  )
  const demands = bodies
    .flatMap((a) => bores.map((b): Demand => ({ a, b: b.body, limit: 0 })))
    .filter((d) => roughGap(d.a, d.b) < worthTelling)
  const t = tightest(demands)
  if (!t || t.margins.worst > worthTelling) return []
  // What may lie around the tube is not surely in its metal.
  const may = nearest(t.pair.a.shape).most > outsideOf(section, t.pair.a).least
  const { settled, best } = t.margins
  const margins = may ? { ...t.margins, settled: Math.max(0, settled), best: Math.max(0, best) } : t.margins
  return [
    finding({
      id: `in-the-wall:${thing.id}:sections/${section.id}`,
      check: 'in-the-wall',
      title: `${thing.name} in ${t.pair.b.name}`,
      value: t.nominal.hi,
      limit: 0,
      unit: 'mm',
      margins,
      contributions: t.contributions,
      at: t.at,
      parts: [thing.id, t.pair.b.of],
      state: stateNames(world, states),
      why: gapReason(t),
      source: 'two things cannot be in one place',
      fix: holds(margins)
        ? []
        : [{ text: `Move ${thing.name}, or choose a smaller one.`, path: `${thing.id}/at` }, ...reading(world, t)],
    }),
  ]
}

/** Surely around the outside of a section, not in it. */
const isOver = (b: Body, section: Section): boolean => nearest(b.shape).least >= outsideOf(section, b).most

/** Outside radius of a section beside a body; without end where it was not measured. */
function outsideOf(section: Section, { shape: s }: Body): { readonly least: number; readonly most: number } {
  const beside = section.outside.filter((o) => s.kind !== 'pin' && most(o.z1) > least(s.z0) && least(o.z0) < most(s.z1))
  if (beside.length === 0) return { least: Number.POSITIVE_INFINITY, most: Number.POSITIVE_INFINITY }
  return {
    least: Math.min(...beside.map((o) => Math.min(least(o.d0), least(o.d1)))) / 2,
    most: Math.max(...beside.map((o) => Math.max(most(o.d0), most(o.d1)))) / 2,
  }
}

/**
 * Its own wall gives it what room was cut for it, which is not always told. One that fills the bore and more all around
 * is past that: beyond the outside it cannot be, and within the wall it is asked what it sits in.
 */
function acrossOwn(thing: WallThing, section: Section): Result[] {
  const { id, name } = thing
  for (const b of thing.bodies) {
    const s = b.shape
    if (s.kind === 'pin') continue
    const width = filled(s)
    const open = s.kind === 'sector' ? most(s.rIn) : 0
    const beside = section.steps.filter((o) => least(o.z1) > most(s.z0) && most(o.z0) < least(s.z1))
    const bore = Math.max(0, ...beside.map(boreReach))
    const out = outsideOf(section, b)
    if (beside.length === 0) continue
    if (width.least > out.most && open < out.least) return [beyond(thing, b, section, width, out)]
    if (2 * (width.least - bore) > mostPressed && open < out.least)
      return [
        {
          id: `in-the-wall:${id}:own`,
          check: 'in-the-wall',
          title: `${name} in ${section.name}`,
          parts: [id, `sections/${section.id}`],
          missing: `the bore step that ${name} sits in`,
          path: `sections/${section.id}/bore`,
          hint: `It is at least ${mm(2 * width.least)} wide and the bore there ${mm(2 * bore)} at most: add the recess as a bore step, or correct one of them.`,
        },
      ]
  }
  return []
}

/** From the axis to the farthest of a bore's wall; without end where it was not measured. */
function boreReach({ r0, r1, x, y }: Step): number {
  if (!r0 || !r1) return Number.POSITIVE_INFINITY
  const aside = Math.hypot(x.nominal, y.nominal) + reachOf(x) + reachOf(y)
  return Math.max(most(r0), most(r1)) + aside
}

function beyond(
  { id, name }: WallThing,
  { shape }: Body,
  section: Section,
  width: ReturnType<typeof filled>,
  out: ReturnType<typeof outsideOf>,
): Finding {
  const left = out.most - width.least
  const nominal = (out.least + out.most) / 2 - width.nominal
  return finding({
    id: `in-the-wall:${id}:own`,
    check: 'in-the-wall',
    title: `${name} in ${section.name}`,
    value: nominal,
    limit: 0,
    unit: 'mm',
    margins: { worst: out.least - width.most, nominal, settled: left, best: left },
    contributions: [],
    at: { z: shape.kind === 'pin' ? shape.z.nominal : shape.z0.nominal, theta: 0, r: out.most },
    parts: [id, `sections/${section.id}`],
    state: 'every state',
    why: `${name} fills everything to radius ${mm(width.least)} at the least; ${section.name} ends at ${mm(out.most)} there, so that no metal would be left.`,
    source: 'two things cannot be in one place',
    fix: [{ text: `Correct the size of ${name}, or its place.`, path: `${id}/body` }],
  })
}
