import { carve, join } from '../region/carve.ts'
import { disc, polygon, type Region, rectangle, sector } from '../region/region.ts'
import { radiusAt } from '../solid/slice.ts'
import { type PlanItem, type PlanSolid, planSpan } from './plan.ts'

/** Heights closer than this are one, mm. */
const same = 1e-6

/** A stretch of the sled with one cross-section: what is drawn, before any print error. */
export interface Slab {
  readonly z0: number
  readonly z1: number
  readonly region: Region
  /** Ids of the items whose outlines make it. */
  readonly items: readonly string[]
  /** Radii at both ends, where the stretch is one uncut taper; the region is then its wider end. */
  readonly taper?: { readonly r0: number; readonly r1: number }
}

/**
 * The sled as stretches of constant cross-section, for distances to what is around it. Cuts that stay inside leave
 * the outside as it is and are left out where no cut opens to the outside. Holes and engraving across the axis are left as
 * material (a distance from them is then never overstated); a taper that is cut counts at its wider end. `whole` keeps
 * the inner cuts too, for questions about the material itself.
 */
export function slabsOf(items: readonly PlanItem[], whole = false): Slab[] {
  const stations = [...new Set(items.flatMap(({ solid }) => [planSpan(solid).z0, planSpan(solid).z1]))].sort(
    (a, b) => a - b,
  )
  const slabs: Slab[] = []
  for (let i = 1; i < stations.length; i++) {
    const [z0, z1] = [stations[i - 1] as number, stations[i] as number]
    if (z1 - z0 < same) continue
    const slab = slabAt(items, z0, z1, whole)
    if (!slab) continue
    const last = slabs.at(-1)
    if (last && last.z1 === z0 && alike(last, slab)) slabs[slabs.length - 1] = { ...last, z1 }
    else slabs.push(slab)
  }
  return slabs
}

/** Two stretches that are one: the same items make them, or both are the same plain disc. */
function alike(a: Slab, b: Slab): boolean {
  if (a.taper || b.taper) return false
  const [f, g] = [a.region.form, b.region.form]
  if (f.kind === 'disc' && g.kind === 'disc') return f.r === g.r && f.c.x === g.c.x && f.c.y === g.c.y
  return a.items.join() === b.items.join()
}

function slabAt(items: readonly PlanItem[], z0: number, z1: number, whole: boolean): Slab | undefined {
  const middle = (z0 + z1) / 2
  const here = items.filter(
    ({ solid }) => planSpan(solid).z0 < middle && planSpan(solid).z1 > middle && sectionOf(solid) !== undefined,
  )
  const first = stage(undefined, here, 1, whole)
  const second = here.some((x) => x.stage === 2) ? stage(first, here, 2, whole) : first
  if (!second || second.region.edges.length === 0) return undefined
  const [only] = second.items
  const taper = second.items.length === 1 && only ? taperOf(only.solid, z0, z1) : undefined
  return { z0, z1, region: second.region, items: second.items.map((x) => x.id), ...(taper ? { taper } : {}) }
}

interface Stage {
  readonly region: Region
  readonly items: readonly PlanItem[]
}

/** What stands before, with what a stage adds, less what it cuts. Cuts that stay inside are left out. */
function stage(before: Stage | undefined, here: readonly PlanItem[], number: 1 | 2, whole: boolean): Stage | undefined {
  const own = here.filter((x) => (x.stage ?? 1) === number)
  const adds = widest(own.filter((x) => x.op === 'add'))
  const regions = [...(before ? [before.region] : []), ...adds.map((x) => sectionOf(x.solid) as Region)]
  if (regions.length === 0) return undefined
  const base = join(regions)
  const cuts = own.filter((x) => x.op === 'cut')
  const open = whole || cuts.some((x) => opens(base, sectionOf(x.solid) as Region))
  const used = open ? cuts : []
  const region = carve(
    base,
    used.map((x) => sectionOf(x.solid) as Region),
  )
  return { region, items: [...(before?.items ?? []), ...adds, ...used] }
}

function taperOf(s: PlanSolid, z0: number, z1: number): Slab['taper'] {
  if (s.shape !== 'cylinder' || s.r0 === s.r1) return undefined
  return { r0: radiusAt(s, z0), r1: radiusAt(s, z1) }
}

/** Coaxial discs inside a wider one add nothing to the cross-section. */
function widest(adds: readonly PlanItem[]): PlanItem[] {
  const centred = (x: PlanItem): number =>
    x.solid.shape === 'cylinder' && x.solid.x === 0 && x.solid.y === 0 ? Math.max(x.solid.r0, x.solid.r1) : -1
  const best = adds.reduce<PlanItem | undefined>((a, b) => (centred(b) > (a ? centred(a) : 0) ? b : a), undefined)
  return adds.filter((x) => x === best || centred(x) < 0)
}

/** Whether a cut breaks through the outside of the body. */
function opens(base: Region, cut: Region): boolean {
  if (base.form.kind !== 'disc') return true
  const { c, r } = base.form
  return cut.hold.r + Math.hypot(cut.hold.c.x - c.x, cut.hold.c.y - c.y) >= r
}

/** The cross-section of a plan solid (a taper's at its wider end); undefined for what runs across the axis. */
export function sectionOf(s: PlanSolid): Region | undefined {
  if (s.shape === 'cylinder') return disc({ x: s.x, y: s.y }, Math.max(s.r0, s.r1))
  if (s.shape === 'box') return rectangle({ x: s.x, y: s.y }, s.width / 2, s.height / 2, s.facing)
  if (s.shape === 'ring-sector') return sector(s.rIn, s.rOut, s.theta, s.half, { x: s.x ?? 0, y: s.y ?? 0 })
  if (s.shape === 'extruded') return polygon(s.points.map(([x, y]) => ({ x, y })))
  return undefined
}
