/*
 * What is in, through and over the wall, what is told of sections that are joined, assumed, clamped or off the axis, and
 * a sled that is placed, seated or of more than one width: no quick check has any of it. Fetched as one by `fetchWalls`,
 * and named nowhere else but here.
 */
export { clampStates } from './clamp-states.ts'
export { coversOf, roundHolesOf } from './covers.ts'
export { eccentric } from './eccentric.ts'
export { tellUnfitting } from './engaged.ts'
export { intrusionsOf, openingsOf, placeFeatures } from './features.ts'
export { refuseFacing } from './leaf-facing.ts'
export { tellNotYet } from './not-yet.ts'
export { questionPlaces } from './off-section.ts'
export { sledShift } from './sled-shift.ts'
export { tellSections } from './tell-sections.ts'
export { tellWires, throughWall } from './through-wall.ts'
export { tubesOver } from './tubes-over.ts'
export { slim, typedPieces, typedRings } from './typed-outside.ts'
