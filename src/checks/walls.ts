import { sectionOf } from '../../geometry/plan/cross-section.ts'
import { type PlanBody, type PlanItem, planSpan } from '../../geometry/plan/plan.ts'
import { farthest } from '../../geometry/region/farthest.ts'
import { planarGap } from '../../geometry/region/planar-gap.ts'
import { distance, norm, origin } from '../../geometry/region/point.ts'
import { outside, type Region } from '../../geometry/region/region.ts'
import { thinSides } from '../../geometry/region/thin-sides.ts'
import { remember, rememberOn } from '../../geometry/remember.ts'
import { facetError, leastPatch } from '../../geometry/wall.ts'
import type { Sled } from '../resolve/assembly.ts'

/** What is left between two nests, or between a nest and the outside, as drawn. */
export interface Wall {
  readonly thickness: number
  readonly between: string
  readonly parts: readonly string[]
  /** The middle of the wall. */
  readonly z: number
  readonly x: number
  readonly y: number
  readonly path: string
}

/** Faces closer than this are one, mm. */
const same = 1e-6
/** Outsides that come this close are open, mm. */
const merged = 0.02
/** Walls thicker than this are not looked for, mm. */
const thick = 4

interface Cut {
  readonly item: PlanItem
  readonly region: Region
  readonly z0: number
  readonly z1: number
}

/**
 * The thinnest wall of a printed body, as drawn, if one is thinner than 4 mm. A wall through whose middle another cut
 * goes is not there.
 */
export function thinnestWall(sled: Sled, body: PlanBody): Wall | undefined {
  const known = found.get(body) ?? { wall: thinnest(sled, body) }
  found.set(body, known)
  return known.wall
}

/** A planned body belongs to one sled. */
const found = new WeakMap<PlanBody, { readonly wall: Wall | undefined }>()

function thinnest(sled: Sled, body: PlanBody): Wall | undefined {
  const cuts = body.items.flatMap((item): Cut[] => {
    const region = item.op === 'cut' && item.nest !== 'split' ? sectionOf(item.solid) : undefined
    return region ? [{ item, region, ...planSpan(item.solid) }] : []
  })
  const material = body.items.filter((x) => x.op === 'add').map((x) => planSpan(x.solid))
  const solidAt = (z: number) => material.some((s) => z > s.z0 && z < s.z1)
  const openAt = (x: number, y: number, z: number) =>
    !solidAt(z) || cuts.some((c) => z > c.z0 && z < c.z1 && c.region.contains({ x, y }))
  const stations = [...new Set([...cuts.flatMap((c) => [c.z0, c.z1]), ...material.flatMap((s) => [s.z0, s.z1])])].sort(
    (a, b) => a - b,
  )
  const heights = stations.slice(1).map((z, i) => (z + (stations[i] as number)) / 2)
  const perhaps: Perhaps[] = []
  for (const [i, a] of cuts.entries())
    for (let j = i + 1; j < cuts.length; j++) pairWalls(perhaps, sled, a, cuts[j] as Cut)
  for (const c of cuts) outerWalls(perhaps, sled, c)
  for (const c of cuts) endWalls(perhaps, material, c)
  for (const { z0, z1, thickness, x, y, cut, beside } of perhaps.sort((a, b) => a.thickness - b.thickness)) {
    const at = z0 === z1 ? [z0] : heights.filter((z) => z > z0 && z < z1)
    const z = at.find((h) => !openAt(x, y, h))
    if (z === undefined) continue
    const [other, parts] = typeof beside === 'string' ? [beside, [cut.by]] : [beside.nest, [cut.by, beside.by]]
    return { thickness, x, y, z, parts, between: `${cut.nest} and ${other}`, path: cut.dimensions[0]?.path ?? cut.by }
  }
  return undefined
}

/** A wall that is there if it is whole at one of the heights between two, or at the one where they are the same. */
interface Perhaps {
  readonly thickness: number
  readonly x: number
  readonly y: number
  readonly z0: number
  readonly z1: number
  readonly cut: PlanItem
  readonly beside: PlanItem | string
}

