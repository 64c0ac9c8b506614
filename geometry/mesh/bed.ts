/** Room left between bodies and along the bed's two near edges, mm; common practice, no source. */
export const bedGap = 10

interface Size {
  readonly x: number
  readonly y: number
}

/**
 * Lays rectangles beside one another in rows, in the order given: the near left corner of each, mm. Rows are about as
 * wide as all of it is deep, so that any bed that takes the lot takes it this way. All corners are positive, as 3MF
 * wants it (core specification 3.3: the positive octant).
 */
export function besideOneAnother(sizes: readonly Size[]): Size[] {
  const room = sizes.reduce((sum, s) => sum + (s.x + bedGap) * (s.y + bedGap), 0)
  const width = Math.max(Math.sqrt(room), ...sizes.map((s) => s.x))
  let [x, y, depth] = [bedGap, bedGap, 0]
  return sizes.map((s) => {
    if (x > bedGap && x + s.x > bedGap + width) {
      x = bedGap
      y += depth + bedGap
      depth = 0
    }
    const corner = { x, y }
    x += s.x + bedGap
    depth = Math.max(depth, s.y)
    return corner
  })
}
