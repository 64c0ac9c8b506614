/** What counts as a wall, for a plan as for a mesh. */

/** Faces are the two sides of a wall where they turn away from each other by at least 150°: a sharp edge is no wall. */
export const opposed = Math.cos((30 * Math.PI) / 180)
/** A thin patch smaller than this is a crumb at an edge, mm². */
export const leastPatch = 1
/** Judged as drawn, with this much for facets, mm. */
export const facetError = 0.02
