/*
 * Checks of what no quick check has: parts in the wall, holes and sleeves. Fetched as one by `fetchRare`, and named nowhere
 * else but here.
 */
export { besideEachOther } from './beside-each-other.ts'
export { besideFitted } from './beside-fitted.ts'
export { inOtherMetal } from './in-other-metal.ts'
export { sleeveFits } from './sleeve-fits.ts'
export { throughHoles } from './through-holes.ts'
