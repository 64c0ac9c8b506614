import { bad, good, type Outcome, type ProblemCode, problem } from '../problem/problem.ts'
import { plainText } from './number.ts'
import { type Piece, type Refusal, readPiece, refused, sizeOf, tidy } from './piece.ts'
import { type SpreadText, splitRange, splitSpread } from './spread.ts'
import { angleUnits, lengthUnits, pitchUnits, type UnitTable } from './units.ts'

/** What a person typed, understood: the value in millimetres (degrees for angles), with the spread if one was given. */
export interface Entry {
  readonly value: number
  /** How far above and below it may lie, each ≥ 0; absent where none was typed. */
  readonly plus?: number
  readonly minus?: number
  /** Exactly as typed: it stays in the project beside the number. */
  readonly text: string
  /** The unit it was typed in, or the one a bare number has. */
  readonly unit: string
}

/** Longer than any size a person types; a longer text is a paste gone wrong. */
const longestText = 64

/**
 * A length in mm: `25.4`, `25,4`, `1in`, `1 1/2"`, `2.5cm`, `Ø25.4`, with `±0.05`, `+0.1 -0.05` or as `25.4..25.6`.
 * The comma is a decimal sign. A fraction without a unit is refused, for it may be inches; so are exponents and TPI.
 */
export const parseLength = (text: string, path = ''): Outcome<Entry> => parseEntry(text, lengthUnits, path)

/**
 * A pitch in mm: a length, or threads per inch (`32 TPI`).
 * @internal
 */
export const parsePitch = (text: string, path = ''): Outcome<Entry> => parseEntry(text, pitchUnits, path)

/** An angle in degrees: `45`, `45°`, `45 deg ±2`. Not wrapped: −90 stays −90. */
export const parseAngle = (text: string, path = ''): Outcome<Entry> => parseEntry(text, angleUnits, path)

/** Any entry against a table of units. Fails with not-a-number, unknown-unit, missing, out-of-range or contradiction. */
export function parseEntry(text: string, table: UnitTable, path = ''): Outcome<Entry> {
  const fail = (code: ProblemCode, hint: string) =>
    bad(problem(code, path, text, `${table.what}, for example ${table.examples}`, hint))
  if (text.length > longestText) return fail('not-a-number', `Write it in at most ${longestText} characters.`)
  const t = plainText(text).replace(/^(?:[Øø⌀∅]|dia\.?(?![a-z])) ?/i, '')
  if (t === '') return fail('missing', `Type ${table.what}.`)
  const range = splitRange(t)
  const spread = range ? undefined : splitSpread(t)
  const read = range ? readRange(range, table) : spread ? readSpread(spread, table) : readPlain(t, table)
  return refused(read) ? fail(read.code, read.hint) : good({ ...read, text })
}

type Sized = Omit<Entry, 'text'>

function readPlain(t: string, table: UnitTable): Sized | Refusal {
  const piece = readPiece(t, table)
  if (refused(piece)) {
    const two = piece.code === 'not-a-number' && /(\d[\d.,]*) ?[- ] ?([\d.,]+)/.exec(t)
    return two
      ? { ...piece, hint: `For a range write ${two[1]}..${two[2]}, for a tolerance ${two[1]} +0 -0.05.` }
      : piece
  }
  const size = sizeOf(piece, table)
  return refused(size) ? size : { value: size.value, unit: piece.unit ?? table.plain }
}

/** The middle of the range with half its width to each side. A unit at one end serves both. */
function readRange([from, to]: readonly [string, string], table: UnitTable): Sized | Refusal {
  const [a, b] = [readPiece(from, table), readPiece(to, table)]
  if (refused(a)) return a
  if (refused(b)) return b
  const ends = [sizeOf(withUnit(a, b.unit), table), sizeOf(withUnit(b, a.unit), table)] as const
  const [start, end] = ends
  if (refused(start)) return start
  if (refused(end)) return end
  const unit = a.unit ?? b.unit ?? table.plain
  // The ends of a range in threads per inch come out as pitches in falling order.
  const [low, high] = unit === 'TPI' ? [end.value, start.value] : [start.value, end.value]
  if (low > high) return { code: 'contradiction', hint: `The smaller end comes first: ${to}..${from}.` }
  const half = tidy((high - low) / 2)
  return { value: tidy((low + high) / 2), plus: half, minus: half, unit }
}

/** A tolerance without a unit has the value's. The other way round is not guessed: `25.4 ±0.002in` means mm, `1 ±0.002in` not. */
function readSpread(s: SpreadText, table: UnitTable): Sized | Refusal {
  const [base, plus, minus] = [readPiece(s.base, table), readPiece(s.plus, table), readPiece(s.minus, table)]
  if (refused(base)) return base
  if (refused(plus)) return plus
  if (refused(minus)) return minus
  const { unit } = base
  if (unit === undefined && [plus.unit, minus.unit].some((u) => u !== undefined && u !== table.plain)) {
    return { code: 'unknown-unit', hint: 'Say the unit of the value too: 1 in ±0.002 in.' }
  }
  if ([base.unit, plus.unit, minus.unit].includes('TPI')) {
    return { code: 'not-a-number', hint: 'Give a pitch with a tolerance in mm.' }
  }
  if (plus.number < 0 || minus.number < 0) {
    return { code: 'not-a-number', hint: 'A tolerance has one sign: ±0.05 or +0.1 -0.05.' }
  }
  const value = sizeOf(base, table)
  const above = sizeOf(withUnit(plus, unit), table)
  const below = sizeOf(withUnit(minus, unit), table)
  if (refused(value)) return value
  if (refused(above)) return above
  if (refused(below)) return below
  return { value: value.value, plus: above.value, minus: below.value, unit: unit ?? table.plain }
}

const withUnit = (p: Piece, unit: string | undefined): Piece => (p.unit === undefined ? { ...p, unit } : p)
