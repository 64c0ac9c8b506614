import type { OpenSeam } from '../../papers/open-seams.ts'
import { type Box, boxOf, placeLabel } from './label-room.ts'

/** Why the gap rises at a joint, in two or three words. */
export const seamShort = ({ engaged }: OpenSeam): string =>
  engaged === undefined ? 'engagement not said' : 'open at the joint'

/**
 * The words over the joints that are in view, none over another or over what is written there already. What has no room
 * is told in the line above the strips when one points there.
 */
export function seamNames(
  seams: readonly OpenSeam[],
  x: (z: number) => number,
  sheet: Box,
  written: readonly Box[],
): { readonly seam: OpenSeam; readonly x: number; readonly y: number; readonly text: string }[] {
  const taken = [...written]
  return seams.flatMap((seam) => {
    const [from, to] = [x(seam.z0), x(seam.z1)]
    if (to < sheet.x0 || from > sheet.x1) return []
    const text = seamShort(seam)
    const half = (boxOf(text, 0, 0).x1 - boxOf(text, 0, 0).x0) / 2
    const middle = Math.max(sheet.x0 + half, Math.min(sheet.x1 - half, (from + to) / 2))
    const y = sheet.y0 + 10
    const place = placeLabel([{ box: boxOf(text, middle, y) }], sheet, taken)
    return place ? [{ seam, x: middle, y, text }] : []
  })
}
