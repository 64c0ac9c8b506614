/** Farthest a chord may lie from its arc in a file, mm. */
export const chordError = 0.01
/** Fewest facets of a round body. */
export const leastFacets = 96

/**
 * Facets for a circle of radius r mm: from the chord error r(1 − cos π/n) ≤ 0.01, and never fewer than `least`
 * (96 for bodies; small holes may take fewer). Always a multiple of 4, so that the axes are met.
 */
export function facetsFor(r: number, least = leastFacets): number {
  const n = r > chordError ? Math.PI / Math.acos(1 - chordError / r) : 3
  return 4 * Math.ceil(Math.max(n, least) / 4)
}

/** Radius of the polygon that holds a circle of radius r: cutters circumscribe, so that no clearance is eaten. */
export const circumscribed = (r: number, n: number): number => r / Math.cos(Math.PI / n)
