import type { Body } from '../body/body.ts'
import type { Sled } from '../resolve/assembly.ts'
import type { Fix, Where } from './finding.ts'
import { alongFixes } from './fix-along.ts'
import { moveFix } from './fix-move.ts'
import { narrower } from './fix-outside.ts'
import { smaller } from './fix-size.ts'
import { upTo } from './fix-value.ts'
import type { Tightest } from './group.ts'
import { reading } from './reading.ts'
import { holds } from './verdict.ts'
import { mm } from './words.ts'
import type { World } from './world.ts'

/** What would make a gap hold: the change with its number, then the reading that would tell. Nothing where it holds. */
export function gapFixes(world: World, t: Tightest, of: string): Fix[] {
  if (holds(t.margins)) return []
  return [...change(world, t, of), ...reading(world, t)]
}

function change(world: World, t: Tightest, of: string): Fix[] {
  const { assembly } = world
  const sled = assembly.sleds.find((s) => of === `sleds/${s.id}`)
  if (sled) {
    const intrusion = assembly.intrusions.some((i) => i.body.id === t.pair.b.id)
    if (intrusion) return [...windowFix(world, sled.id, t.pair.b.of, t.pair.b.name, t), ...tipFix(t)]
    return [...narrower(sled, metOn(t), -t.margins.worst), ...alongFixes(world, sled, t)]
  }
  return [...tipFix(t), ...partFixes(world, t, of)]
}

/** The place on the sled itself: on its way in it meets something far from where it will stand. */
function metOn({ pair, at }: Tightest): Where {
  const s = pair.a.shape
  return pair.way === undefined || s.kind === 'pin' ? at : { ...at, z: (s.z0.nominal + s.z1.nominal) / 2 }
}

/** A window for what sticks in, or a wider one where there is one already. */
export function windowFix(world: World, sledId: string, of: string, name: string, t: Tightest): Fix[] {
  const sled = world.assembly.sleds.find((s) => s.id === sledId)
  const list = `sleds/${sledId}/windows`
  const own = sled?.input.windows?.find((w) => w.for === of)
  if (!own) {
    const id = of.split('/')[1] ?? 'window'
    const deep = sled && deepCut(sled, t)
    const text = `Cut a window for ${name} into the sled.${deep ? ` ${deep.text}` : ''}`
    return [{ text, path: list, value: { id, for: of }, ...(deep && { spoils: deep }) }]
  }
  const item = world.plans
    .get(sledId)
    ?.bodies.flatMap((b) => b.items)
    .find((x) => x.id === `${list}/${own.id}`)
  const gap = item?.dimensions.find((d) => d.name === 'gap')
  if (!gap) return []
  const value = upTo(gap.value - t.margins.worst)
  return [{ text: `Widen its window: a gap of ${mm(value)} mm around it.`, path: `${list}/${own.id}/gap`, value }]
}

/** No check weighs how strong what is left of a sled is: a window that goes far in is left to the eye, and says so. */
function deepCut(sled: Sled, { pair, at }: Tightest): Fix['spoils'] {
  const tip = tipOf(pair.b)
  const radius = Math.max(...sled.pieces.filter((p) => at.z >= p.z0 && at.z <= p.z1).map((p) => p.radius))
  if (tip === undefined || !(tip < radius / 2)) return undefined
  const text = `It goes in to radius ${mm(Math.max(0, tip))} mm or deeper, more than half way to the axis: look at what is left of the sled there.`
  return { status: 'advice', text }
}

/** How near the axis something in the wall comes. */
function tipOf({ shape }: Body): number | undefined {
  if (shape.kind === 'pin' || shape.kind === 'sector') return shape.rIn.nominal
  return shape.kind === 'box' ? Math.hypot(shape.x.nominal, shape.y.nominal) - shape.halfHeight.nominal : undefined
}

/** What sticks in, ending farther out. */
function tipFix(t: Tightest): Fix[] {
  const { of, name, shape } = t.pair.b
  if (shape.kind !== 'pin' || !(of.startsWith('features/') || of.startsWith('screws/'))) return []
  const value = upTo(shape.rIn.nominal - t.margins.worst)
  const path = of.startsWith('features/') ? `${of}/shape/tip` : `${of}/tip`
  return [{ text: `Let ${name} end at radius ${mm(value)} or farther out.`, path, value }]
}

/** Another place for a part, or the size of one that would fit. */
function partFixes(world: World, t: Tightest, of: string): Fix[] {
  const part = world.assembly.parts.find((p) => p.id === of)
  if (!part) return []
  const sled = world.assembly.sleds.find((s) => s.id === part.sled)
  const { a, b, way } = t.pair
  const moves = sled ? moveFix(world, sled, part, [{ a, b, limit: t.limit, ...(way ? { way } : {}) }]) : []
  return [...moves, ...smaller(part, -t.margins.worst)]
}
