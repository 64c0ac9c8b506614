import type { Body } from '../body/body.ts'
import { gapAt } from '../body/gap-at.ts'
import { onePair } from '../body/one-pair.ts'
import { add, known, most, type Quantity } from '../quantity/quantity.ts'
import { seenIn, turnOf } from './frame.ts'
import type { Unit, World } from './world.ts'

/**
 * What sticks into the bore, as seen from a sled that is not held quite still: the sled's float lets the two come
 * nearer from any side, its clocking error turns them against each other. Put on the obstacle, because only their
 * relation counts and there are fewer of them.
 */
export function seenFrom(world: World, unit: Unit): (obstacle: Body) => Body {
  const float = floatOf(world, unit)
  const turn = turnOf(unit.sled)
  const seen = seenIn(unit.sled)
  return (b) => ({
    ...seen(b),
    ...(float ? { drift: b.drift ? add(b.drift, float) : float } : {}),
    ...(turn ? { turn: b.turn ? add(b.turn, turn) : turn } : {}),
  })
}

/**
 * How far a sled can shift sideways where it sits: typed, or the room its outside leaves in the bores beside it. It
 * varies: a shaken hilt finds every place of it. Only gaps to what sticks in are narrowed by it; the bore itself is
 * what ends it. A sled that is said to stay on the axis does not float.
 */
export function floatOf(world: World, unit: Unit): Quantity | undefined {
  const { sled } = unit
  const path = `sleds/${sled.id}/float`
  const varies = (plus: number, from: string, source: 'measured' | 'computed') =>
    known(0, { path, kind: 'varies', minus: 0, plus, distribution: 'rectangular', source, from })
  if (sled.float !== undefined) return sled.float > 0 ? varies(sled.float, 'typed', 'measured') : undefined
  const insertion = world.assembly.insertions.find((i) => i.moves === `sleds/${sled.id}`)
  if (insertion?.lateral === 'axis') return undefined
  const bores = world.assembly.bores.filter((b) => !b.solid).map((b) => seenIn(sled)(b.body))
  const gaps = unit.outside.flatMap((body) =>
    bores
      .filter((b) => overlaps(body, b))
      .map((b) => {
        const pair = onePair(body, b)
        return { worst: gapAt(pair, 'worst').lo, best: gapAt(pair, 'best').hi }
      }),
  )
  if (gaps.length === 0) return undefined
  const sure = Math.max(0, Math.min(...gaps.map((g) => g.worst)))
  const may = Math.max(sure, Math.min(...gaps.map((g) => g.best)))
  const rest = known(0, {
    path: `${path}/room`,
    kind: 'unknown',
    minus: 0,
    plus: may - sure,
    distribution: 'rectangular',
    source: 'computed',
    from: 'room in the bore',
  })
  return most(rest) > 0
    ? add(varies(sure, 'room in the bore', 'computed'), rest)
    : varies(sure, 'room in the bore', 'computed')
}

function overlaps(a: Body, b: Body): boolean {
  if (a.shape.kind === 'pin' || b.shape.kind === 'pin') return false
  return a.shape.z0.nominal < b.shape.z1.nominal && a.shape.z1.nominal > b.shape.z0.nominal
}
