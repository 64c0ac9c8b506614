import { bad, good, type Outcome, problem } from '../problem/problem.ts'
import { plainText } from './number.ts'

/** A list longer than this is a wrong paste. */
const mostItems = 500

/**
 * The items of a typed or pasted list: `25.02,25.03`, `25,02; 25,03`, `25.02 25.03`, one a line. The comma is both a
 * separator and a decimal sign; where the text itself does not tell which, it is refused. `whole` says that the
 * numbers are usually whole (angles), so that a comma separates.
 *
 * Fails with missing, too-large or contradiction.
 */
export function splitList(text: string, path = '', whole = false): Outcome<readonly string[]> {
  const t = text.trim()
  if (t === '') return bad(problem('missing', path, text, 'one or more numbers', 'Separate them with semicolons.'))
  if (t.length > mostItems * 16) return bad(problem('too-large', path, text, `${mostItems} numbers`, 'Give fewer.'))
  const parts = separate(t, whole)
  if (!parts) {
    return bad(
      problem(
        'contradiction',
        path,
        text,
        'numbers with one clear separator',
        'Is the comma a decimal sign? Separate with semicolons.',
      ),
    )
  }
  if (parts.length > mostItems) {
    return bad(problem('too-large', path, `${parts.length} numbers`, `at most ${mostItems}`, 'Give fewer.'))
  }
  return good(parts)
}

function separate(t: string, whole: boolean): readonly string[] | undefined {
  if (/[;\n\t]/.test(t)) return items(t.split(/[;\n\t]/))
  const words = plainText(t).split(' ')
  if (words.length > 1 && words.every((w) => /^[+-]?\d+(?:[.,]\d+)?$/.test(w))) return words
  const commas = t.split(',').length - 1
  if (commas === 0) return [t]
  const onlyDigits = /^[\d,+-]+$/.test(t)
  // Digits and an odd number of commas: 25,02,25,03 may be two readings or four.
  if (onlyDigits && !whole && commas % 2 === 1) return undefined
  return items(t.split(','))
}

const items = (parts: readonly string[]): readonly string[] => parts.map((p) => p.trim()).filter((p) => p !== '')
