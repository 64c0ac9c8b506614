import type { Body } from '../body/body.ts'
import { roughGap } from '../body/rough.ts'
import type { Sled } from '../resolve/assembly.ts'
import { type Finding, type Fix, finding, type NotChecked } from './finding.ts'
import { besideFitting, type Fitting, fittings } from './fitted-after.ts'
import { moveFix } from './fix-move.ts'
import { windowFix } from './fixes.ts'
import { type Tightest, tightest } from './group.ts'
import { reading } from './reading.ts'
import { holds } from './verdict.ts'
import { gapReason, mm } from './words.ts'
import type { Result, World } from './world.ts'

/** Fittings farther from the sled than this are not told of, mm. */
const worthTelling = 20

/** What is fitted after the sled, against the sled and what it carries; and what nobody says how to fit. */
export function besideFitted(world: World): Result[] {
  return [...fittings(world).flatMap((f) => judged(world, f)), ...withoutWay(world)]
}

/**
 * Parts of which nobody says how they come in: on a sled but not with it, or into the bore last without an insertion.
 * What comes through the wall is judged by what stands behind the wall.
 */
function withoutWay(world: World): NotChecked[] {
  const { parts, insertions } = world.assembly
  const lost = parts.filter((p) => {
    if (insertions.some((i) => i.moves === p.id) || p.goesIn === 'with-sled') return false
    const throughWall = p.bodies.every((b) => b.shape.kind === 'pin')
    return p.section === undefined || (p.goesIn === 'after' && !throughWall)
  })
  return lost.map((p) => ({
    id: `fitted-after:${p.id}:way`,
    check: 'fitted-after',
    title: `How ${p.name} goes in`,
    parts: [p.id],
    missing: 'its way in',
    path: p.section === undefined ? `${p.id}/goesIn` : 'insertions',
    hint:
      p.section === undefined
        ? 'Let it go in with the sled, or seat it on a section.'
        : `Add an insertion that moves ${p.id}, after the sled's.`,
  }))
}

function judged(world: World, fitting: Fitting): Finding[] {
  const limit = world.assembly.thresholds['fitted-gap']
  return world.assembly.sleds.flatMap((sled): Finding[] => {
    const t = tightest(besideFitting(world, fitting, sled).filter((d) => roughGap(d.a, d.b) < worthTelling))
    if (!t || t.margins.worst > worthTelling) return []
    return [
      finding({
        id: `fitted-after:${fitting.id}:${sled.id}`,
        check: 'fitted-after',
        title: `${fitting.name} to ${t.pair.a.of.startsWith('sleds/') ? sled.name : t.pair.a.name}`,
        value: t.nominal.hi,
        limit: limit.value,
        unit: 'mm',
        margins: t.margins,
        contributions: t.contributions,
        at: t.at,
        parts: [fitting.id, t.pair.a.of],
        state: 'closed',
        why: `${gapReason(t)}${windowText(t.pair.b)}`,
        source: `least gap to fitted parts: ${limit.source}`,
        fix: holds(t.margins) ? [] : [...apart(world, sled, fitting, t), ...reading(world, t)],
      }),
    ]
  })
}

/** What the sled must leave open, in numbers. */
function windowText(b: Body): string {
  if (b.shape.kind !== 'pin') return ''
  const { z, radius, rIn, theta } = b.shape
  return ` It takes up z ${mm(z.nominal - radius.nominal)} to ${mm(z.nominal + radius.nominal)} at θ ${theta.toFixed(0)}°, ${inwards(rIn.nominal)}.`
}

/** Room in the sled's outside, or another place for what is in it. */
function apart(world: World, sled: Sled, fitting: Fitting, t: Tightest): Fix[] {
  const { a, b } = t.pair
  if (a.of.startsWith('sleds/')) return windowFix(world, sled.id, fitting.id, fitting.name, t)
  const part = world.assembly.parts.find((p) => p.id === a.of)
  const moves = part ? moveFix(world, sled, part, [{ a, b, limit: t.limit }]) : []
  return moves.length > 0 ? moves : [{ text: `Move ${a.name} or ${fitting.name} apart.`, path: `${a.of}/at` }]
}

const inwards = (radius: number): string =>
  radius < 0 ? `across the axis and ${mm(-radius)} mm past it` : `inwards to radius ${mm(radius)}`
