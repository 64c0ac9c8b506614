import type { Place } from '../papers/places.ts'
import { isBeside, isPushed, isRelative, isXy } from '../project/forms.ts'
import type { BodyInput, PartInput } from '../project/schema/part.ts'
import type { AcrossInput, Relative, ZPlaceInput } from '../project/schema/place.ts'
import { usualLayout } from './usual-layout.ts'

/** The ways to say where in the cross-section a part sits. */
export const acrossForms = ['axis', 'xy', 'polar', 'pushed', 'beside'] as const
export type AcrossForm = (typeof acrossForms)[number]

export type End = 'rear' | 'middle' | 'blade'

/** Finds where a thing lies, by its reference; undefined where that is not known. */
export type PlaceOf = (ref: string) => Place | undefined

/** The way a place is said now. */
export function acrossForm(across: AcrossInput | undefined): AcrossForm {
  if (across === undefined) return 'axis'
  if (isXy(across)) return 'xy'
  if (isBeside(across)) return 'beside'
  return isPushed(across) ? 'pushed' : 'polar'
}

/**
 * The same place in the cross-section said another way, as far as that way can say it. Offsets keep it; pushed to the
 * wall and beside a neighbour keep its direction and take the usual gap. Undefined for the axis.
 */
export function acrossAs(
  form: AcrossForm,
  at: Place['across'],
  neighbour?: { readonly ref: string; readonly across: Place['across'] },
): AcrossInput | undefined {
  const { x, y } = at ?? { x: 0, y: 0 }
  switch (form) {
    case 'axis':
      return undefined
    case 'xy':
      return { x: hundredth(x), y: hundredth(y) }
    case 'polar':
      return { r: hundredth(Math.hypot(x, y)), theta: clockAngle(x, y) ?? 0 }
    case 'pushed':
      return { pushed: clockAngle(x, y) ?? 180, gap: usualLayout.cellToOutside }
    case 'beside': {
      if (!neighbour) return undefined
      const from = neighbour.across ?? { x: 0, y: 0 }
      return { beside: neighbour.ref, theta: clockAngle(x - from.x, y - from.y) ?? 0, gap: usualLayout.boardToCell }
    }
  }
}

/** Clock angle of a direction in whole degrees, 0 to 359; undefined on the axis itself. */
function clockAngle(x: number, y: number): number | undefined {
  if (Math.hypot(x, y) < 0.05) return undefined
  return (Math.round((Math.atan2(y, x) * 180) / Math.PI) + 360) % 360
}

/** Height of one of a thing's ends, mm from the datum. */
export const endHeight = (place: Pick<Place, 'rear' | 'blade'>, end: End): number =>
  end === 'rear' ? place.rear : end === 'blade' ? place.blade : (place.rear + place.blade) / 2

/** Which of its faces a part is placed by: the rear one, but its middle where it comes through the wall. */
export const placedFace = (part: PartInput, body: BodyInput | undefined): End =>
  part.at?.face ?? (throughWall(body) ? 'middle' : 'rear')

/** Round about an axis that points at the hilt's: a panel switch, a charge socket. */
export const throughWall = (body: BodyInput | undefined): boolean =>
  body?.shape === 'cylinder' && body.axis === 'radial'

/** Where a place said in numbers lies, before anything was judged; undefined where that takes more than adding up. */
export function heightSaid(z: ZPlaceInput | undefined, placeOf: PlaceOf): number | undefined {
  if (typeof z === 'number') return z
  if (z === undefined || !isRelative(z) || (z.by !== undefined && typeof z.by !== 'number')) return undefined
  const from = placeOf(z.of)
  return from && endHeight(from, z.end ?? 'blade') + (z.by ?? 0)
}

/** The same height as a number from the datum. */
export const heightAlone = (height: number): number => hundredth(height)

/** The same height measured from an end of something. */
export function heightFrom(height: number, of: Place, end: End): Relative {
  return { of: of.ref, end, by: hundredth(height - endHeight(of, end)) }
}

/** What a place along z is measured from: a reference, or nothing for the datum. */
export const measuredFrom = (z: ZPlaceInput | undefined): Relative | undefined =>
  z !== undefined && isRelative(z) ? z : undefined

const hundredth = (n: number): number => Math.round(n * 100) / 100 + 0

/** The section at a height, by reference; undefined outside the hilt. */
export const sectionAt = (places: readonly Place[], z: number): string | undefined =>
  places.find((p) => p.ref.startsWith('sections/') && p.rear <= z && z <= p.blade)?.ref
