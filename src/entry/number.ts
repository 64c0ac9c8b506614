/**
 * Reading one number the way people write it: decimal point or comma, fractions as the inch rule has them, the typed
 * and the typographic signs. No exponents: nobody at a bench writes 1e3, and what looks like one is a slip.
 */

const vulgar: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
}

/** One spelling for each sign: minus, fraction slash, inch mark, spaces. Vulgar fractions become `1/2`. */
export function plainText(text: string): string {
  return text
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (c) => ` ${vulgar[c]}`)
    .replace(/[\u2212\uFE63\uFF0D]/g, '-')
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[\u2033\u201C\u201D]|''/g, '"')
    .replace(/\s+/g, ' ')
    .trim()
}

export interface PlainNumber {
  readonly value: number
  /** Written as a fraction: then a missing unit is not guessed. */
  readonly fraction: boolean
}

const decimal = /^([+-]?)(\d{1,9}(?:[.,]\d{1,12}|\.)?|[.,]\d{1,12})$/
const fraction = /^([+-]?)(?:(\d{1,4})(?:-| - | ))?(\d{1,4}) ?\/ ?(\d{1,4})$/

/**
 * A number without a unit, from text already made plain; undefined where it is none. A mixed number's fraction must be
 * proper: `1 5/4` is more likely a slip than two and a quarter.
 */
export function readNumber(text: string): PlainNumber | undefined {
  const d = decimal.exec(text)
  if (d) return { value: signed(d[1], Number((d[2] as string).replace(',', '.'))), fraction: false }
  const f = fraction.exec(text)
  if (!f) return undefined
  const [whole, top, bottom] = [Number(f[2] ?? 0), Number(f[3]), Number(f[4])]
  if (bottom === 0 || (f[2] !== undefined && top >= bottom)) return undefined
  return { value: signed(f[1], whole + top / bottom), fraction: true }
}

const signed = (sign: string | undefined, size: number): number => (sign === '-' && size !== 0 ? -size : size)
