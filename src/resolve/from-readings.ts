import { remember, rememberOn } from '../../geometry/remember.ts'
import { parseLength } from '../entry/entry.ts'
import type { Outcome } from '../problem/problem.ts'
import type { FromReadings } from '../project/schema/quantity.ts'
import { type LengthSize, lengthFromReadings } from '../rules/length.ts'
import type { Reading, ReadingOptions } from '../rules/readings.ts'
import { boreFromReadings, outsideFromReadings, type RoundSize } from '../rules/round.ts'
import type { RoundOptions } from '../rules/round-station.ts'
import type { Tool } from '../rules/tool.ts'
import { type Context, limitOf, wrong } from './context.ts'
import { type Ask, usualTool } from './dimension.ts'

/** Readings of a bore or an outside are of something round, those of all else repeats of one length. */
export function combine(
  ctx: Context,
  readings: readonly Reading[],
  options: ReadingOptions & { jawFlat?: number | undefined },
  ask: Ask,
): RoundSize | LengthSize | undefined {
  const { as } = ask
  const round = as === 'bore' || (as === 'outside' && readings.length > 1) ? as : undefined
  const ovalityAllowance = as === 'bore' ? limitOf(ctx, 'ovality') : 0
  const found = together({ readings, options: { ...options, ovalityAllowance }, round })
  if (!found.ok) return void ctx.problems.push(...found.problems)
  return found.value
}

interface Together {
  readonly readings: readonly Reading[]
  readonly options: RoundOptions
  /** What of something round was read; a length where left out. */
  readonly round: 'bore' | 'outside' | undefined
}

const toolText = rememberOn((tool: Tool) => JSON.stringify(tool))

/** A change of one number leaves all other fields as they were read. */
const together = remember(
  500,
  ({ readings, options: o, round }: Together) =>
    `${readings.map((r) => `${r.value},${r.z},${r.theta}`).join(';')} ${round} ${o.coverage} ${o.jawFlat} ${o.ovalityAllowance} ${o.path} ${toolText(o.tool)}`,
  ({ readings, options, round }): Outcome<RoundSize | LengthSize> =>
    round === undefined
      ? lengthFromReadings(readings, options)
      : (round === 'bore' ? boreFromReadings : outsideFromReadings)(readings, options),
)

/** The readings of one field taken together; undefined where one of them is wrong. */
export function fromReadings(ctx: Context, input: FromReadings, ask: Ask): RoundSize | LengthSize | undefined {
  const taken = takenReadings(ctx, input, ask)
  return taken && combine(ctx, taken.readings, taken.options, ask)
}

export interface TakenReadings {
  readonly readings: readonly Reading[]
  readonly options: ReadingOptions & { readonly jawFlat: number | undefined }
}

/** The readings as numbers, and how they are to be taken together. */
export function takenReadings(ctx: Context, input: FromReadings, ask: Ask): TakenReadings | undefined {
  const tool = toolOf(ctx, input.tool ?? usualTool[ask.as === 'angle' ? 'length' : ask.as], ask)
  if (!tool) return undefined
  const readings: Reading[] = []
  for (const [i, r] of input.readings.entries()) {
    const value = typeof r.value === 'number' ? r.value : lengthIn(ctx, r.value, `${ask.path}/readings/${i}/value`)
    if (value === undefined) return undefined
    readings.push({ value, z: r.z, theta: r.theta })
  }
  const own =
    input.u === undefined ? tool : { ...tool, name: `${tool.name}, u ${input.u}`, mpe: input.u * Math.sqrt(3) }
  const options = { tool: own, path: ask.path, coverage: limitOf(ctx, 'coverage'), jawFlat: input.jawFlat }
  return { readings, options }
}

function lengthIn(ctx: Context, text: string, path: string): number | undefined {
  const parsed = parseLength(text, path)
  if (parsed.ok) return parsed.value.value
  ctx.problems.push(...parsed.problems)
  return undefined
}

/** A tool of the presets; one that nobody has is a problem. */
export function toolOf(ctx: Context, id: string, ask: Ask): Tool | undefined {
  const found = ctx.presets.ofKind('tool').find((t) => t.id === id)
  if (!found)
    return wrong(
      ctx,
      'unknown-preset',
      `${ask.path}/tool`,
      id,
      ctx.presets
        .ofKind('tool')
        .map((t) => t.id)
        .join(', '),
      'Name one of these tools.',
    )
  return found as unknown as Tool
}
