import type { Body } from '../body/body.ts'
import { oneBody } from '../body/one-body.ts'
import { add, known, type Quantity } from '../quantity/quantity.ts'
import type { State } from '../resolve/assembly.ts'
import { rare } from '../sled/rare.ts'
import { boreSeenIn, seenIn, turnOf } from './frame.ts'
import { around } from './obstacles.ts'
import type { Unit, World } from './world.ts'

/**
 * What sticks into the bore, as seen from a sled that is not held quite still: the sled's float lets the two come
 * nearer from any side, its clocking error turns them against each other. Put on the obstacle, because only their
 * relation counts and there are fewer of them.
 */
export function seenFrom(world: World, unit: Unit, state: State): (obstacle: Body) => Body {
  const turn = turnOf(unit.sled)
  const seen = seenIn(unit.sled)
  // Found out when something sticks in: where nothing does, nobody asks.
  let found: { readonly float: Quantity | undefined } | undefined
  return (b) => {
    found ??= { float: floatOf(world, unit, state) }
    const { float } = found
    return oneBody({
      ...seen(b),
      ...(float ? { drift: b.drift ? add(b.drift, float) : float } : {}),
      ...(turn ? { turn: b.turn ? add(b.turn, turn) : turn } : {}),
    })
  }
}

/**
 * How far a sled can shift sideways where it sits: typed, or the room its outside leaves in the bores that are there. It
 * varies: a shaken hilt finds every place of it. What it may find beyond that depends on the way it goes and on sizes
 * that are not known. Only gaps to what sticks in are narrowed by it; the bore itself is what ends it. A sled that is
 * said to stay on the axis does not float.
 */
function floatOf(world: World, { sled, outside }: Unit, state: State): Quantity | undefined {
  const path = `sleds/${sled.id}/float`
  const from = sled.float === undefined ? 'room in the bore' : 'typed'
  const source = sled.float === undefined ? 'computed' : 'measured'
  const spread = (own: string, kind: 'varies' | 'unknown', plus: number) =>
    known(0, { path: own, kind, minus: 0, plus, distribution: 'rectangular', source, from })
  if (sled.float !== undefined) return sled.float > 0 ? spread(path, 'varies', sled.float) : undefined
  const insertion = world.assembly.insertions.find((i) => i.moves === `sleds/${sled.id}`)
  if (insertion?.lateral === 'axis') return undefined
  const there = around(world, state).bores
  const seen = boreSeenIn(sled)
  const room = rare().roomAside(
    outside,
    there.filter((b) => !b.solid).map((b) => seen(b.body)),
  )
  if (!room) return undefined
  const sure = spread(path, 'varies', room.sure)
  return room.most > room.sure ? add(sure, spread(`${path}/room`, 'unknown', room.most - room.sure)) : sure
}
