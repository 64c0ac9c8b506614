import { isPushed } from '../project/forms.ts'
import { contributionsOf, marginsOf } from '../quantity/margins.ts'
import { sub } from '../quantity/quantity.ts'
import type { Part, Sled } from '../resolve/assembly.ts'
import { type Finding, type Fix, finding } from './finding.ts'
import { moveFix } from './fix-move.ts'
import { wider } from './fix-outside.ts'
import { smaller } from './fix-size.ts'
import { heightFix } from './fix-value.ts'
import { type Demand, type Tightest, tightest } from './group.ts'
import { reading } from './reading.ts'
import { wallsBeside } from './sled-walls.ts'
import { holds } from './verdict.ts'
import { gapReason, mm } from './words.ts'
import type { Check, World } from './world.ts'

/** Two parts farther apart than this are not a pair worth telling of, mm. */
const worthTelling = 3

/** In the cross-section: every two parts of a sled against each other, and each inside the sled's outside. */
export const packing: Check = {
  name: 'packing',
  title: 'Packing',
  what: 'Gaps between the parts in a sled, and whether each lies inside the sled, at its tightest corner.',
  run: (world) =>
    world.assembly.sleds.flatMap((sled) => [...pairs(world, sled), ...inside(world, sled), ...along(world, sled)]),
}

const partsOf = (world: World, sled: Sled): Part[] =>
  world.assembly.parts.filter((p) => p.sled === sled.id && p.goesIn === 'with-sled')

function pairs(world: World, sled: Sled): Finding[] {
  const limit = world.assembly.thresholds['part-gap']
  const parts = partsOf(world, sled)
  return parts.flatMap((a, i) =>
    parts.slice(i + 1).flatMap((b): Finding[] => {
      if (meant(a, b)) return []
      const demands = a.bodies.flatMap((p) => b.bodies.map((q): Demand => ({ a: p, b: q, limit: limit.value })))
      const t = tightest(demands)
      if (!t || t.margins.worst > worthTelling) return []
      return [
        finding({
          ...base(t, `packing:${a.id}:${b.id}`, [a.id, b.id]),
          title: `${a.name} beside ${b.name}`,
          limit: limit.value,
          source: `least gap between parts: ${limit.source}`,
          fix: holds(t.margins) ? [] : [...apart(world, sled, t, a, b), ...reading(world, t)],
        }),
      ]
    }),
  )
}

/** A contact is meant to touch what it presses on. */
function meant(a: Part, b: Part): boolean {
  return a.contact?.presses === b.id || b.contact?.presses === a.id
}

/** The move that makes room: of the one or of the other part. */
function apart(world: World, sled: Sled, t: Tightest, a: Part, b: Part): Fix[] {
  const limit = world.assembly.thresholds['part-gap'].value
  const needs = a.bodies.flatMap((p) => b.bodies.map((q): Demand => ({ a: p, b: q, limit })))
  const moves = [b, a].flatMap((part) => moveFix(world, sled, part, needs))
  return moves.length > 0 ? moves : [{ text: `Move ${b.name} ${mm(-t.margins.worst)} mm away.`, path: `${b.id}/at` }]
}

function inside(world: World, sled: Sled): Finding[] {
  return partsOf(world, sled).flatMap((part): Finding[] => {
    const demands = part.bodies.flatMap((body) =>
      wallsBeside(sled, body).map((wall): Demand => ({ a: body, b: wall, limit: 0 })),
    )
    const t = tightest(demands)
    if (!t) return []
    const need = 2 * (radiusBeside(sled, t.at.z) - t.margins.worst)
    return [
      finding({
        ...base(t, `packing:${part.id}:${sled.id}`, [part.id, `sleds/${sled.id}`]),
        title: `${part.name} inside the sled: ${t.pair.a.name}`,
        limit: 0,
        source: 'a part that stands out of the sled is not carried by it',
        why: `Farthest corner of ${t.pair.a.name} lies ${insideText(t.nominal.hi)} as measured, ${insideText(t.margins.worst)} at the worst. The smallest sled on the axis that holds it is ${mm(need)} mm in diameter.`,
        fix: holds(t.margins)
          ? []
          : [
              ...moveFix(world, sled, part, demands),
              ...holding(sled, part, t.at.z, need / 2),
              ...smaller(part, -t.margins.worst),
              ...reading(world, t),
            ],
      }),
    ]
  })
}

const insideText = (by: number): string => `${mm(Math.abs(by))} mm ${by < 0 ? 'outside' : 'inside'} the sled`

/** A sled wide enough to hold it; one that is pushed to the outside goes with it. */
function holding(sled: Sled, part: Part, z: number, radius: number): Fix[] {
  if (part.input.at?.across && isPushed(part.input.at.across)) return []
  return wider(sled, z, radius).map((f) => ({ ...f, text: `${f.text} It holds it then; check that it still goes in.` }))
}

/** Along the axis: a part that reaches past an end of the sled is not carried by it there. */
function along(world: World, sled: Sled): Finding[] {
  return partsOf(world, sled).flatMap((part): Finding[] => {
    const ends = [
      { end: 'rear', left: sub(part.ends.rear, sled.ends.rear), path: 'from', z: sled.ends.rear },
      { end: 'blade', left: sub(sled.ends.blade, part.ends.blade), path: 'to', z: sled.ends.blade },
    ] as const
    return ends.flatMap(({ end, left, path, z }): Finding[] => {
      const margins = marginsOf(left)
      if (holds(margins)) return []
      const contributions = contributionsOf(left)
      return [
        finding({
          id: `packing:${part.id}:${sled.id}:${end}`,
          check: 'packing',
          title: `${part.name} reaches past the ${end} end of ${sled.name}`,
          value: left.nominal,
          limit: 0,
          unit: 'mm',
          margins,
          contributions,
          at: { z: z.nominal, theta: 0, r: 0 },
          parts: [part.id, `sleds/${sled.id}`],
          state: 'every state',
          why: `${part.name} from z ${mm(part.ends.rear.nominal)} to ${mm(part.ends.blade.nominal)}; ${sled.name} from z ${mm(sled.ends.rear.nominal)} to ${mm(sled.ends.blade.nominal)}: ${mm(left.nominal)} mm at its ${end} end, ${mm(margins.worst)} at the worst.`,
          source: 'a part that stands out of the sled is not carried by it',
          fix: [
            ...farther(sled, path, path === 'from' ? margins.worst : -margins.worst),
            ...reading(world, { contributions, margins }),
          ],
        }),
      ]
    })
  })
}

/** An end that is typed, farther out. */
function farther(sled: Sled, field: 'from' | 'to', by: number): Fix[] {
  const now = sled.ends[field === 'from' ? 'rear' : 'blade'].nominal
  const change = heightFix(`sleds/${sled.id}/${field}`, sled.input[field], now, by)
  return change ? [{ text: `Let the sled reach ${mm(Math.abs(by))} mm farther.`, ...change }] : []
}

function radiusBeside(sled: Sled, z: number): number {
  return (sled.pieces.find((p) => z >= p.z0 && z <= p.z1) ?? sled.pieces[0])?.radius ?? 0
}

function base(t: Tightest, id: string, parts: readonly string[]) {
  return {
    id,
    check: 'packing',
    value: t.nominal.hi,
    unit: 'mm',
    margins: t.margins,
    contributions: t.contributions,
    at: t.at,
    parts,
    state: 'every state',
    why: gapReason(t),
  } as const
}
