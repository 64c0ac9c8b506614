import type { Outcome } from '../problem/problem.ts'
import type { Source } from './source.ts'

/** What a rule works with and gives: a number in its unit, a list of them, or a word. */
export type RuleValue = number | string | readonly number[]
export type RuleValues = Readonly<Record<string, RuleValue>>

export interface Range {
  readonly min?: number
  readonly max?: number
  /** The value must lie above this, not on it. */
  readonly exclusiveMin?: number
}

/** A number of a rule: what it is called, its unit ('' for a ratio or a count) and what it means in one sentence. */
export interface RuleNumber {
  readonly name: string
  readonly unit: string
  readonly what: string
}

export interface RuleInput extends RuleNumber {
  readonly range?: Range
  /** Taken where nothing is given. Without it the input must be given, unless it is optional. */
  readonly default?: RuleValue
  /** May be left out; the rule then does without. */
  readonly optional?: true
  /** One or more numbers, each within the range. */
  readonly list?: true
  /** Not a number: true for any text, or the words that are allowed. */
  readonly text?: true | readonly string[]
}

/**
 * A rule of the trade that needs numbers alone: no project, no presets. It appears in `sledwright calc` by standing in
 * the list of index.ts.
 */
export interface Rule {
  /** The trade's word for it, in kebab-case. */
  readonly name: string
  readonly title: string
  /** One sentence. */
  readonly what: string
  readonly inputs: readonly RuleInput[]
  readonly outputs: readonly RuleNumber[]
  /** As one would write it in a notebook. */
  readonly formula: string
  readonly sources: readonly Source[]
  /** Inputs as typed, for the help and the tests. */
  readonly example: Readonly<Record<string, string>>
  /** Values already read and within their ranges. Every output is filled; an output that does not apply is ''. */
  readonly run: (values: RuleValues) => Outcome<RuleValues>
}

/** A number input; a missing or wrong one is a bug, for inputs are checked before a rule runs. */
export function numberOf(values: RuleValues, name: string): number {
  const v = values[name]
  if (typeof v !== 'number') throw new TypeError(`rule input ${name} is not a number`)
  return v
}

export function optionalNumber(values: RuleValues, name: string): number | undefined {
  return values[name] === undefined ? undefined : numberOf(values, name)
}

/** A list input; empty where an optional one was not given. */
export function listOf(values: RuleValues, name: string): readonly number[] {
  const v = values[name]
  if (v === undefined) return []
  if (typeof v === 'string' || typeof v === 'number') throw new TypeError(`rule input ${name} is not a list`)
  return v
}

/** A text input; '' where an optional one was not given. */
export function textOf(values: RuleValues, name: string): string {
  const v = values[name] ?? ''
  if (typeof v !== 'string') throw new TypeError(`rule input ${name} is not a text`)
  return v
}
