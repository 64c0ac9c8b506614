/** Envelopes of wire bundles: how round a bundle is taken to be when it has to pass a channel. */

/** Share of the envelope's area that a loose bundle fills. Common practice, no source. */
const usualFill = 0.6

/**
 * Envelope of n equal wires over one wire's diameter: closed forms for 1 to 7 (circle packing in a circle, computed);
 * beyond, packed to 0.6 of the area, never below two side by side.
 */
export function bundleFactor(n: number): number {
  const closed = [0, 1, 2, 1 + 2 / Math.sqrt(3), 1 + Math.SQRT2, 1 + Math.sqrt(2 * (1 + 1 / Math.sqrt(5))), 3, 3]
  return closed[n] ?? Math.max(2, Math.sqrt(n / usualFill))
}

/**
 * Envelope diameter (mm) of wires of any diameters (mm, at least one): equal ones by `bundleFactor`; two side by side,
 * exactly; more that differ by the fill of the area, never below the two largest side by side, nor below the
 * envelope of as many of the smallest.
 */
export function bundleDiameter(wires: readonly number[]): number {
  const sorted = wires.toSorted((a, b) => b - a)
  const [first = 0, second = 0] = sorted
  const smallest = sorted.at(-1) ?? 0
  if (first === smallest) return first * bundleFactor(sorted.length)
  const filled = Math.sqrt(sorted.reduce((sum, d) => sum + d * d, 0) / usualFill)
  return sorted.length === 2 ? first + second : Math.max(first + second, filled, smallest * bundleFactor(sorted.length))
}
