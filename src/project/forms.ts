import type { AcrossInput, Beside, Pushed, Relative, Xy, ZPlaceInput } from './schema/place.ts'
import type { Between, FromReadings } from './schema/quantity.ts'

/**
 * Which of its forms a field has. Apart from the schemas, so that whoever works with projects that are known to be
 * sound (the first page's worker) need not load the reader of files.
 */

export const isBetween = (q: object): q is Between => 'min' in q && 'max' in q
export const isFromReadings = (q: object): q is FromReadings => 'readings' in q

export const isXy = (a: AcrossInput): a is Xy => 'x' in a && 'y' in a
export const isBeside = (a: AcrossInput): a is Beside => 'beside' in a
export const isPushed = (a: AcrossInput): a is Pushed => 'pushed' in a
export const isRelative = (p: ZPlaceInput): p is Relative => typeof p === 'object' && 'of' in p
