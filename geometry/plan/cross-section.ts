import { carve, join } from '../region/carve.ts'
import { disc, polygon, type Region, rectangle, sector } from '../region/region.ts'
import { remember } from '../remember.ts'
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
  /** Radii at both ends of the one taper that all of it lies in; the region is cut out of its wider end. */
  readonly taper?: { readonly r0: number; readonly r1: number }
}

/**
 * The sled as stretches of constant cross-section, for distances to what is around it. Cuts that stay inside leave
 * the outside as it is and are left out where no cut opens to the outside. Holes and engraving across the axis are left as
 * material (a distance from them is then never overstated). `whole` keeps
 * the inner cuts too, for questions about the material itself.
 */
export function slabsOf(items: readonly PlanItem[], whole = false): Slab[] {
  const drawn = items.flatMap((item): Drawn[] => {
    const key = sectionKey(item)
    return key === undefined ? [] : [{ item, key, ...planSpan(item.solid) }]
  })
  const stations = Float64Array.from(drawn.flatMap(({ z0, z1 }) => [z0, z1])).sort()
  const tapered = drawn.some(({ item: { solid } }) => solid.shape === 'cylinder' && solid.r0 !== solid.r1)
  const slabs: Slab[] = []
  for (let i = 1; i < stations.length; i++) {
    const z0 = stations[i - 1] as number
    const z1 = stations[i] as number
    if (z1 - z0 < same) continue
    const slab = slabAt(drawn, z0, z1, whole, tapered)
    if (!slab) continue
    const last = slabs.at(-1)
    if (last && last.z1 === z0 && alike(last, slab)) slabs[slabs.length - 1] = { ...last, z1 }
    else slabs.push(slab)
  }
  return slabs
}

/** An item that has a cross-section, where it lies, and a number for all that its section depends on. */
interface Drawn {
  readonly item: PlanItem
  readonly key: number
  readonly z0: number
  readonly z1: number
}

function sectionKey(item: PlanItem): number | undefined {
  const known = keys.get(item)
  if (known !== undefined || !runsAlong(item.solid)) return known
  const found = numberOf(`${item.op}${item.stage ?? 1}${outlineKey(item.solid)}`)
  keys.set(item, found)
  return found
}

const keys = new WeakMap<PlanItem, number>()
let last = 0
/** Many stretches are asked for by the same few texts: their numbers make shorter keys. */
const numberOf = remember(2000, String, () => ++last)

/** All that the cross-section of a solid depends on as text; undefined for what has none. */
function outlineKey(s: PlanSolid): string | undefined {
  if (s.shape === 'cylinder') return `c${s.x},${s.y},${Math.max(s.r0, s.r1)}`
  if (s.shape === 'box') return `b${s.x},${s.y},${s.width},${s.height},${s.facing}`
  if (s.shape === 'ring-sector') return `s${s.x ?? 0},${s.y ?? 0},${s.rIn},${s.rOut},${s.theta},${s.half}`
  return s.shape === 'extruded' ? `e${s.points.join()}` : undefined
}

/** Two stretches that are one: the same items make them, or both are the same plain disc. */
function alike(a: Slab, b: Slab): boolean {
  if (a.taper || b.taper) return false
  const [f, g] = [a.region.form, b.region.form]
  if (f.kind === 'disc' && g.kind === 'disc') return f.r === g.r && f.c.x === g.c.x && f.c.y === g.c.y
  return a.items.join() === b.items.join()
}

function slabAt(drawn: readonly Drawn[], z0: number, z1: number, whole: boolean, tapered: boolean): Slab | undefined {
  const middle = (z0 + z1) / 2
  const here: Drawn[] = []
  for (const d of drawn) if (d.z0 < middle && d.z1 > middle) here.push(d)
  const { region, used } = crossSection({ here, whole })
  if (!region || region.edges.length === 0) return undefined
  const items = used.map((i) => (here[i] as Drawn).item)
  const adds = tapered ? here.filter((d) => d.item.op === 'add').map((d) => d.item.solid) : []
  const taper = taperAround(adds, z0, z1)
  return { z0, z1, region, items: items.map((x) => x.id), ...(taper ? { taper } : {}) }
}

