import { rememberOn } from '../../geometry/remember.ts'
import type { Heading } from '../../geometry/solid/sweep.ts'
import type { Body } from '../body/body.ts'
import { gapAt } from '../body/gap-at.ts'
import { type Pair, pairOf } from '../body/pair.ts'
import { most, shift } from '../quantity/quantity.ts'
import type { Sled } from '../resolve/assembly.ts'
import type { Section, Step } from '../resolve/metal.ts'
import type { Fix } from './finding.ts'
import { step as grid, heightFix, nominalOf, upTo } from './fix-value.ts'
import type { Tightest } from './group.ts'
import { mm } from './words.ts'
import type { World } from './world.ts'

/** Farther than this is no matter of an end that stands a little too far in, mm. */
const farthest = 20

/**
 * Where a sled runs against a shoulder or the end of a bore: how much shorter it, or how much deeper the bore, would
 * have to be. Nothing where drawing it back does not help.
 */
export function alongFixes(world: World, sled: Sled, t: Tightest): Fix[] {
  const metal = world.assembly.bores.find((b) => b.body.id === t.pair.b.id)
  if (!metal) return []
  const heading = t.pair.way ?? (middle(t.pair.b) > middle(t.pair.a) ? 'blade' : 'rear')
  const back = drawBack[heading](t.pair, t.limit)
  if (back === undefined) return []
  return [...shorter(world, sled, heading, back), ...deeper(world, metal.section, metal.step, heading, back)]
}

function middle({ shape: s }: Body): number {
  return s.kind === 'pin' ? s.z.nominal : (s.z0.nominal + s.z1.nominal) / 2
}

/** How far the first body has to be drawn back, against its heading, for the gap that is needed, mm. */
const drawBack: Readonly<Record<Heading, (pair: Pair, limit: number) => number | undefined>> = {
  blade: rememberOn(drawnBack(-1)),
  rear: rememberOn(drawnBack(1)),
}

function drawnBack(sign: 1 | -1) {
  return ({ a, b, way }: Pair, limit: number): number | undefined => {
    const s = a.shape
    if (s.kind === 'pin') return undefined
    const holds = (by: number) => {
      const moved = { ...a, shape: { ...s, z0: shift(s.z0, sign * by), z1: shift(s.z1, sign * by) } }
      return gapAt(pairOf(moved, b, way), 'worst').lo >= limit - 1e-9
    }
    if (!holds(farthest)) return undefined
    let [short, enough] = [0, farthest]
    while (enough - short > grid / 4) {
      const half = (short + enough) / 2
      if (holds(half)) enough = half
      else short = half
    }
    return enough
  }
}

/** The sled's own end farther back, where its contents leave it that much. */
function shorter(world: World, sled: Sled, heading: Heading, back: number): Fix[] {
  const field = heading === 'blade' ? 'to' : 'from'
  const input = sled.input[field]
  if (input === undefined) return []
  const end = heading === 'blade' ? sled.ends.blade.nominal : sled.ends.rear.nominal
  const by = heading === 'blade' ? -back : back
  const inside = world.assembly.parts.filter((p) => p.sled === sled.id && p.goesIn === 'with-sled')
  const held = inside.every((p) =>
    heading === 'blade' ? most(p.ends.blade) <= end + by : p.ends.rear.nominal >= end + by,
  )
  const change = heightFix(`sleds/${sled.id}/${field}`, input, end, by)
  return held && change ? [{ text: `Let ${sled.name} end ${mm(upTo(back))} mm earlier.`, ...change }] : []
}

/** The bore before a shoulder ahead, as deep as it would have to be. */
function deeper(world: World, sectionId: string, stepId: string, heading: Heading, back: number): Fix[] {
  // Sections are laid out from the rear: a longer one moves only what lies towards the blade.
  if (heading === 'rear') return []
  const { sections } = world.assembly
  const at = sections.findIndex((s) => s.id === sectionId)
  const i = sections[at]?.steps.findIndex((s) => s.id === stepId) ?? -1
  if (i > 0) return lengthened(sections, at, sections[at]?.steps[i - 1], back)
  return i === 0 ? lengthened(sections, at - 1, sections[at - 1]?.steps.at(-1), back) : []
}

/** By the field that says how long it is: its own length, or the section's where it takes what is left of that. */
function lengthened(sections: readonly Section[], at: number, step: Step | undefined, by: number): Fix[] {
  const section = sections[at]
  if (!section || !step || step.kind === 'solid') return []
  const { input } = section
  const record = input.bore.find((b, n) => `sections/${section.id}/${b.id ?? n}` === step.id)
  const open = section.steps.find((_, n) => input.bore[n]?.length === undefined)
  // Steps that are all typed make up the section's length: both would have to change.
  if (!record || !open || section.steps.length !== input.bore.length) return []
  const whole = open === step
  if (whole ? sections[at + 1]?.input.z !== undefined : open.z1.nominal - open.z0.nominal < by + 1) return []
  const now = nominalOf(whole ? input.length : record.length)
  if (now === undefined) return []
  const value = upTo(now + by)
  const path = whole ? `sections/${section.id}` : step.id.replace(/^sections\/([^/]+)\//, 'sections/$1/bore/')
  const name = whole ? section.name : step.name
  return [{ text: `It goes in where ${name} is ${mm(value)} mm long.`, path: `${path}/length`, value }]
}
