import { type Problem, problem } from '../problem/problem.ts'
import { parseAngle, parseLength } from './entry.ts'
import { cutTable, type Line } from './table-lines.ts'

/** One reading as it stood in a pasted table or file: the reading as typed, its place where that was noted. */
export interface ReadingRow {
  /** Line of the text it stood in, from 1. */
  readonly line: number
  readonly value: string
  /** Depth along the axis, mm. */
  readonly z: number | undefined
  /** Clock angle, degrees. */
  readonly theta: number | undefined
}

export interface ReadingTable {
  readonly rows: readonly ReadingRow[]
  /** Lines that were not understood; their paths are `line/7`. The others are taken all the same. */
  readonly problems: readonly Problem[]
}

type Column = 'z' | 'theta' | 'value'

/** What columns hold where no head says so: the reading last, the angle before it, the depth first. */
const usual: readonly (readonly Column[])[] = [[], ['value'], ['theta', 'value'], ['z', 'theta', 'value']]

const heads: readonly (readonly [RegExp, Column])[] = [
  [/^(depth|z|height|station|place)\b/, 'z'],
  [/^(angle|theta|θ|clock|direction)/, 'theta'],
  [/^(diameter|reading|value|bore|outside|length|size|width|dia|d|⌀|ø)/, 'value'],
]

/** More readings than anybody takes of one place. */
const mostRows = 500
const longestText = 100_000

/**
 * Readings from a pasted column, a spreadsheet's cells or a CSV file: depth, angle, diameter. Two columns are angle and
 * diameter, one is the diameter; a head line may name them in any order, with a unit as `diameter (in)`. Separators are
 * tabs, semicolons, commas or spaces; a comma may be the decimal sign. Several like sizes in one line are repeats.
 * Depth and angle may be empty. What is not understood is told line by line.
 */
export function parseReadings(text: string): ReadingTable {
  if (text.length > longestText)
    return { rows: [], problems: [told(1, text, 'too-large', `at most ${mostRows} readings`, 'Give fewer at a time.')] }
  const lines = cutTable(text)
  const head = lines[0] && headOf(lines[0])
  const body = head ? lines.slice(1) : lines
  if (!head && body.length === 1 && body[0] && repeats(body[0]))
    return gathered(
      body[0].cells.map((cell) => ({ ...(body[0] as Line), cells: [cell] })),
      undefined,
    )
  return gathered(body, head)
}

function gathered(lines: readonly Line[], head: readonly Head[] | undefined): ReadingTable {
  const rows: ReadingRow[] = []
  const problems: Problem[] = []
  for (const line of lines) {
    const read = rowOf(line, head)
    if ('code' in read) problems.push(read)
    else rows.push(read)
  }
  if (rows.length <= mostRows) return { rows, problems }
  const past = rows[mostRows] as ReadingRow
  const rest = `${rows.length - mostRows} more`
  return {
    rows: rows.slice(0, mostRows),
    problems: [
      ...problems,
      told(past.line, rest, 'too-large', `at most ${mostRows} readings`, 'Give fewer at a time.'),
    ],
  }
}

interface Head {
  readonly column: Column | undefined
  readonly unit: string
}

/** The columns by the names in a first line; undefined where it has none, because it is a line of readings. */
function headOf({ cells }: Line): readonly Head[] | undefined {
  const named = cells.map((cell): Head => {
    const name = cell.toLowerCase()
    const unit = /[([]\s*(mm|cm|in|inch|inches|")\s*[)\]]|[,/]\s*(mm|cm|in|inch|inches)$/.exec(name)
    return { column: heads.find(([pattern]) => pattern.test(name))?.[1], unit: unit?.[1] ?? unit?.[2] ?? '' }
  })
  return named.some((h) => h.column === 'value') ? named : undefined
}

function rowOf(line: Line, head: readonly Head[] | undefined): ReadingRow | Problem {
  const { cells, number } = line
  const columns = head ?? usual[cells.length]?.map((column) => ({ column, unit: '' }))
  if (!columns || (head && cells.length > head.length))
    return told(
      number,
      line.text,
      'contradiction',
      'depth, angle and diameter at most',
      'Is the comma a decimal sign? Then separate the columns with semicolons or tabs.',
    )
  const cell = (wanted: Column): { text: string; unit: string } => {
    const i = columns.findIndex((c) => c.column === wanted)
    return { text: cells[i] ?? '', unit: columns[i]?.unit ?? '' }
  }
  const value = withUnit(cell('value'))
  const size = parseLength(value)
  if (!size.ok) return told(number, line.text, 'not-a-number', 'a reading', size.problems[0]?.hint ?? '')
  if (size.value.value <= 0) return told(number, line.text, 'out-of-range', 'a reading above 0', 'Read it again.')
  const [z, theta] = [withUnit(cell('z')), cell('theta').text]
  const depth = z === '' ? undefined : parseLength(z)
  const angle = theta === '' ? undefined : parseAngle(theta)
  if (depth?.ok === false) return told(number, line.text, 'not-a-number', 'a depth', depth.problems[0]?.hint ?? '')
  if (angle?.ok === false) return told(number, line.text, 'not-a-number', 'an angle', angle.problems[0]?.hint ?? '')
  return { line: number, value, z: depth?.value.value, theta: angle?.value.value }
}

/** The head's unit goes with a number that has none of its own. */
const withUnit = ({ text, unit }: { text: string; unit: string }): string =>
  unit === '' || unit === 'mm' || text === '' || /[a-z"″”']/i.test(text) ? text : `${text} ${unit}`

/** Several sizes in one line that are as alike as readings of one place, so no depth, angle and diameter. */
function repeats({ cells }: Line): boolean {
  const sizes = cells.map((c) => parseLength(c)).map((p) => (p.ok ? p.value.value : 0))
  return sizes.length > 1 && Math.min(...sizes) > 0 && Math.max(...sizes) < 1.25 * Math.min(...sizes)
}

const told = (line: number, got: string, code: Problem['code'], limit: string, hint: string): Problem =>
  problem(code, `line/${line}`, got, limit, hint)

/** The same table as text: a head, then one reading a line. What was typed stays as it was typed. */
export function readingsText(rows: readonly Omit<ReadingRow, 'line'>[]): string {
  const cell = (v: number | string | undefined) => quoted(v === undefined ? '' : String(v))
  const lines = rows.map((r) => [r.z, r.theta, decimalPoint(r.value)].map(cell).join(','))
  return `${['depth,angle,diameter', ...lines].join('\r\n')}\r\n`
}

/** In a file with commas between the columns a plain number has a decimal point. */
const decimalPoint = (text: string): string => (/^\s*\d+,\d+\s*$/.test(text) ? text.trim().replace(',', '.') : text)

/** Quotation marks double themselves inside quotation marks (RFC 4180). */
const quoted = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)
