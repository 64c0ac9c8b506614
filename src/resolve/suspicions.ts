import { parseLength } from '../entry/entry.ts'
import { type Plausible, plausible } from '../entry/plausible.ts'
import { inchesMeant, isInchRatio, suspectReadings, suspectSize } from '../entry/suspicion.ts'
import type { Problem } from '../problem/problem.ts'
import { isFromReadings } from '../project/forms.ts'
import type { SectionInput } from '../project/schema/hilt.ts'
import type { QuantityInput } from '../project/schema/quantity.ts'
import type { Quantity } from '../quantity/quantity.ts'
import type { Context } from './context.ts'
import type { Section } from './metal.ts'

/**
 * Questions to sizes that read well and look like a slip. Where a factor of 25.4 explains an unusual size, a verdict
 * on it would be about another hilt, so it is refused; all else is asked and taken as it stands. A size that was typed
 * with its unit is what it says.
 */
export function questionSize(
  ctx: Context,
  input: QuantityInput | undefined,
  q: Quantity | undefined,
  usual: Plausible | undefined,
  path: string,
): void {
  if (input === undefined || q === undefined || !usual || unitTyped(input)) return
  if (amongReadings(ctx, input, path)) return
  const found = suspectSize(q.nominal, usual, path)
  if (found) put(ctx, found, inchesMeant(q.nominal, usual))
}

/** The readings of one size against each other; true where one of them was questioned. */
function amongReadings(ctx: Context, input: QuantityInput, path: string): boolean {
  if (typeof input !== 'object' || !isFromReadings(input)) return false
  const values = input.readings.map(({ value }) => {
    if (typeof value === 'number') return value
    const parsed = parseLength(value)
    return parsed.ok ? parsed.value.value : 0
  })
  const sorted = values.filter((v) => v > 0).sort((a, b) => a - b)
  const middle = sorted[Math.floor(sorted.length / 2)] ?? 0
  const found = new Map(suspectReadings(values, `${path}/readings`).map((p) => [p.path, p]))
  for (const [i, value] of values.entries()) {
    const p = found.get(`${path}/readings/${i}/value`)
    if (p && value > 0) put(ctx, p, isInchRatio(value / middle) || isInchRatio(middle / value))
  }
  return found.size > 0
}

/**
 * Lengths of sections: each short one is asked about, for a ring may be that short; where all of them together are no
 * hilt in millimetres and are one in inches, they are refused.
 */
export function questionLengths(ctx: Context, inputs: readonly SectionInput[], sections: readonly Section[]): void {
  const plain = inputs.filter((s) => !unitTyped(s.length))
  const lengthOf = (s: Section) => s.ends.blade.nominal - s.ends.rear.nominal
  const whole = sections.reduce((sum, s) => sum + lengthOf(s), 0)
  const refused =
    plain.length === inputs.length && whole < plausible.hiltLength.min && inchesMeant(whole, plausible.hiltLength)
  for (const s of sections.filter((o) => plain.some((p) => p.id === o.id))) {
    const found = suspectSize(lengthOf(s), plausible.depth, `sections/${s.id}/length`)
    if (found) put(ctx, found, refused)
  }
}

function put(ctx: Context, found: Problem, refused: boolean): void {
  const list = !refused && found.code === 'suspicious' ? ctx.questions : ctx.problems
  list.push({ ...found, hint: `${found.hint} If it is right, type it with its unit: "${found.got} mm".` })
}

/** `1.25 mm` or `2in` is not questioned; 1.25 is. */
function unitTyped(input: QuantityInput): boolean {
  const text = typeof input === 'string' ? input : typeof input === 'object' ? input.text : undefined
  return text !== undefined && /[a-z"″”']/i.test(text)
}
