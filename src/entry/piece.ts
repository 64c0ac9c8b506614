import type { ProblemCode } from '../problem/problem.ts'
import { readNumber } from './number.ts'
import { type UnitTable, unitNames } from './units.ts'

/** Why a text was not understood; the caller adds where it stood and what was allowed. */
export interface Refusal {
  readonly code: ProblemCode
  readonly hint: string
}

export const refused = <T extends object>(x: T | Refusal): x is Refusal => 'hint' in x

/** One number with the unit typed after it. */
export interface Piece {
  readonly number: number
  readonly fraction: boolean
  /** In our spelling; absent where none was typed. */
  readonly unit: string | undefined
}

/** Reads `25.4 mm`, `1 1/2"`, `-30°` from text already made plain. */
export function readPiece(text: string, table: UnitTable): Piece | Refusal {
  if (/\de[+-]?\d/i.test(text)) return { code: 'not-a-number', hint: 'Write the number out, without an exponent.' }
  const m = /^([+-]?[\d.,/ -]*[\d.])(?: ?([^\d\s.,/+±-].*))?$/.exec(text.trim())
  const number = m && readNumber((m[1] as string).trim())
  if (!m || !number) return { code: 'not-a-number', hint: digitsHint(table) }
  const piece = { number: number.value, fraction: number.fraction }
  const typed = m[2]
  if (typed === undefined) return { ...piece, unit: undefined }
  const spelling = table.spellings.get(typed.toLowerCase().replace(/\.$/, ''))
  if (spelling) return { ...piece, unit: spelling.unit }
  const pitch = /^(?:tpi|threads per inch)$/i.test(typed)
  return {
    code: 'unknown-unit',
    hint: pitch ? `TPI is a pitch; here ${table.what} is asked for.` : `Units known here: ${unitNames(table)}.`,
  }
}

const digitsHint = (table: UnitTable): string =>
  table.plain === '' ? 'Type digits.' : `Type digits, and a unit where it is not ${table.plain}.`

/** The piece's value in the program's own unit, or why it has none. */
export function sizeOf(p: Piece, table: UnitTable): { readonly value: number } | Refusal {
  if (p.unit === undefined && p.fraction && table.fractionNeedsUnit) {
    return { code: 'unknown-unit', hint: 'A fraction may be inches: say which, as 1 1/2" or 1.5 mm.' }
  }
  const unit = p.unit ?? table.plain
  const spelling = [...table.spellings.values()].find((s) => s.unit === unit)
  if (spelling?.inverse && p.number <= 0) return { code: 'out-of-range', hint: `${unit} is above 0.` }
  const factor = spelling?.factor ?? 1
  const value = tidy(spelling?.inverse ? factor / p.number : p.number * factor)
  if (Math.abs(value) > table.largest) {
    return { code: 'out-of-range', hint: `Sizes up to ${table.largest} ${table.plain} are believed.` }
  }
  return { value }
}

/** Takes the dust of binary arithmetic off: 1 1/2 in is 38.1, not 38.099999999999994. */
export const tidy = (v: number): number => Math.round(v * 1e9) / 1e9
