import { isRelative } from '../project/forms.ts'
import type { SledInput } from '../project/schema/sled.ts'
import { combine, exact, type Quantity } from '../quantity/quantity.ts'
import type { PrintProcess } from './assembly.ts'
import type { Context } from './context.ts'
import type { Ends, Heights } from './heights.ts'
import type { Section } from './metal.ts'
import { isOfSledPart } from './part-heights.ts'

/**
 * How far from where it is drawn a sled truly comes to lie along the hilt, with all it carries. A sled that is seated
 * with a face goes on to the shoulder that stops it; one whose rear end is placed from something in the hilt moves
 * with that; any other lies where it is drawn. Sleds are drawn once, from the readings.
 */
export function sledShift(
  ctx: Context,
  heights: Heights,
  s: SledInput,
  drawn: Ends,
  sections: readonly Section[],
  print: PrintProcess,
): Quantity {
  const seat = s.seats?.find((o) => o.face !== 'around')
  const step = seat && sections.flatMap((o) => o.steps).find((o) => o.id === seat.against)
  if (seat && step) {
    const blade = seat.face === 'blade'
    return combine([
      [blade ? step.z0 : step.z1, 1],
      [exact(blade ? drawn.blade.nominal : drawn.rear.nominal), -1],
      [print.error, blade ? -1 : 1],
    ])
  }
  if (s.from === undefined || !isRelative(s.from)) return exact(0)
  const at = heights.place(s.from, `sleds/${s.id}/from`, true)
  // What is placed by a part of its own is drawn with that part.
  return { nominal: 0, terms: (at?.terms ?? []).filter((t) => !isOfSledPart(ctx, t.spread.path)) }
}
