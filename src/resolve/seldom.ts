/*
 * What is in, through and over the wall, and what is told of sections that are joined or assumed: no quick check has any
 * of it. Fetched as one by `fetchWalls`, and named nowhere else but here.
 */
export { coversOf, roundHolesOf } from './covers.ts'
export { tellUnfitting } from './engaged.ts'
export { intrusionsOf, openingsOf, placeFeatures } from './features.ts'
export { questionPlaces } from './off-section.ts'
export { tellSections } from './tell-sections.ts'
export { tellWires, throughWall } from './through-wall.ts'
export { tubesOver } from './tubes-over.ts'
