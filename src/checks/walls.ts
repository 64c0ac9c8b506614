import { sectionOf } from '../../geometry/plan/cross-section.ts'
import { itemNumber } from '../../geometry/plan/one-item.ts'
import { type PlanBody, type PlanItem, planSpan } from '../../geometry/plan/plan.ts'
import { farthest } from '../../geometry/region/farthest.ts'
import { planarGap } from '../../geometry/region/planar-gap.ts'
import { distance, norm } from '../../geometry/region/point.ts'
import type { Region } from '../../geometry/region/region.ts'
import { remember, rememberOn } from '../../geometry/remember.ts'
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

/** Cuts that come this close are one opening, drawn to overlap, mm. */
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
    const region = item.op === 'cut' && item.nest !== 'split' ? regionOf(item).region : undefined
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
  const perhaps = [
    ...cuts.flatMap((a, i) => cuts.slice(i + 1).flatMap((b) => pairWalls(a, b))),
    ...cuts.flatMap((c) => outerWalls(sled, c)),
    ...cuts.flatMap((c) => endWalls(material, c)),
  ]
  for (const { z0, z1, ...wall } of perhaps.sort((a, b) => a.thickness - b.thickness)) {
    const at = z0 === z1 ? [z0] : heights.filter((z) => z > z0 && z < z1)
    const z = at.find((h) => !openAt(wall.x, wall.y, h))
    if (z !== undefined) return { ...wall, z }
  }
  return undefined
}

/** A wall that is there if it is whole at one of the heights between two, or at the one where they are the same. */
interface Perhaps extends Omit<Wall, 'z'> {
  readonly z0: number
  readonly z1: number
}

/** The same cut has the same cross-section in every plan, so that what lies between two is found out once. */
const regionOf = remember(
  300,
  (x: PlanItem) => String(itemNumber(x)),
  (item) => ({ region: sectionOf(item.solid) }),
)
const linkOf = rememberOn((a: Region, b: Region) => planarGap(a, b))

function pairWalls(a: Cut, b: Cut): Perhaps[] {
  const dz = Math.max(a.z0 - b.z1, b.z0 - a.z1)
  if (dz > thick) return []
  const [p, q] = [a.region.hold, b.region.hold]
  if (distance(p.c, q.c) - p.r - q.r > thick) return []
  const link = linkOf(a.region, b.region)
  if (link.d > thick || (dz <= merged && link.d <= merged)) return []
  const thickness = norm(Math.max(0, dz), Math.max(0, link.d))
  const base = {
    thickness,
    between: `${a.item.nest} and ${b.item.nest}`,
    parts: [a.item.by, b.item.by],
    path: pathOf(a.item),
  }
  const [x, y] = [(link.p.x + link.q.x) / 2, (link.p.y + link.q.y) / 2]
  const [lo, hi] = [Math.max(a.z0, b.z0), Math.min(a.z1, b.z1)]
  const at = dz > merged ? { z0: (lo + hi) / 2, z1: (lo + hi) / 2 } : { z0: lo, z1: hi }
  return [{ ...base, x, y, ...at }]
}

/** A cut that stays inside leaves a wall to the outside; one that breaks through is open on purpose. */
function outerWalls(sled: Sled, c: Cut): Perhaps[] {
  const far = farthest(c.region, { x: 0, y: 0 })
  const reach = norm(far.x, far.y)
  return sled.pieces.flatMap((p): Perhaps[] => {
    const thickness = p.radius - reach
    if (thickness <= merged || thickness > thick || reach < 1e-9) return []
    const out = (p.radius + reach) / 2 / reach
    const wall = { thickness, between: `${c.item.nest} and the outside`, parts: [c.item.by], path: pathOf(c.item) }
    return [{ ...wall, x: far.x * out, y: far.y * out, z0: Math.max(c.z0, p.z0), z1: Math.min(c.z1, p.z1) }]
  })
}

/** Between a cut and the end of the body. */
function endWalls(material: readonly { z0: number; z1: number }[], c: Cut): Perhaps[] {
  const [rear, blade] = [Math.min(...material.map((s) => s.z0)), Math.max(...material.map((s) => s.z1))]
  const ends = [
    { thickness: c.z0 - rear, z: (c.z0 + rear) / 2, name: 'rear end' },
    { thickness: blade - c.z1, z: (c.z1 + blade) / 2, name: 'blade end' },
  ]
  return ends.flatMap(({ thickness, z, name }): Perhaps[] => {
    const at = { x: c.region.core.x, y: c.region.core.y, z0: z, z1: z }
    if (thickness <= merged || thickness > thick) return []
    return [{ thickness, between: `${c.item.nest} and the ${name}`, parts: [c.item.by], path: pathOf(c.item), ...at }]
  })
}

const pathOf = (x: PlanItem): string => x.dimensions[0]?.path ?? x.by
