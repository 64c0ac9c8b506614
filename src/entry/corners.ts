import { bad, good, type Outcome, problem } from '../problem/problem.ts'
import { parseLength } from './entry.ts'

/** A corner of a board: z from its rear edge, x across from its middle, mm. */
export type Corner = [number, number]

const limit = 'corners as "z x; z x; z x", or a plain board as "42 x 18"'

/**
 * A board's outline as people type it: `42 x 18` for a plain one, length first, or its corners in order round the edge,
 * `0 -9; 42 -9; 42 9; 0 9`, z from the rear edge and x from the middle.
 */
export function parseCorners(text: string, path = ''): Outcome<Corner[]> {
  const fail = (got: string, hint: string) => bad(problem('not-a-number', path, got, limit, hint))
  const plain = /^([^;]+?)\s*[x×*]\s*([^;]+)$/i.exec(text.trim())
  if (plain) {
    const [length, width] = [parseLength(plain[1] ?? ''), parseLength(plain[2] ?? '')]
    if (!length.ok || !width.ok || !(length.value.value > 0) || !(width.value.value > 0))
      return fail(text, 'Give length and width, both above 0: 42 x 18.')
    return good(rectangle(length.value.value, width.value.value))
  }
  const corners: Corner[] = []
  for (const pair of text.split(/[;\n]+/).filter((t) => t.trim() !== '')) {
    const numbers = pair
      .trim()
      .split(/\s+/)
      .map((t) => parseLength(t))
    const [z, x] = numbers
    if (numbers.length !== 2 || !z?.ok || !x?.ok) return fail(pair.trim(), 'Give each corner as two numbers: z x.')
    corners.push([z.value.value, x.value.value])
  }
  return corners.length < 3 ? fail(text, 'An outline has at least three corners.') : good(corners)
}

/** Corners of a plain board, its rear edge at 0. */
export function rectangle(length: number, width: number): Corner[] {
  const half = width / 2
  return [
    [0, -half],
    [length, -half],
    [length, half],
    [0, half],
  ]
}

/** An outline as one would type it. */
export function cornersText(corners: readonly (readonly [number, number])[]): string {
  const [z, x] = [corners.map((c) => c[0]), corners.map((c) => c[1])]
  const [length, width] = [Math.max(...z), 2 * Math.max(...x)]
  const same = JSON.stringify(rectangle(length, width)) === JSON.stringify(corners)
  return same ? `${length} x ${width}` : corners.map(([a, b]) => `${a} ${b}`).join('; ')
}
