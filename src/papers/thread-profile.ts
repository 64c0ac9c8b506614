/** A point of a lengthwise section: height along the hilt, distance from the axis, mm. */
export type Point2 = readonly [number, number]

/**
 * The inner edge of an internal thread of 60° from `z0` to `z1`: crests at radius `crest` (they decide what passes),
 * roots at `root`, mm. Flats of P/4 at the crest and P/8 at the root, flanks between. Source: ISO 68-1 basic profile.
 * The last turn ends where the length ends.
 */
export function threadProfile(z0: number, z1: number, crest: number, root: number, pitch: number): Point2[] {
  const turn: readonly Point2[] = [
    [0, crest],
    [pitch / 4, crest],
    [pitch * (1 / 4 + 5 / 16), root],
    [pitch * (3 / 8 + 5 / 16), root],
  ]
  const points: Point2[] = []
  for (let i = 0; z0 + i * pitch < z1; i++)
    for (const [dz, r] of turn) {
      const z = z0 + i * pitch + dz
      if (z < z1) points.push([z, r])
    }
  return [...points, [z1, points.at(-1)?.[1] ?? crest]]
}
