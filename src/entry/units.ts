/** The units people type, and what one of them is in the program's own: millimetres and degrees. */

export interface UnitSpelling {
  /** The one way we write it. */
  readonly unit: string
  readonly factor: number
  /** For threads per inch: the value is factor divided by the number. */
  readonly inverse?: true
}

export interface UnitTable {
  /** What the number is, for messages: "a length", "an angle". */
  readonly what: string
  /** The unit of a number typed without one. */
  readonly plain: string
  /** Keys in lower case. */
  readonly spellings: ReadonlyMap<string, UnitSpelling>
  /** A fraction is an inch habit; here one without a unit is asked about, not guessed. */
  readonly fractionNeedsUnit: boolean
  /** Largest size believed at all, in the program's unit. */
  readonly largest: number
  readonly examples: string
}

/** mm in an inch, exact by definition since 1959. */
export const inch = 25.4

const lengths: readonly [string, UnitSpelling][] = [
  ['mm', { unit: 'mm', factor: 1 }],
  ['cm', { unit: 'cm', factor: 10 }],
  ['m', { unit: 'm', factor: 1000 }],
  ['in', { unit: 'in', factor: inch }],
  ['inch', { unit: 'in', factor: inch }],
  ['inches', { unit: 'in', factor: inch }],
  ['"', { unit: 'in', factor: inch }],
]

const threads: readonly [string, UnitSpelling][] = [
  ['tpi', { unit: 'TPI', factor: inch, inverse: true }],
  ['threads per inch', { unit: 'TPI', factor: inch, inverse: true }],
]

/** Ten metres: far past any hilt, blade or cable, so what lies beyond is a slip. */
const longest = 10_000

export const lengthUnits: UnitTable = {
  what: 'a length',
  plain: 'mm',
  spellings: new Map(lengths),
  fractionNeedsUnit: true,
  largest: longest,
  examples: '25.4, 25,4, 1 1/2", 1in, 25.4 ±0.05 or 25.4..25.6',
}

export const pitchUnits: UnitTable = {
  ...lengthUnits,
  what: 'a pitch',
  spellings: new Map([...lengths, ...threads]),
  examples: '1.5, 1.5 mm, 20 TPI or 1/20 in',
}

export const angleUnits: UnitTable = {
  what: 'an angle',
  plain: '°',
  spellings: new Map([
    ['°', { unit: '°', factor: 1 }],
    ['deg', { unit: '°', factor: 1 }],
    ['degree', { unit: '°', factor: 1 }],
    ['degrees', { unit: '°', factor: 1 }],
  ]),
  fractionNeedsUnit: false,
  largest: 36_000,
  examples: '45, 45° or 45 deg ±2',
}

/** For every other unit (N, V, Ω, a count, a ratio): the bare number, or the number followed by that unit. */
export function unitTable(unit: string): UnitTable {
  if (unit === 'mm') return lengthUnits
  if (unit === 'deg' || unit === '°') return angleUnits
  return {
    what: unit === '' ? 'a number' : `a number of ${unit}`,
    plain: unit,
    spellings: new Map(unit === '' ? [] : [[unit.toLowerCase(), { unit, factor: 1 }]]),
    fractionNeedsUnit: false,
    largest: 1e9,
    examples: unit === '' ? '2.5' : `2.5 or 2.5 ${unit}`,
  }
}

/** "mm, cm, m, in": each unit once, for messages. */
export function unitNames(table: UnitTable): string {
  return [...new Set([...table.spellings.values()].map((s) => s.unit))].join(', ') || 'none'
}