/** Cross-sections are the same objects from plan to plan, so what lies between two is found out once. */
const sidesOf = rememberOn((cut: Region, thin: number) => rememberOn((other: Region) => thinSides(cut, other, thin)))
const roundOf = remember(100, String, (radius: number) => outside(origin, radius))
const linkOf = rememberOn((a: Region, b: Region) => planarGap(a, b))

function pairWalls(found: Perhaps[], sled: Sled, a: Cut, b: Cut): void {
  const dz = Math.max(a.z0 - b.z1, b.z0 - a.z1)
  if (dz > thick) return
  const p = a.region.hold
  const q = b.region.hold
  if (distance(p.c, q.c) - p.r - q.r > thick) return
  const link = linkOf(a.region, b.region)
  if (link.d > thick) return
  const between = { cut: a.item, beside: b.item }
  const [lo, hi] = [Math.max(a.z0, b.z0), Math.min(a.z1, b.z1)]
  // Cuts that run into each other are one opening, but may leave thin sides where they do.
  if (dz <= same && link.d <= same) {
    const thin = sled.print.leastWall - facetError
    for (const s of [...sidesOf(a.region, thin)(b.region), ...sidesOf(b.region, thin)(a.region)])
      if (s.length * (hi - lo) >= leastPatch)
        found.push({ thickness: s.thickness, x: s.at.x, y: s.at.y, z0: lo, z1: hi, ...between })
    return
  }
  const thickness = norm(Math.max(0, dz), Math.max(0, link.d))
  const [x, y] = [(link.p.x + link.q.x) / 2, (link.p.y + link.q.y) / 2]
  const [z0, z1] = dz > same ? [(lo + hi) / 2, (lo + hi) / 2] : [lo, hi]
  found.push({ thickness, x, y, z0, z1, ...between })
}

/**
 * A cut that stays inside leaves a wall to the outside, beside it or to the shoulder where a narrower piece begins. One
 * that breaks through is open on purpose, but may leave thin sides where it does.
 */
function outerWalls(found: Perhaps[], sled: Sled, c: Cut): void {
  const far = farthest(c.region, origin)
  const reach = norm(far.x, far.y)
  const between = { cut: c.item, beside: 'the outside' }
  for (const p of sled.pieces) {
    const [z0, z1] = [Math.max(c.z0, p.z0), Math.min(c.z1, p.z1)]
    const out = p.radius - reach
    const r = reach < 1e-9 ? 0 : (p.radius + reach) / 2 / reach
    const at = { x: far.x * r, y: far.y * r }
    if (z1 <= z0) {
      const [along, z] = [z0 - z1, (z0 + z1) / 2]
      // A shoulder only where a wider piece stands before it.
      const inside = () => sled.pieces.some((o) => z > o.z0 && z < o.z1 && o.radius >= r * reach)
      if (out <= 0 && along > merged && along <= thick && inside())
        found.push({ thickness: along, ...at, z0: z, z1: z, ...between })
    } else if (out <= merged) {
      for (const s of sidesOf(c.region, sled.print.leastWall - facetError)(roundOf(p.radius)))
        if (s.length * (z1 - z0) >= leastPatch)
          found.push({ thickness: s.thickness, x: s.at.x, y: s.at.y, z0, z1, ...between })
    } else if (out <= thick && r !== 0) found.push({ thickness: out, ...at, z0, z1, ...between })
  }
}

/** Between a cut and the end of the body. */
function endWalls(found: Perhaps[], material: readonly { z0: number; z1: number }[], c: Cut): void {
  const [rear, blade] = [Math.min(...material.map((s) => s.z0)), Math.max(...material.map((s) => s.z1))]
  const ends = [
    { thickness: c.z0 - rear, z: (c.z0 + rear) / 2, beside: 'the rear end' },
    { thickness: blade - c.z1, z: (c.z1 + blade) / 2, beside: 'the blade end' },
  ]
  const { x, y } = c.region.core
  for (const { thickness, z, beside } of ends)
    if (thickness > merged && thickness <= thick) found.push({ thickness, x, y, z0: z, z1: z, cut: c.item, beside })
}
