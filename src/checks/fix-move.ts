import type { Body } from '../body/body.ts'
import { gapAt } from '../body/gap-at.ts'
import { pairOf } from '../body/pair.ts'
import { isBeside, isPushed, isRelative, isXy } from '../project/forms.ts'
import { shift } from '../quantity/quantity.ts'
import type { Part, Sled } from '../resolve/assembly.ts'
import type { Fix } from './finding.ts'
import { heightFix, nominalOf, step, upTo } from './fix-value.ts'
import type { Demand } from './group.ts'
import { wallsBeside } from './sled-walls.ts'
import { mm } from './words.ts'
import type { World } from './world.ts'

/** A part is moved at most this far across and along, mm: farther it is another layout. */
const farthest = { across: 12, along: 40 }

interface Shift {
  readonly x: number
  readonly y: number
  readonly z: number
}

/** One way a part can be moved by the form in which its place is given. */
interface Way {
  readonly unit: Shift
  readonly most: number
  readonly fix: (by: number) => Pick<Fix, 'path' | 'value'> | undefined
  readonly towards: string
}

/**
 * The least move of a part of a sled, with all that is placed by it, after which every need is met and nothing else in
 * the sled is tighter than it has to be. Nothing where no straight move does it.
 */
export function moveFix(world: World, sled: Sled, part: Part, needs: readonly Demand[]): Fix[] {
  const ways = waysOf(part)
  const group = followers(world, part)
  const moves = (b: Body) => group.has(b.of)
  const own = needs.filter((d) => moves(d.a) !== moves(d.b))
  if (ways.length === 0 || own.length === 0) return []
  const kept = keptBy(world, sled, group).map((demand) => ({ demand, now: Math.min(0, left(demand)) }))
  let best: { readonly by: number; readonly way: Way } | undefined
  for (const way of ways) {
    const at = (by: number) => (d: Demand) => left(moved(d, moves, way.unit, by))
    const by = leastThat(
      (s) => own.every((d) => at(s)(d) >= -1e-9),
      Math.min(way.most, best ? best.by - step : way.most),
    )
    if (by !== undefined && kept.every((k) => at(by)(k.demand) >= k.now - 1e-9)) best = { by, way }
  }
  const change = best?.way.fix(best.by)
  return best && change ? [{ text: `Move ${part.name} ${mm(best.by)} mm ${best.way.towards}.`, ...change }] : []
}

const left = (d: Demand): number => gapAt(pairOf(d.a, d.b, d.way), 'worst').lo - d.limit

function moved(d: Demand, moves: (b: Body) => boolean, unit: Shift, by: number): Demand {
  const move = (b: Body) => (moves(b) ? shifted(b, unit, by) : b)
  return { ...d, a: move(d.a), b: move(d.b) }
}

function shifted(b: Body, unit: Shift, by: number): Body {
  const s = b.shape
  if (s.kind === 'pin') return b
  const along = { z0: shift(s.z0, unit.z * by), z1: shift(s.z1, unit.z * by) }
  if (s.kind === 'outline' || s.kind === 'sector') return { ...b, shape: { ...s, ...along } }
  return { ...b, shape: { ...s, ...along, x: shift(s.x, unit.x * by), y: shift(s.y, unit.y * by) } }
}

/** The least distance, in steps, at which something holds: found by going on until it does, then by halving. */
function leastThat(holds: (by: number) => boolean, most: number): number | undefined {
  let [n, failed] = [1, 0]
  while (!holds(n * step)) {
    failed = n
    n = Math.ceil(n * 1.5)
    if (n * step > most) return undefined
  }
  while (n - failed > 1) {
    const middle = Math.floor((n + failed) / 2)
    if (holds(middle * step)) n = middle
    else failed = middle
  }
  return upTo(n * step)
}

/** The part and whatever is placed by it. */
function followers(world: World, part: Part): ReadonlySet<string> {
  const group = new Set([part.id])
  for (let size = 0; size !== group.size; ) {
    size = group.size
    for (const p of world.assembly.parts) if (follows(p, group)) group.add(p.id)
  }
  return group
}

