import type { Heading } from '../../geometry/solid/sweep.ts'
import type { Body } from './body.ts'
import { oneBody } from './one-body.ts'
import { type Pair, pairOf } from './pair.ts'

/**
 * Equal bodies make one pair: what was found out about it holds for the next answer too. For bodies of a job; what is
 * only tried (a part moved a little, and a little more) is a plain `pairOf`, so that trials push nothing out.
 */
export function onePair(a: Body, b: Body, way?: Heading): Pair {
  const [first, second] = [oneBody(a), oneBody(b)]
  const known = pairs[way ?? 'still']
  let beside = known.get(first)
  if (!beside) {
    beside = new WeakMap()
    known.set(first, beside)
  }
  let pair = beside.get(second)
  if (!pair) {
    pair = pairOf(first, second, way)
    beside.set(second, pair)
  }
  return pair
}

type Pairs = WeakMap<Body, WeakMap<Body, Pair>>
const pairs: Record<Heading | 'still', Pairs> = { blade: new WeakMap(), rear: new WeakMap(), still: new WeakMap() }
