import { gapAt } from '../body/gap-at.ts'
import { onePair } from '../body/one-pair.ts'
import type { Pair } from '../body/pair.ts'
import { shift } from '../quantity/quantity.ts'
import type { Insertion } from '../resolve/assembly.ts'
import { type Finding, finding } from './finding.ts'
import { firstOf, type Touch } from './first-touch.ts'
import { gapFixes } from './fixes.ts'
import { type Demand, type Tightest, tightest } from './group.ts'
import { groupBy } from './group-by.ts'
import { type Moving, movingOf } from './moving.ts'
import { all } from './obstacles.ts'
import { holds } from './verdict.ts'
import { gapReason, mm } from './words.ts'
import type { Check, World } from './world.ts'

/** Parts that keep this much more than they need are not reported one by one, mm. */
const worthTelling = 1

/**
 * Every move of the insertion list, straight: what moves is drawn out behind itself along its way, so that whatever
 * it clears there it clears at every depth, at the faces and between them.
 */
export const wayIn: Check = {
  name: 'way-in',
  title: 'On the way in',
  what: 'Straight insertion: the gap of what moves to everything it passes, with only what is there at that moment.',
  run: (world) => world.assembly.insertions.flatMap((i) => movingOf(world, i).flatMap((m) => judged(world, i, m))),
}

function judged(world: World, i: Insertion, moving: Moving): Finding[] {
  const limit = world.assembly.thresholds.clearance
  return [...onTheWay(moving, limit.value)].flatMap(([of, demands]): Finding[] => {
    const t = tightest(demands)
    if (!t) return []
    const main = of === i.moves || of.startsWith('sleds/')
    if (!main && t.margins.worst > worthTelling) return []
    const against = demands.filter((d) => d.b.id === t.pair.b.id)
    const touch = !holds(t.margins) ? firstOf(against.map(paired), bladeFace(moving)) : undefined
    return [
      finding({
        id: `way-in:${i.id}:${of}`,
        check: 'way-in',
        title: `${of.startsWith('sleds/') ? sledName(world, of) : (demands[0] as Demand).a.name} ${wayWords(world, i)}: ${t.pair.b.name}`,
        value: t.nominal.hi,
        limit: limit.value,
        unit: 'mm',
        margins: t.margins,
        contributions: t.contributions,
        at: touch ? { ...t.at, z: touch.z } : t.at,
        parts: [of, t.pair.b.of],
        state: i.name,
        why: [gapReason(t), ...(touch ? [touchText(touch, t)] : []), ...largest(t)].join(' '),
        source: `least clearance: ${limit.source}`,
        fix: gapFixes(world, t, of),
      }),
    ]
  })
}

const paired = ({ a, b, way, limit }: Demand) => ({ pair: onePair(a, b, way), limit })

/** What must keep its distance on the way, by the record it belongs to. */
export function onTheWay(moving: Moving, limit: number): Map<string, Demand[]> {
  const obstacles = all(moving.obstacles)
  return new Map(
    [...groupBy(moving.bodies, (b) => b.of)].map(([of, bodies]) => [
      of,
      bodies.flatMap((body) =>
        obstacles
          .filter((o) => !moving.meant(body, o))
          .map((o): Demand => ({ a: body, b: o, way: moving.heading, limit })),
      ),
    ]),
  )
}

/** What is in already and has a tube drawn over it is not on its own way. */
function wayWords(world: World, { moves }: Insertion): string {
  const tube = world.assembly.sections.find((s) => `sections/${s.id}` === moves)
  return tube ? `as ${tube.name} comes over it` : 'on the way in'
}

const sledName = (world: World, of: string): string =>
  world.assembly.sleds.find((s) => `sleds/${s.id}` === of)?.name ?? of

/** Nominal height of the moving unit's blade-side face, which tells the depth. */
function bladeFace(m: Moving): number {
  return Math.max(...m.bodies.map((b) => (b.shape.kind === 'pin' ? b.shape.z : b.shape.z1).nominal))
}

function touchText(touch: Touch, t: Tightest): string {
  const by = touch.overlap > 0 ? `overlapping by up to ${mm(touch.overlap)}` : 'too close'
  return `Pushed in, it first comes ${touch.overlap > 0 ? 'against it' : 'too near to it'} at depth ${touch.depth.toFixed(1)} mm (blade-side face), at z ${touch.z.toFixed(1)}, ${by} at z ${t.at.z.toFixed(1)}.`
}

/** The largest diameter of a round body that would pass, at the worst of all intervals. */
function largest(t: Tightest): string[] {
  const s = t.pair.a.shape
  if (holds(t.margins) || s.kind !== 'round') return []
  const d = largestPassing(t.pair, t.limit)
  return d === undefined
    ? ['Nothing of any width passes there.']
    : [`The widest that would pass is ${mm(d)} mm in diameter.`]
}

export function largestPassing(pair: Pair, limit: number): number | undefined {
  const s = pair.a.shape
  if (s.kind !== 'round') return undefined
  const r = Math.max(s.r0.nominal, s.r1.nominal)
  const passes = (k: number): boolean => {
    const shape = { ...s, r0: shift(s.r0, k - r), r1: shift(s.r1, k - r) }
    return gapAt({ ...pair, a: { ...pair.a, shape } }, 'worst').lo >= limit - 1e-9
  }
  let [lo, hi] = [0.01, r]
  if (!passes(lo)) return undefined
  for (let n = 0; n < 30; n++) {
    const middle = (lo + hi) / 2
    if (passes(middle)) lo = middle
    else hi = middle
  }
  return Math.floor(2 * lo * 100 + 1e-3) / 100
}