/** A change of one number leaves most stretches as they were: their outlines are not cut out again. */
const crossSection = remember(
  400,
  (a: { readonly here: readonly Drawn[]; readonly whole: boolean }) =>
    a.here.reduce((key, d) => `${key} ${d.key}`, a.whole ? 'whole' : 'open'),
  ({ here, whole }): { readonly region: Region | undefined; readonly used: readonly number[] } => {
    const own = here.map(({ item }, i): Own => ({ item, i, region: sectionOf(item.solid) as Region }))
    const first = stage(undefined, own, 1, whole)
    const second = own.some((x) => x.item.stage === 2) ? stage(first, own, 2, whole) : first
    return { region: second?.region, used: second?.used ?? [] }
  },
)

interface Own {
  readonly item: PlanItem
  readonly i: number
  readonly region: Region
}

interface Stage {
  readonly region: Region
  /** Places in the list of those whose outlines make it. */
  readonly used: readonly number[]
}

/** What stands before, with what a stage adds, less what it cuts. Cuts that stay inside are left out. */
function stage(before: Stage | undefined, here: readonly Own[], number: 1 | 2, whole: boolean): Stage | undefined {
  const own = here.filter((x) => (x.item.stage ?? 1) === number)
  const adds = widest(own.filter((x) => x.item.op === 'add'))
  const regions = [...(before ? [before.region] : []), ...adds.map((x) => x.region)]
  if (regions.length === 0) return undefined
  const base = join(regions)
  const cuts = own.filter((x) => x.item.op === 'cut')
  const open = whole || cuts.some((x) => opens(base, x.region))
  const used = open ? cuts : []
  const region = carve(
    base,
    used.map((x) => x.region),
  )
  return { region, used: [...(before?.used ?? []), ...[...adds, ...used].map((x) => x.i)] }
}

/** The taper about the hilt's axis that holds all that is added in a stretch. */
function taperAround(adds: readonly PlanSolid[], z0: number, z1: number): Slab['taper'] {
  const round = adds.flatMap((s) => (s.shape === 'cylinder' && s.x === 0 && s.y === 0 ? [s] : []))
  if (round.length < adds.length) return undefined
  const ends = round.map((s) => ({ r0: radiusAt(s, z0), r1: radiusAt(s, z1) }))
  const taper = ends.find((e) => ends.every((o) => o.r0 <= e.r0 && o.r1 <= e.r1))
  return taper && taper.r0 !== taper.r1 ? taper : undefined
}

/** Coaxial discs inside a wider one add nothing to the cross-section. */
function widest(adds: readonly Own[]): Own[] {
  const centred = ({ region: { form } }: Own): number =>
    form.kind === 'disc' && form.c.x === 0 && form.c.y === 0 ? form.r : -1
  const best = adds.reduce<Own | undefined>((a, b) => (centred(b) > (a ? centred(a) : 0) ? b : a), undefined)
  return adds.filter((x) => x === best || centred(x) < 0)
}

/** Whether a cut breaks through the outside of the body. */
function opens(base: Region, cut: Region): boolean {
  if (base.form.kind !== 'disc') return true
  const { c, r } = base.form
  return cut.hold.r + Math.hypot(cut.hold.c.x - c.x, cut.hold.c.y - c.y) >= r
}

/** Whether a solid has a cross-section: what runs across the axis, a hole or a stroke, has none. */
export const runsAlong = (s: PlanSolid): boolean => s.shape !== 'plate' && s.shape !== 'spoke'

/**
 * The cross-section of a plan solid (a taper's at its wider end); undefined for what runs across the axis. The same
 * object wherever along the axis it lies, so that what was found out about it stays known.
 */
export function sectionOf(s: PlanSolid): Region | undefined {
  const known = sections.get(s)
  if (known || !runsAlong(s)) return known
  const found = kept(s)
  sections.set(s, found)
  return found
}

const sections = new WeakMap<PlanSolid, Region>()
const kept = remember(1000, (s: PlanSolid) => outlineKey(s) as string, drawnSection)

function drawnSection(s: PlanSolid): Region {
  if (s.shape === 'cylinder') return disc({ x: s.x, y: s.y }, Math.max(s.r0, s.r1))
  if (s.shape === 'box') return rectangle({ x: s.x, y: s.y }, s.width / 2, s.height / 2, s.facing)
  if (s.shape === 'ring-sector') return sector(s.rIn, s.rOut, s.theta, s.half, { x: s.x ?? 0, y: s.y ?? 0 })
  if (s.shape === 'extruded') return polygon(s.points.map(([x, y]) => ({ x, y })))
  throw new RangeError(`a ${s.shape} has no cross-section`)
}
