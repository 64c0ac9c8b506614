import { parseAngle, parseLength } from '../entry/entry.ts'
import { isBetween, isFromReadings } from '../project/forms.ts'
import type { QuantityInput, WithSpread } from '../project/schema/quantity.ts'
import { known, least, most, type Quantity, type SourceKind, type Spread } from '../quantity/quantity.ts'
import type { Tool } from '../rules/tool.ts'
import { type Context, limitOf, wrong } from './context.ts'
import { type Ask, usualTool } from './dimension.ts'
import { combine, fromReadings, toolOf } from './from-readings.ts'

export type { Ask } from './dimension.ts'

/** A tool's own error may take a very small size below nothing by this much, mm. */
const toolError = 0.5

/** No hilt, part or printer is larger, mm. */
const largest = 2000

/**
 * A field of the project as a quantity: its interval, whether measuring settles it, and where it comes from.
 * A bare number counts as one reading with the usual tool. undefined where it is not there or wrong; what is wrong is
 * in the context's problems.
 */
export function quantityOf(ctx: Context, input: QuantityInput | undefined, ask: Ask): Quantity | undefined {
  if (input === undefined) return undefined
  const q = read(ctx, input, ask)
  return q && believed(ctx, q.nominal, ask) && spreadBelieved(ctx, q, ask) ? q : undefined
}

function read(ctx: Context, input: QuantityInput, ask: Ask): Quantity | undefined {
  if (typeof input === 'string') return fromText(ctx, input, ask)
  if (typeof input === 'number') return ask.preset ? spreadOf(ask, input, 0, 0, {}) : bare(ctx, input, ask)
  if (isFromReadings(input)) return fromReadings(ctx, input, ask)?.quantity
  if (isBetween(input)) {
    const nominal = input.nominal ?? (input.min + input.max) / 2
    if (!(input.min <= nominal && nominal <= input.max))
      return wrong(
        ctx,
        'contradiction',
        ask.path,
        `min ${input.min}, nominal ${nominal}, max ${input.max}`,
        'min ≤ nominal ≤ max',
        'Swap them.',
      )
    return spreadOf(ask, nominal, nominal - input.min, input.max - nominal, input)
  }
  return fromValue(ctx, input, ask)
}

function fromValue(ctx: Context, input: WithSpread, ask: Ask): Quantity | undefined {
  if (input.plus === undefined && input.minus === undefined) {
    const tool = input.tool === undefined ? undefined : toolOf(ctx, input.tool, ask)
    if (input.tool !== undefined && !tool) return undefined
    if (input.source === undefined || input.source === 'measured')
      return tool ? single(ctx, input.value, tool, ask) : bare(ctx, input.value, ask, input)
    return spreadOf(ask, input.value, 0, 0, input)
  }
  return spreadOf(ask, input.value, input.minus ?? input.plus ?? 0, input.plus ?? input.minus ?? 0, input)
}

type About = {
  source?: SourceKind | undefined
  kind?: Spread['kind'] | undefined
  distribution?: Spread['distribution'] | undefined
  from?: string | undefined
}

function spreadOf(ask: Ask, nominal: number, minus: number, plus: number, about: About): Quantity {
  const source = about.source ?? (ask.preset ? 'preset' : 'measured')
  return known(nominal, {
    path: ask.path,
    kind: about.kind ?? (ask.swapped ? 'varies' : 'unknown'),
    minus,
    plus,
    distribution: about.distribution ?? 'rectangular',
    source,
    from: about.from ?? ask.preset ?? (source === 'assumed' ? 'assumed' : 'as stated'),
  })
}

/** One number typed or read: the usual tool's error goes with it. */
function bare(ctx: Context, value: number, ask: Ask, about: About = {}): Quantity | undefined {
  if (ask.as === 'angle') {
    const half = limitOf(ctx, 'angle')
    return spreadOf(ask, value, half, half, { ...about, from: about.from ?? `set by eye, ±${half}°` })
  }
  const tool = toolOf(ctx, usualTool[ask.as], ask)
  return tool && single(ctx, value, tool, ask)
}

function single(ctx: Context, value: number, tool: Tool, ask: Ask): Quantity | undefined {
  if (!believed(ctx, value, ask)) return undefined
  if (ask.as === 'offset') return spreadOf(ask, value, tool.mpe, tool.mpe, { from: tool.name })
  // Where a length may be nothing (sections that do not engage), nothing is no reading.
  if (value === 0 && ask.min === 0) return spreadOf(ask, 0, 0, 0, {})
  return combine(ctx, [{ value }], { tool, path: ask.path, coverage: limitOf(ctx, 'coverage') }, ask)?.quantity
}

function fromText(ctx: Context, text: string, ask: Ask): Quantity | undefined {
  const parsed = ask.as === 'angle' ? parseAngle(text, ask.path) : parseLength(text, ask.path)
  if (!parsed.ok) return void ctx.problems.push(...parsed.problems)
  const { value, plus, minus } = parsed.value
  return plus === undefined && minus === undefined
    ? bare(ctx, value, ask)
    : spreadOf(ask, value, minus ?? 0, plus ?? 0, {})
}

/** A size whose interval reaches below nothing, or farther than anything in a hilt, is a slip in its spread. */
function spreadBelieved(ctx: Context, q: Quantity, ask: Ask): boolean {
  const [from, to] = [least(q), most(q)]
  const sized = ask.as !== 'offset' && ask.as !== 'angle' && ask.min === undefined
  if (from >= (sized ? -toolError : -2 * largest) && to <= 2 * largest) return true
  wrong(
    ctx,
    'out-of-range',
    ask.path,
    `${Number(from.toFixed(3))} to ${Number(to.toFixed(3))}`,
    sized ? `above 0 and at most ${2 * largest} mm` : `${-2 * largest} to ${2 * largest}`,
    'Its spread is wider than can be: correct plus, minus, min or max.',
  )
  return false
}

function believed(ctx: Context, value: number, ask: Ask): boolean {
  const sized = ask.as !== 'offset' && ask.as !== 'angle'
  const min = ask.min ?? (sized ? Number.MIN_VALUE : -largest)
  const max = ask.max ?? largest
  if (value >= min && value <= max) return true
  const limit = sized && ask.min === undefined ? `above 0 and at most ${max} mm` : `${min} to ${max}`
  wrong(
    ctx,
    'out-of-range',
    ask.path,
    value,
    limit,
    sized ? 'Give the size as measured, in mm.' : 'Give it in mm or degrees.',
  )
  return false
}
