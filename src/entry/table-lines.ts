import { plainText } from './number.ts'

/** One line of a pasted table, cut into its cells. */
export interface Line {
  /** From 1, as an editor counts. */
  readonly number: number
  readonly text: string
  readonly cells: readonly string[]
}

/**
 * Cuts a pasted table into lines and cells. Which sign separates is told by all lines together: a tab or a semicolon
 * anywhere; else spaces between numbers with decimal commas; else the comma, unless it can only be the decimal sign; else
 * spaces, where nothing but plain numbers stand between them. Empty lines and lines that begin with `#` are left out.
 */
export function cutTable(text: string): readonly Line[] {
  const lines = text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\r|\n/)
    .map((line, i) => ({ number: i + 1, text: line }))
    .filter((line) => line.text.trim() !== '' && !line.text.trimStart().startsWith('#'))
  const cut = separatorOf(lines.map((line) => line.text))
  return lines.map((line) => ({ ...line, cells: cut(line.text) }))
}

type Cut = (line: string) => readonly string[]

function separatorOf(lines: readonly string[]): Cut {
  if (lines.some((line) => line.includes('\t'))) return at(/\t/)
  if (lines.some((line) => outsideQuotes(line).includes(';'))) return at(/;/)
  if (
    lines.every((line) => wordsOf(line).every((w) => plain.test(w))) &&
    lines.some((line) => / \S*,/.test(plainText(line)))
  )
    return wordsOf
  const commas = lines.map((line) => outsideQuotes(line).split(',').length - 1)
  const decimal = lines.every((line, i) => commas[i] === 0 || (commas[i] === 1 && /\d,\d/.test(line)))
  const points = lines.some((line) => /\d\.\d/.test(line))
  if (Math.max(0, ...commas) > 0 && (!decimal || points)) {
    return commas.some((n, i) => n > 0 && /,\s+\S/.test(lines[i] as string)) && !points ? at(/,\s+/) : at(/,/)
  }
  return (line) => {
    const words = wordsOf(line)
    return words.length > 1 && words.every((w) => plain.test(w)) ? words : [bare(line)]
  }
}

/** A number with a decimal point, a decimal comma or neither. */
const plain = /^[+-]?\d+(?:[.,]\d+)?°?$/
const wordsOf = (line: string): readonly string[] => plainText(line).split(' ')

/** Splits at a sign, but not inside quotation marks: `0,60,"1 1/2"""` has three cells. An inch mark opens no quotation. */
const at =
  (sign: RegExp): Cut =>
  (line) => {
    const kept: string[] = []
    const masked = line.replaceAll(quotedCell, (_, before: string, cell: string) => {
      kept.push(cell.slice(1, -1).replaceAll('""', '"'))
      return `${before}\uE000${kept.length - 1}\uE000`
    })
    return masked
      .split(sign)
      .map((cell) => bare(cell.replace(/\uE000(\d+)\uE000/, (_, n: string) => kept[Number(n)] ?? '')))
  }

/** A cell in quotation marks, with what stood before it. */
const quotedCell = /(^|[\t;,])\s*("(?:[^"]|"")*")(?=\s*(?:[\t;,]|$))/g

const outsideQuotes = (line: string): string => line.replaceAll(quotedCell, '$1')
const bare = (cell: string): string =>
  cell.replace(/^\s*"((?:[^"]|"")*)"\s*$/, (_, c: string) => c.replaceAll('""', '"')).trim()
