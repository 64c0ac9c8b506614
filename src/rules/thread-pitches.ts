/**
 * Coarse pitches of ISO metric threads, mm, by major diameter: what `M3` alone means. Source: ISO 261, first and
 * second choice; M1.6 to M8 read in a tap maker's catalogue, larger ones from memory.
 */
export const coarsePitches: ReadonlyMap<number, number> = new Map([
  [1, 0.25],
  [1.2, 0.25],
  [1.4, 0.3],
  [1.6, 0.35],
  [1.8, 0.35],
  [2, 0.4],
  [2.5, 0.45],
  [3, 0.5],
  [3.5, 0.6],
  [4, 0.7],
  [5, 0.8],
  [6, 1],
  [7, 1],
  [8, 1.25],
  [10, 1.5],
  [12, 1.75],
  [14, 2],
  [16, 2],
  [18, 2.5],
  [20, 2.5],
  [22, 2.5],
  [24, 3],
  [27, 3],
  [30, 3.5],
  [33, 3.5],
  [36, 4],
])

/**
 * Up to here a screw named without its pitch is coarse. Larger threads in a hilt are cut into tubes, nearly always
 * fine, so there the coarse pitch counts as assumed, mm. Common practice, no source.
 */
export const coarseTrustedUpTo = 8