function follows({ input }: Part, group: ReadonlySet<string>): boolean {
  const { z, across } = input.at ?? {}
  return (
    (z !== undefined && isRelative(z) && group.has(z.of)) ||
    (across !== undefined && isBeside(across) && group.has(across.beside)) ||
    (input.presses !== undefined && group.has(input.presses.part))
  )
}

/** What else has to hold when parts move: their gaps to the other parts, and that they stay inside the sled. */
function keptBy(world: World, sled: Sled, group: ReadonlySet<string>): Demand[] {
  const limit = world.assembly.thresholds['part-gap'].value
  const parts = world.assembly.parts.filter((p) => p.sled === sled.id && p.goesIn === 'with-sled')
  const others = parts.filter((p) => !group.has(p.id))
  return parts
    .filter((p) => group.has(p.id))
    .flatMap((p) => [
      ...others.flatMap((o) => p.bodies.flatMap((a) => o.bodies.map((b): Demand => ({ a, b, limit })))),
      ...p.bodies.flatMap((a) => wallsBeside(sled, a).map((b): Demand => ({ a, b, limit: 0 }))),
    ])
}

function waysOf(part: Part): Way[] {
  if (part.sled === undefined || part.goesIn !== 'with-sled' || part.contact) return []
  return [...waysAcross(part), ...waysAlong(part)]
}

function waysAlong(part: Part): Way[] {
  const input = part.input.at?.z
  const face = part.input.at?.face ?? 'rear'
  const [rear, blade] = [part.ends.rear.nominal, part.ends.blade.nominal]
  const now = face === 'rear' ? rear : face === 'blade' ? blade : (rear + blade) / 2
  return ([1, -1] as const).map((sign) => ({
    unit: { x: 0, y: 0, z: sign },
    most: farthest.along,
    fix: (by) => heightFix(`${part.id}/at/z`, input, now, sign * by),
    towards: sign > 0 ? 'towards the blade' : 'towards the rear',
  }))
}

function waysAcross(part: Part): Way[] {
  if (part.bodies.some((b) => b.shape.kind === 'sector')) return []
  const path = `${part.id}/at/across`
  const input = part.input.at?.across
  const [x, y] = [part.across.x.nominal, part.across.y.nominal]
  if (input === undefined || isXy(input))
    return Array.from({ length: 24 }, (_, i): Way => {
      const theta = 15 * i
      const [c, s] = [Math.cos((theta * Math.PI) / 180), Math.sin((theta * Math.PI) / 180)]
      return {
        unit: { x: c, y: s, z: 0 },
        most: farthest.across,
        fix: (by) => ({ path, value: { x: rounded(x + c * by), y: rounded(y + s * by) } }),
        towards: `towards θ ${theta}°`,
      }
    })
  const number = (field: string, now: number | undefined, theta: number, outwards: 1 | -1): Way[] =>
    now === undefined
      ? []
      : ([1, -1] as const).map((sign) => ({
          unit: polarUnit(theta, sign * outwards),
          most: farthest.across,
          fix: (by) => ({ path: `${path}/${field}`, value: rounded(now + sign * by) }),
          towards: `towards θ ${Math.round((theta + (sign * outwards < 0 ? 180 : 0)) % 360)}°`,
        }))
  if (isPushed(input)) return number('gap', nominalOf(input.gap), nominalOf(input.pushed) ?? 0, -1)
  if (isBeside(input)) return number('gap', nominalOf(input.gap), nominalOf(input.theta) ?? 0, 1)
  return number('r', nominalOf(input.r), nominalOf(input.theta) ?? 0, 1)
}

const rounded = (n: number): number => Number(n.toFixed(3))

function polarUnit(theta: number, sign: number): Shift {
  const a = (theta * Math.PI) / 180
  return { x: sign * Math.cos(a), y: sign * Math.sin(a), z: 0 }
}
