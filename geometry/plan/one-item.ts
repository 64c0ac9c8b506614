import { oneOf } from '../one-of.ts'
import type { PlanItem } from './plan.ts'

/** Of all equal items of a plan always the same object. */
export const oneItem = oneOf<PlanItem>((x) => x.id)

let last = 0
const numbers = new WeakMap<PlanItem, number>()

/** The same number for equal items, from plan to plan: what is found out about items is kept by it. */
export function itemNumber(x: PlanItem): number {
  const item = oneItem(x)
  const known = numbers.get(item)
  if (known !== undefined) return known
  numbers.set(item, ++last)
  return last
}
