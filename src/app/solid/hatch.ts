type Point2 = readonly [number, number]

/** Hatching of a profile: lines at 45°, `gap` mm apart, leaning one way or the other; neighbours lean differently. */
export function hatch(ring: readonly Point2[], gap: number, lean: 1 | -1): (readonly [Point2, Point2])[] {
  // Along a line of the hatch z − lean·r does not change: each edge is met where its own value passes the line's.
  const offsets = ring.map(([z, r]) => z - lean * r)
  const lines: (readonly [Point2, Point2])[] = []
  for (let k = Math.ceil(Math.min(...offsets) / gap) + 0.5; k * gap < Math.max(...offsets); k++) {
    const met = ring.flatMap((a, i): Point2[] => {
      const b = ring[(i + 1) % ring.length] as Point2
      const [u, v] = [(offsets[i] as number) - k * gap, (offsets[(i + 1) % ring.length] as number) - k * gap]
      if (u > 0 === v > 0) return []
      const share = u / (u - v)
      return [[a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])]]
    })
    const inOrder = met.toSorted((a, b) => a[1] - b[1])
    for (let i = 0; i + 1 < inOrder.length; i += 2) lines.push([inOrder[i] as Point2, inOrder[i + 1] as Point2])
  }
  return lines
}
