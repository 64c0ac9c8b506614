/** Values on a grid of points: `at(column, row)`, columns along the hilt, rows around it. */
export interface Field {
  readonly columns: number
  readonly rows: number
  readonly at: (column: number, row: number) => number
}

/** A closed line around ground that reaches a level, as [column, row]. */
export type ContourRing = readonly (readonly [number, number])[]

type Point = readonly [number, number]

/**
 * Rings around everything that is at or above a level, by marching squares with straight interpolation. The field
 * counts as low all around, so that every ring closes; holes are rings of their own (fill by even and odd). Two high
 * corners across a square are joined where the middle of the four is high too.
 */
export function contourRings(field: Field, level: number): ContourRing[] {
  const next = new Map<string, { readonly from: Point; readonly to: Point }>()
  const { columns, rows, at } = field
  const high = (c: number, r: number): boolean => c >= 0 && r >= 0 && c < columns && r < rows && at(c, r) >= level
  for (let r = -1; r < rows; r++) {
    let [a, e] = [false, false]
    for (let c = -1; c < columns; c++) {
      const [b, d] = [high(c + 1, r), high(c + 1, r + 1)]
      const code = (a ? 1 : 0) + (b ? 2 : 0) + (d ? 4 : 0) + (e ? 8 : 0)
      if (code !== 0 && code !== 15)
        for (const [from, to] of crossing(field, c, r, level, code))
          if (from[0] !== to[0] || from[1] !== to[1]) next.set(keyOf(from), { from, to })
      a = b
      e = d
    }
  }
  return chained(next)
}

/** A crossing keeps this much away from the points of the field, so that no two lines meet in one. */
const aside = 1e-3

const keyOf = ([c, r]: Point): string => `${Math.round(c * 1e5)} ${Math.round(r * 1e5)}`

/** The pieces of line in one square, always with the high ground on the same side. */
function crossing(field: Field, c: number, r: number, level: number, code: number): (readonly [Point, Point])[] {
  const { columns, rows } = field
  const value = (x: number, y: number): number =>
    x < 0 || y < 0 || x >= columns || y >= rows ? Number.NEGATIVE_INFINITY : field.at(x, y)
  const corners = [value(c, r), value(c + 1, r), value(c + 1, r + 1), value(c, r + 1)] as const
  const [a, b, d, e] = corners
  const south: Point = [c + part(a, b, level), r < 0 ? 0 : r]
  const north: Point = [c + part(e, d, level), r + 1 >= rows ? rows - 1 : r + 1]
  const west: Point = [c < 0 ? 0 : c, r + part(a, e, level)]
  const east: Point = [c + 1 >= columns ? columns - 1 : c + 1, r + part(b, d, level)]
  if (code !== 5 && code !== 10) {
    const [from, to] = sides[code] as readonly [Side, Side]
    const at = { south, north, west, east }
    return [[at[from], at[to]]]
  }
  const joined = corners.reduce((sum, v) => sum + v, 0) / 4 >= level
  if (code === 5)
    return joined
      ? [
          [east, south],
          [west, north],
        ]
      : [
          [west, south],
          [east, north],
        ]
  return joined
    ? [
        [south, west],
        [north, east],
      ]
    : [
        [south, east],
        [north, west],
      ]
}

type Side = 'south' | 'north' | 'west' | 'east'

/** From which side of a square to which the line runs, by which of its corners are high (1, 2, 4, 8 from the south-west on). */
const sides: Readonly<Record<number, readonly [Side, Side]>> = {
  1: ['west', 'south'],
  2: ['south', 'east'],
  3: ['west', 'east'],
  4: ['east', 'north'],
  6: ['south', 'north'],
  7: ['west', 'north'],
  8: ['north', 'west'],
  9: ['north', 'south'],
  11: ['north', 'east'],
  12: ['east', 'west'],
  13: ['east', 'south'],
  14: ['south', 'west'],
}

/** How far from the first corner to the second the level lies; where one of them is outside the field, at the other. */
function part(from: number, to: number, level: number): number {
  if (from === Number.NEGATIVE_INFINITY) return 1
  if (to === Number.NEGATIVE_INFINITY) return 0
  return Math.min(1 - aside, Math.max(aside, (level - from) / (to - from)))
}

function chained(next: Map<string, { readonly from: Point; readonly to: Point }>): ContourRing[] {
  const rings: ContourRing[] = []
  for (const [key, first] of next) {
    next.delete(key)
    const points: Point[] = [first.from]
    for (let at: { readonly from: Point; readonly to: Point } | undefined = first; at; ) {
      const end = keyOf(at.to)
      if (end === key) break
      points.push(at.to)
      at = next.get(end)
      next.delete(end)
    }
    rings.push(straightened(points))
  }
  return rings
}

/** Without the points that lie on the line between their neighbours. */
function straightened(ring: readonly Point[]): ContourRing {
  return ring.filter((p, i) => {
    const [a, b] = [ring.at(i - 1) as Point, ring[(i + 1) % ring.length] as Point]
    return Math.abs((p[0] - a[0]) * (b[1] - a[1]) - (p[1] - a[1]) * (b[0] - a[0])) > 1e-8
  })
}
