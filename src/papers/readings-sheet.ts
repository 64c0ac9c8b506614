import { parseLength } from '../entry/entry.ts'
import { suspectReadings } from '../entry/suspicion.ts'
import type { Presets } from '../presets/presets.ts'
import { bad, good, type Outcome, type Problem, problem } from '../problem/problem.ts'
import { isFromReadings } from '../project/forms.ts'
import { valueAt } from '../project/path.ts'
import type { Project } from '../project/schema/project.ts'
import type { FromReadings, QuantityInput } from '../project/schema/quantity.ts'
import { isAssumed, readingsOf, toolOf } from '../project/typed-size.ts'
import { type Context, contextOf, limitOf } from '../resolve/context.ts'
import { type Ask, type Dimension, dimensionOf } from '../resolve/dimension.ts'
import { combine, takenReadings } from '../resolve/from-readings.ts'
import { quantityOf } from '../resolve/quantity.ts'
import type { LengthSize } from '../rules/length.ts'
import type { RoundSize } from '../rules/round.ts'
import { type Size, size } from './sizes.ts'

/** One place along the axis at which something round was read, mm. */
export interface StationView {
  readonly z: number | undefined
  readonly least: number
  readonly greatest: number
  readonly directions: number
}

/** What the readings of one dimension come to, and why. mm. */
export interface ReadingsView {
  readonly as: Dimension
  readonly size: Size
  readonly readings: number
  /** The mean of the readings; undefined where the interval was typed. */
  readonly mean: number | undefined
  /** Of what is round and was read: the places, and how oval the one that governs is. */
  readonly stations: readonly StationView[]
  readonly oval: number | undefined
  /** How the interval comes about, in sentences with their numbers. */
  readonly why: readonly string[]
  /** What would be worth reading next. */
  readonly ask: readonly string[]
  readonly questions: readonly Problem[]
}

/**
 * The dimension at a path of the project taken by itself: readings, mean, oval, interval. Fails with what is wrong with
 * a reading, or with `missing` where nothing stands there yet.
 */
export function readingsView(project: Project, presets: Presets, path: string): Outcome<ReadingsView> {
  const dimension = dimensionOf(project, path)
  const input = valueAt(project, path) as QuantityInput | undefined
  if (!dimension || readingsOf(input).length === 0 || input === undefined)
    return bad(problem('missing', path, input, 'one or more readings', 'Type the first reading.'))
  const ctx = contextOf(project, presets)
  const ask: Ask = { path, ...dimension }
  const q = quantityOf(ctx, input, ask)
  const questions = suspectReadings(valuesOf(input), `${path}/readings`)
  if (!q) return bad(...questions, ...ctx.problems)
  const taken = dimension.as === 'angle' || stated(input) ? undefined : takenOf(ctx, input, ask)
  const round = taken && isRound(taken.found) ? taken.found : undefined
  const governing = round?.governing
  return good({
    as: dimension.as,
    size: size(path, q),
    readings: readingsOf(input).length,
    mean: governing?.mean ?? (taken && !isRound(taken.found) ? taken.found.mean : undefined),
    stations: round?.stations.map(({ z, least, greatest, directions }) => ({ z, least, greatest, directions })) ?? [],
    oval: governing && governing.directions > 1 ? governing.greatest - governing.least : undefined,
    why: taken
      ? whyOf(ctx, taken)
      : [isAssumed(input) ? 'Assumed: nobody measured it, so no verdict that rests on it is clear.' : 'As stated.'],
    ask: (governing ?? (taken && !isRound(taken.found) ? taken.found : undefined))?.ask.map((a) => a.text) ?? [],
    questions,
  })
}

/** Whether the person said the spread themselves, or that it is assumed: then no tool has a say. */
function stated(input: QuantityInput): boolean {
  if (typeof input === 'number') return false
  if (typeof input === 'string') return /±|\+|\.\.|…|–| to | -/.test(input)
  if (isFromReadings(input)) return false
  return (
    'min' in input ||
    input.plus !== undefined ||
    input.minus !== undefined ||
    (input.source ?? 'measured') !== 'measured'
  )
}

/** The readings as numbers, for asking about; 0 where one is none. */
const valuesOf = (input: QuantityInput): number[] =>
  readingsOf(input).map(({ value }) => {
    if (typeof value === 'number') return value
    const read = parseLength(value)
    return read.ok ? read.value.value : 0
  })

interface Taken {
  readonly tool: string
  readonly jawFlat: number | undefined
  readonly found: RoundSize | LengthSize
}

function takenOf(ctx: Context, input: QuantityInput, ask: Ask): Taken | undefined {
  const whole: FromReadings =
    typeof input === 'object' && isFromReadings(input)
      ? input
      : { readings: [...readingsOf(input)], ...(toolOf(input) === undefined ? {} : { tool: toolOf(input) }) }
  const taken = takenReadings(ctx, whole, ask)
  const found = taken && combine(ctx, taken.readings, taken.options, ask)
  return found && { tool: taken.options.tool.name, jawFlat: taken.options.jawFlat, found }
}

const isRound = (found: RoundSize | LengthSize): found is RoundSize => 'governing' in found

function whyOf(ctx: Context, { found, jawFlat, tool }: Taken): string[] {
  const { quantity, combined } = isRound(found) ? found.governing : found
  const error = quantity.terms[0]?.spread
  const half = error ? Math.max(error.minus, error.plus) : 0
  const parts = combined.components.filter((c) => c.u > 0)
  const sum = `u = √(${parts.map((c) => `${digits(c.u)}²`).join(' + ')}) = ${digits(combined.u)} mm from ${parts.map((c) => c.name).join(', ')}`
  const limits = half < combined.expanded - 1e-9
  const repeats = parts.some((c) => c.name === 'scatter') ? ', and how far they lie apart is added' : ''
  const coverage = Math.round(limitOf(ctx, 'coverage') * 1000) / 10
  const places = isRound(found) ? found.stations.length : 1
  return [
    ...(jawFlat === undefined || !isRound(found)
      ? []
      : [`The flats of the jaws touch at their corners: d = √(reading² + ${digits(jawFlat)}²).`]),
    ...(places > 1 ? [`Of ${places} places the one that leaves least room governs.`] : []),
    limits
      ? `Read ±${digits(half)} mm: with the ${tool} no reading is off by more than its limit of error and half a step${repeats}.`
      : `Read ±${digits(half)} mm: ${sum}, times ${digits(combined.k)} for ${coverage} %.`,
    ...quantity.terms.slice(1).map(({ spread }) => sentence(spread.from)),
  ]
}

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`
const digits = (n: number): string => String(Number(n.toPrecision(3)))
