import { sectionOf } from '../../geometry/plan/cross-section.ts'
import { type PlanItem, planSpan } from '../../geometry/plan/plan.ts'
import { planarGap } from '../../geometry/region/planar-gap.ts'
import type { Region } from '../../geometry/region/region.ts'
import { farthest } from '../../geometry/solid/silhouette.ts'
import { marginsOf } from '../quantity/margins.ts'
import { exact } from '../quantity/quantity.ts'
import type { Sled } from '../resolve/assembly.ts'
import { type Finding, finding } from './finding.ts'
import { mm } from './words.ts'
import type { Check, World } from './world.ts'

/** Walls left between two nests, and between a nest and the outside, against what the process can print. */
export const sledWall: Check = {
  name: 'sled-wall',
  title: 'Walls of the sled',
  what: 'Thinnest wall between two nests and between a nest and the outside, against what the process prints.',
  run: (world) => world.assembly.sleds.flatMap((sled) => judged(world, sled)),
}

interface Wall {
  readonly thickness: number
  readonly between: string
  readonly parts: readonly string[]
  /** The middle of the wall. */
  readonly z: number
  readonly x: number
  readonly y: number
  readonly path: string
}

/** A wall through whose middle another cut goes is not there. */
function opened(w: Wall, cuts: readonly PlanItem[]): boolean {
  return cuts.some(({ solid }) => {
    const { z0, z1 } = planSpan(solid)
    return w.z > z0 && w.z < z1 && (sectionOf(solid) as Region).contains({ x: w.x, y: w.y })
  })
}

/** Cuts that come this close are one opening, drawn to overlap, mm. */
const merged = 0.02

function judged(world: World, sled: Sled): Finding[] {
  const items = world.plans.get(sled.id)?.bodies.flatMap((b) => b.items) ?? []
  const cuts = items.filter((x) => x.op === 'cut' && sectionOf(x.solid) !== undefined)
  const walls = [...betweenCuts(cuts), ...toOutside(sled, cuts)].filter((w) => !opened(w, cuts))
  const thinnest = walls.reduce<Wall | undefined>((a, b) => (a && a.thickness <= b.thickness ? a : b), undefined)
  if (!thinnest) return []
  const limit = sled.print.leastWall
  // Judged as drawn: the process's least wall is itself a drawn thickness, its print error included.
  const margin = exact(thinnest.thickness - limit)
  return [
    finding({
      id: `sled-wall:${sled.id}`,
      check: 'sled-wall',
      title: `Thinnest wall of ${sled.name}: ${thinnest.between}`,
      value: thinnest.thickness,
      limit,
      unit: 'mm',
      margins: marginsOf(margin),
      contributions: [],
      at: {
        z: thinnest.z,
        theta: ((Math.atan2(thinnest.y, thinnest.x) * 180) / Math.PI + 360) % 360,
        r: Math.hypot(thinnest.x, thinnest.y),
      },
      parts: [...new Set([`sleds/${sled.id}`, ...thinnest.parts])],
      state: 'every state',
      why: `${mm(thinnest.thickness)} mm are left as drawn between ${thinnest.between}; the process prints ${mm(limit)} or more.`,
      source: `least wall: ${sled.print.source}`,
      fix:
        thinnest.thickness >= limit
          ? []
          : [
              {
                text: `Move them ${mm(limit - thinnest.thickness)} mm apart, or open the wall on purpose.`,
                path: thinnest.path,
              },
            ],
    }),
  ]
}

function betweenCuts(cuts: readonly PlanItem[]): Wall[] {
  return cuts.flatMap((a, i) =>
    cuts.slice(i + 1).flatMap((b): Wall[] => {
      const [sa, sb] = [planSpan(a.solid), planSpan(b.solid)]
      const dz = Math.max(sa.z0 - sb.z1, sb.z0 - sa.z1)
      const planar = planarGap(sectionOf(a.solid) as Region, sectionOf(b.solid) as Region)
      if (dz <= merged && planar.d <= merged) return []
      const thickness = Math.hypot(Math.max(0, dz), Math.max(0, planar.d))
      const [lo, hi] = [Math.max(sa.z0, sb.z0), Math.min(sa.z1, sb.z1)]
      const place = { z: (lo + hi) / 2, x: (planar.p.x + planar.q.x) / 2, y: (planar.p.y + planar.q.y) / 2 }
      return [{ thickness, between: `${a.nest} and ${b.nest}`, parts: [a.by, b.by], path: pathOf(a), ...place }]
    }),
  )
}

/** A cut that stays inside leaves a wall to the outside; one that breaks through is open on purpose. */
function toOutside(sled: Sled, cuts: readonly PlanItem[]): Wall[] {
  return cuts.flatMap((c) => {
    const span = planSpan(c.solid)
    const region = sectionOf(c.solid) as Region
    const radii = sled.pieces.filter((p) => p.z1 > span.z0 && p.z0 < span.z1).map((p) => p.radius)
    if (radii.length === 0) return []
    const R = Math.min(...radii)
    const far = farthest(region, { x: 0, y: 0 })
    const reach = Math.hypot(far.x, far.y)
    const walls: Wall[] = []
    const at = { parts: [c.by], path: pathOf(c) }
    const out = (R + reach) / 2 / Math.max(reach, 1e-9)
    if (reach < R - merged)
      walls.push({
        thickness: R - reach,
        between: `${c.nest} and the outside`,
        z: (span.z0 + span.z1) / 2,
        x: far.x * out,
        y: far.y * out,
        ...at,
      })
    const rear = span.z0 - sled.ends.rear.nominal
    const blade = sled.ends.blade.nominal - span.z1
    for (const [thickness, z, name] of [
      [rear, sled.ends.rear.nominal, 'rear end'],
      [blade, sled.ends.blade.nominal, 'blade end'],
    ] as const)
      if (thickness > merged)
        walls.push({
          thickness,
          between: `${c.nest} and the ${name}`,
          z: name === 'rear end' ? z + thickness / 2 : z - thickness / 2,
          x: region.core.x,
          y: region.core.y,
          ...at,
        })
    return walls
  })
}

const pathOf = (x: PlanItem): string => x.dimensions[0]?.path ?? x.by
