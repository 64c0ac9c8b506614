import type { UnrolledMark } from '../../papers/unrolled-marks.ts'
import { type Box, boxOf, placeLabel } from './label-room.ts'
import type { StripLayout } from './strip-frame.ts'

/** Where the name of a mark is written on the map, px. */
export interface MarkName {
  readonly x: number
  readonly y: number
  readonly anchor: 'start' | 'end'
}

/** A name stands so far from what it names, px. */
const beside = 4
/** Where its own line is taken, a name goes half above or below its mark, px. */
const lines = [0, -12, 12]

/**
 * The names of what is in, through and over the wall, none over another or over the edge: a sleeve has its name inside,
 * small things beside them. A name without room is left out; the mark still tells it when one points at it.
 */
export function markNames(marks: readonly UnrolledMark[], layout: StripLayout, shown: Box): Map<string, MarkName> {
  const { frame, unrolled } = layout
  const taken: Box[] = []
  const names = new Map<string, MarkName>()
  for (const mark of marks) {
    const half = mark.halfZ * frame.scale
    const [from, to] = [frame.x(mark.z) - half, frame.x(mark.z) + half]
    if (to < shown.x0 || from > shown.x1) continue
    const turn = mark.halfTheta >= 180 ? 348 : ((mark.theta % 360) + 360) % 360
    const foot = unrolled.y + (turn / 360) * unrolled.height + 4
    const start = Math.max(from, shown.x0) + beside + 1
    const places = lines.flatMap((shift) => {
      const y = Math.min(shown.y1 - 4, Math.max(shown.y0 + 11, foot + shift))
      const at = (x: number, anchor: MarkName['anchor']) => ({ x, y, anchor, box: boxOf(mark.name, x, y, anchor) })
      const inside = at(start, 'start')
      return [
        ...(mark.kind === 'sleeve' && inside.box.x1 < Math.min(to, shown.x1) ? [inside] : []),
        at(to + beside, 'start'),
        at(from - beside, 'end'),
      ]
    })
    const place = placeLabel(places, shown, taken)
    if (place) names.set(mark.id, { x: place.x, y: place.y, anchor: place.anchor })
  }
  return names
}
