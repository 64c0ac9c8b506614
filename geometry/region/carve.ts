import { crossings, type Edge, lengthOf, piece, pointAt } from './edge.ts'
import { norm, type Point } from './point.ts'
import { type Region, toBoundary } from './region.ts'

/** Edges shorter than this are dropped when a region is carved, mm. */
const crumb = 1e-9

/**
 * A region less others. The boundary is what is left of the region's own edges outside the cutters, and of the
 * cutters' edges inside the region; it is kept as a heap of pieces, which is all that distances need.
 */
export function carve(base: Region, cutters: readonly Region[]): Region {
  const active = cutters.filter((c) => reaches(base, c))
  if (active.length === 0) return base
  const others = (own: Region) => [base, ...active].filter((r) => r !== own)
  const kept = split(base.edges, others(base)).filter((e) => active.every((c) => !c.contains(pointAt(e, 0.5))))
  const added = active.flatMap((c) =>
    split(c.edges, others(c)).filter(
      (e) => base.contains(pointAt(e, 0.5)) && active.every((o) => o === c || !o.contains(pointAt(e, 0.5))),
    ),
  )
  const contains = (p: Point) => base.contains(p) && active.every((c) => !c.contains(p))
  const edges = [...kept, ...added]
  const core = coreOf(edges, contains, base.core)
  return { edges, contains, core, form: { kind: 'other' }, hold: base.hold, ...(base.bore ? { bore: base.bore } : {}) }
}

/** Several regions as one. */
export function join(regions: readonly Region[]): Region {
  const [first] = regions
  if (first === undefined) throw new RangeError('join needs at least one region')
  if (regions.length === 1) return first
  const edges = regions.flatMap((r) =>
    split(
      r.edges,
      regions.filter((o) => o !== r),
    ).filter((e) => regions.every((o) => o === r || !o.contains(pointAt(e, 0.5)))),
  )
  const contains = (p: Point) => regions.some((r) => r.contains(p))
  const c = first.hold.c
  const r = Math.max(...regions.map((o) => norm(o.hold.c.x - c.x, o.hold.c.y - c.y) + o.hold.r))
  return { edges, contains, core: first.core, form: { kind: 'other' }, hold: { c, r } }
}

function reaches(base: Region, cutter: Region): boolean {
  return norm(base.hold.c.x - cutter.hold.c.x, base.hold.c.y - cutter.hold.c.y) < base.hold.r + cutter.hold.r
}

export function split(edges: readonly Edge[], others: readonly Region[]): Edge[] {
  return edges.flatMap((e) => {
    const ts = [0, 1]
    for (const o of others) if (mayMeet(e, o)) for (const f of o.edges) ts.push(...crossings(e, f))
    if (ts.length === 2) return lengthOf(e) > crumb ? [e] : []
    ts.sort((a, b) => a - b)
    const parts: Edge[] = []
    for (let i = 1; i < ts.length; i++) {
      const part = piece(e, ts[i - 1] as number, ts[i] as number)
      if (lengthOf(part) > crumb) parts.push(part)
    }
    return parts
  })
}

/** False where the circles that hold the two tell that they do not meet. Spares most of the work of a cross-section. */
function mayMeet(e: Edge, { hold }: Region): boolean {
  if (e.kind === 'segment') {
    const half = norm(e.b.x - e.a.x, e.b.y - e.a.y) / 2
    return norm((e.a.x + e.b.x) / 2 - hold.c.x, (e.a.y + e.b.y) / 2 - hold.c.y) <= hold.r + half + apart
  }
  const d = norm(e.c.x - hold.c.x, e.c.y - hold.c.y)
  return d <= e.r + hold.r + apart && d + hold.r >= e.r - apart
}

/** Regions farther apart than this do not meet, whatever the rounding, mm. */
const apart = 1e-6

/** A point well inside: the old one if it still is, else the deepest of those just beside the boundary's pieces. */
function coreOf(edges: readonly Edge[], contains: (p: Point) => boolean, old: Point): Point {
  if (contains(old)) return old
  let best: { p: Point; d: number } = { p: old, d: -1 }
  for (const e of edges) {
    const m = pointAt(e, 0.5)
    for (const [dx, dy] of [
      [0.05, 0],
      [-0.05, 0],
      [0, 0.05],
      [0, -0.05],
    ] as const) {
      const p = { x: m.x + dx, y: m.y + dy }
      if (!contains(p)) continue
      const d = toBoundary({ edges } as Region, p)
      if (d > best.d) best = { p, d }
    }
  }
  return best.p
}
