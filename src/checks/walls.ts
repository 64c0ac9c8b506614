import { sectionOf } from '../../geometry/plan/cross-section.ts'
import { type PlanBody, type PlanItem, planSpan } from '../../geometry/plan/plan.ts'
import { farthest } from '../../geometry/region/farthest.ts'
import { planarGap } from '../../geometry/region/planar-gap.ts'
import { norm } from '../../geometry/region/point.ts'
import type { Region } from '../../geometry/region/region.ts'
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

/** Every wall of a printed body thinner than 4 mm, as drawn. A wall through whose middle another cut goes is not there. */
export function wallsOf(sled: Sled, body: PlanBody): readonly Wall[] {
  const walls = found.get(body) ?? allWalls(sled, body)
  found.set(body, walls)
  return walls
}

/** A planned body belongs to one sled. */
const found = new WeakMap<PlanBody, readonly Wall[]>()

function allWalls(sled: Sled, body: PlanBody): Wall[] {
  const cuts = body.items.flatMap((item): Cut[] => {
    const region = item.op === 'cut' && item.nest !== 'split' ? sectionOf(item.solid) : undefined
    return region ? [{ item, region, ...planSpan(item.solid) }] : []
  })
  const material = body.items.filter((x) => x.op === 'add').map((x) => planSpan(x.solid))
  const solidAt = (z: number) => material.some((s) => z > s.z0 && z < s.z1)
  const openAt = (w: Pick<Wall, 'x' | 'y' | 'z'>) =>
    !solidAt(w.z) || cuts.some((c) => w.z > c.z0 && w.z < c.z1 && c.region.contains(w))
  const stations = [...new Set([...cuts.flatMap((c) => [c.z0, c.z1]), ...material.flatMap((s) => [s.z0, s.z1])])].sort(
    (a, b) => a - b,
  )
  const heights = stations.slice(1).map((z, i) => (z + (stations[i] as number)) / 2)
  const between = (z0: number, z1: number) => heights.filter((z) => z > z0 && z < z1)
  const there = (w: Omit<Wall, 'z'>, zs: readonly number[]): Wall[] => {
    const z = zs.find((h) => !openAt({ ...w, z: h }))
    return z === undefined ? [] : [{ ...w, z }]
  }
  return [
    ...cuts.flatMap((a, i) => cuts.slice(i + 1).flatMap((b) => pairWalls(a, b, between, there))),
    ...cuts.flatMap((c) => outerWalls(sled, c, between, there)),
    ...cuts.flatMap((c) => endWalls(material, c, openAt)),
  ]
}

type Between = (z0: number, z1: number) => number[]
type There = (w: Omit<Wall, 'z'>, zs: readonly number[]) => Wall[]

function pairWalls(a: Cut, b: Cut, between: Between, there: There): Wall[] {
  const dz = Math.max(a.z0 - b.z1, b.z0 - a.z1)
  if (dz > thick) return []
  const link = planarGap(a.region, b.region)
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
  return there({ ...base, x, y }, dz > merged ? [(lo + hi) / 2] : between(lo, hi))
}

/** A cut that stays inside leaves a wall to the outside; one that breaks through is open on purpose. */
function outerWalls(sled: Sled, c: Cut, between: Between, there: There): Wall[] {
  const far = farthest(c.region, { x: 0, y: 0 })
  const reach = norm(far.x, far.y)
  return sled.pieces.flatMap((p): Wall[] => {
    const thickness = p.radius - reach
    if (thickness <= merged || thickness > thick || reach < 1e-9) return []
    const out = (p.radius + reach) / 2 / reach
    const wall = { thickness, between: `${c.item.nest} and the outside`, parts: [c.item.by], path: pathOf(c.item) }
    return there({ ...wall, x: far.x * out, y: far.y * out }, between(Math.max(c.z0, p.z0), Math.min(c.z1, p.z1)))
  })
}

/** Between a cut and the end of the body. */
function endWalls(
  material: readonly { z0: number; z1: number }[],
  c: Cut,
  openAt: (w: Pick<Wall, 'x' | 'y' | 'z'>) => boolean,
): Wall[] {
  const [rear, blade] = [Math.min(...material.map((s) => s.z0)), Math.max(...material.map((s) => s.z1))]
  const ends = [
    { thickness: c.z0 - rear, z: (c.z0 + rear) / 2, name: 'rear end' },
    { thickness: blade - c.z1, z: (c.z1 + blade) / 2, name: 'blade end' },
  ]
  return ends.flatMap(({ thickness, z, name }): Wall[] => {
    const at = { x: c.region.core.x, y: c.region.core.y, z }
    if (thickness <= merged || thickness > thick || openAt(at)) return []
    return [{ thickness, between: `${c.item.nest} and the ${name}`, parts: [c.item.by], path: pathOf(c.item), ...at }]
  })
}

const pathOf = (x: PlanItem): string => x.dimensions[0]?.path ?? x.by
