/** The room that a label takes on the sheet, px. */
export interface Box {
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
}

/** A line of small text on the strips: its letters and its height at most, px. */
const letter = 6.2
const line = 13

/** The room of a text that begins or ends at x, or has its middle there, with its foot at y. */
export function boxOf(text: string, x: number, y: number, anchor: 'start' | 'middle' | 'end' = 'middle'): Box {
  const width = letter * text.length
  const x0 = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2
  return { x0, x1: x0 + width, y0: y - line + 3, y1: y + 3 }
}

const over = (a: Box, b: Box): boolean => a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1

/**
 * The first of several places for a label that lies on the sheet and over no other; the place is then taken.
 * Undefined where there is none: what is said elsewhere too is rather left out than cut off or written over.
 */
export function placeLabel<T extends { readonly box: Box }>(
  places: readonly T[],
  sheet: Box,
  taken: Box[],
): T | undefined {
  const inside = ({ x0, x1, y0, y1 }: Box) => x0 >= sheet.x0 && x1 <= sheet.x1 && y0 >= sheet.y0 && y1 <= sheet.y1
  const found = places.find(({ box }) => inside(box) && !taken.some((t) => over(t, box)))
  if (found) taken.push(found.box)
  return found
}
