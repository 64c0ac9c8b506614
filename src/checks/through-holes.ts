import { at, type Level } from '../quantity/level.ts'
import { contributionsOf, type Margins } from '../quantity/margins.ts'
import { exact, type Quantity, scale, sub } from '../quantity/quantity.ts'
import type { Part } from '../resolve/assembly.ts'
import { type Finding, type Fix, finding } from './finding.ts'
import { upTo } from './fix-value.ts'
import { type HoleInWall, holeInWall, lengthOf } from './hole-in-wall.ts'
import { missesBy } from './off-hole.ts'
import { reading } from './reading.ts'
import { holds } from './verdict.ts'
import { mm } from './words.ts'
import type { World } from './world.ts'

/** A part that is put through a hole afterwards must pass it; and whatever is said to be at a hole must lie there. */
export function throughHoles(world: World): Finding[] {
  return world.assembly.parts.flatMap((part) => {
    const hole = part.input.through === undefined ? undefined : holeInWall(world.assembly, part.input.through)
    if (!hole) return []
    return [...(part.goesIn === 'after' ? passes(world, part, hole) : []), ...lies(part, hole)]
  })
}

/** The two sizes of the end that must go through, the smaller first; nothing of what is no plain body. */
function endOf({ bodies: [body], extent, ends, input }: Part): readonly [Quantity, Quantity] | undefined {
  const s = body?.shape
  if (s?.kind === 'pin') return [scale(s.radius, 2), exact(0)]
  if (s?.kind === 'round') return [scale(s.r0, 2), exact(0)]
  if (s?.kind !== 'box' || input.presses) return undefined
  const sizes = [scale(extent.halfU, 2), scale(extent.halfV, 2), lengthOf(ends)]
  const [a, b] = sizes.sort((p, q) => p.nominal - q.nominal) as [Quantity, Quantity]
  return [a, b]
}

function passes(world: World, part: Part, hole: HoleInWall): Finding[] {
  const end = endOf(part)
  if (!end) return []
  const [thin, wide] = end
  const [narrow, long] = [hole.width, lengthOf(hole.ends)].sort((a, b) => a.nominal - b.nominal) as [Quantity, Quantity]
  const across = (level: Level): number => Math.hypot(at(thin, 1, level), at(wide, 1, level))
  const room = (level: Level): number =>
    hole.round
      ? at(narrow, -1, level) - across(level)
      : Math.min(at(narrow, -1, level) - at(thin, 1, level), at(long, -1, level) - at(wide, 1, level))
  const margins: Margins = {
    worst: room('worst'),
    nominal: room('nominal'),
    settled: room('settled'),
    best: room('best'),
  }
  const contributions = contributionsOf(sub(sub(narrow, thin), hole.round ? wide : exact(0)))
  return [
    finding({
      id: `in-the-wall:${part.id}:${hole.id}`,
      check: 'in-the-wall',
      title: `${part.name} through ${hole.name}`,
      value: margins.nominal,
      limit: 0,
      unit: 'mm',
      margins,
      contributions,
      at: placeOf(part, hole),
      parts: [part.id, hole.id],
      state: 'every state',
      why: `${hole.name} is ${mm(narrow.nominal)} wide and ${part.name} ${mm(hole.round ? across('nominal') : thin.nominal)} across: ${mm(margins.worst)} to ${mm(margins.best)} is left.`,
      source: 'what is put in afterwards goes through its hole',
      fix: holds(margins) ? [] : [...larger(part, hole, -margins.worst), ...reading(world, { contributions, margins })],
    }),
  ]
}

function larger(part: Part, hole: HoleInWall, lack: number): Fix[] {
  if (!hole.round) return [{ text: `Make ${hole.name} larger, or choose a smaller part.`, path: `${part.id}/body` }]
  const value = upTo(hole.width.nominal + lack)
  return [{ text: `A hole of at least ${mm(value)} mm lets it through.`, path: `${hole.id}/shape/diameter`, value }]
}

/** Told only where the two surely lie apart: that a part sits in its hole is what was said. */
function lies(part: Part, hole: HoleInWall): Finding[] {
  const off = missesBy(part, hole)
  if (off === undefined) return []
  const left = -off.by
  return [
    finding({
      id: `in-the-wall:${part.id}:${hole.id}:place`,
      check: 'in-the-wall',
      title: `${part.name} beside ${hole.name}`,
      value: left,
      limit: 0,
      unit: 'mm',
      margins: { worst: left, nominal: left, settled: left, best: left },
      contributions: [],
      at: placeOf(part, hole),
      parts: [part.id, hole.id],
      state: 'every state',
      why: `${part.name} is said to be in ${hole.name}, which lies ${off.way}: it misses it by ${mm(off.by)} mm at the least.`,
      source: 'a part sits where its hole is',
      fix: [{ text: `Correct the place of ${part.name} or of ${hole.name}.`, path: `${part.id}/at` }],
    }),
  ]
}

const placeOf = ({ ends, bodies: [body] }: Part, { theta }: HoleInWall) => ({
  z: (ends.rear.nominal + ends.blade.nominal) / 2,
  theta: theta.nominal,
  r: body?.shape.kind === 'pin' ? body.shape.rOut.nominal : 0,
})
