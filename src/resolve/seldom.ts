/*
 * What is in, through and over the wall: no quick check has any of it. Fetched as one by `fetchWalls`, and named nowhere
 * else but here.
 */
export { coversOf, roundHolesOf } from './covers.ts'
export { intrusionsOf, openingsOf, placeFeatures } from './features.ts'
export { questionPlaces } from './off-section.ts'
