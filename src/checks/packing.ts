import { clock, turnBetween } from '../../geometry/region/point.ts'
import type { Body } from '../body/body.ts'
import { contributionsOf, marginsOf } from '../quantity/margins.ts'
import { exact, sub } from '../quantity/quantity.ts'
import type { Part, Sled } from '../resolve/assembly.ts'
import { type Finding, finding } from './finding.ts'
import { reading } from './fixes.ts'
import { type Demand, type Tightest, tightest } from './group.ts'
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
          fix: t.margins.worst >= 0 ? [] : [apartBy(t, b), ...reading(t)],
        }),
      ]
    }),
  )
}

/** A contact is meant to touch what it presses on. */
function meant(a: Part, b: Part): boolean {
  return a.contact?.presses === b.id || b.contact?.presses === a.id
}

/** The shift that makes room: the second part farther out or along, by what is lacking. */
function apartBy(t: Tightest, b: Part): { text: string; path: string } {
  return { text: `Move ${b.name} ${mm(-t.margins.worst)} mm away.`, path: `${b.id}/at` }
}

function inside(world: World, sled: Sled): Finding[] {
  return partsOf(world, sled).flatMap((part): Finding[] => {
    const demands = part.bodies.flatMap((body) =>
      wallsBeside(sled, body).map((wall): Demand => ({ a: body, b: wall, limit: 0 })),
    )
    const t = tightest(demands)
    if (!t) return []
    const need = 2 * (radiusBeside(sled, t.at.z) - t.margins.worst)
    const piece = sled.pieces.length === 1 ? sled.pieces[0] : undefined
    return [
      finding({
        ...base(t, `packing:${part.id}:${sled.id}`, [part.id, `sleds/${sled.id}`]),
        title: `${part.name} inside the sled: ${t.pair.a.name}`,
        limit: 0,
        source: 'a part that stands out of the sled is not carried by it',
        why: `Farthest corner of ${t.pair.a.name} lies ${mm(t.nominal.hi)} mm inside the sled as measured, ${mm(t.margins.worst)} at the worst. The smallest sled on the axis that holds it is ${mm(need)} mm in diameter.`,
        fix:
          t.margins.worst >= 0 || !piece
            ? []
            : [
                {
                  text: `A sled of ${mm(Math.ceil(need * 20) / 20)} mm holds it; check that it still goes in.`,
                  path: piece.path,
                  value: Math.ceil(need * 20) / 20,
                },
                ...reading(t),
              ],
      }),
    ]
  })
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
      if (margins.worst >= 0) return []
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
            { text: `Let the sled reach ${mm(-margins.worst)} mm farther.`, path: `sleds/${sled.id}/${path}` },
            ...reading({ contributions, margins }),
          ],
        }),
      ]
    })
  })
}

function radiusBeside(sled: Sled, z: number): number {
  return (sled.pieces.find((p) => z >= p.z0 && z <= p.z1) ?? sled.pieces[0])?.radius ?? 0
}

/** The sled's outside, seen from within, as a wall around the part; beside a tower it is the tower's. */
function wallsBeside(sled: Sled, body: Body): Body[] {
  const s = body.shape
  if (s.kind === 'pin') return []
  const tower = towerAround(sled, body)
  return sled.pieces
    .filter((p) => p.z1 > s.z0.nominal && p.z0 < s.z1.nominal)
    .map((p) => {
      const r = exact(Math.max(p.radius, tower))
      return {
        id: `sleds/${sled.id}/wall`,
        of: `sleds/${sled.id}`,
        name: 'outside of the sled',
        shape: { kind: 'bore', x: exact(0), y: exact(0), z0: exact(p.z0), z1: exact(p.z1), r0: r, r1: r },
      }
    })
}

/** Outer radius of the tower a body stands in, 0 where it stands in none. */
function towerAround(sled: Sled, body: Body): number {
  const s = body.shape
  if (s.kind !== 'box') return 0
  const theta = clock({ x: s.x.nominal, y: s.y.nominal })
  const found = (sled.input.towers ?? []).find((t) => {
    const path = `sleds/${sled.id}/towers/${t.id}`
    const [from, to] = [sled.drawn.get(`${path}/from`), sled.drawn.get(`${path}/to`)]
    const beside = Math.abs(turnBetween(t.theta, theta)) < (t.half ?? 20)
    return beside && from !== undefined && to !== undefined && s.z0.nominal >= from && s.z1.nominal <= to
  })
  return found?.outer ?? 0
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
