import { type Slab, slabsOf } from '../../../geometry/plan/cross-section.ts'
import { itemNumber } from '../../../geometry/plan/one-item.ts'
import { type PlanItem, planSpan } from '../../../geometry/plan/plan.ts'
import { remember } from '../../../geometry/remember.ts'

/** A dovetail across a split: half its width at the plane (z) and at its end (z + length), mm; it runs along the clock angle theta. */
export interface Dovetail {
  readonly z: number
  readonly length: number
  readonly foot: number
  readonly head: number
  readonly theta: number
  /** Room about the tongue, mm. */
  readonly gap: number
  /** Radius of the sled beside it, mm. */
  readonly R: number
}

/** Sections are looked at on a grid this fine, mm; less than so much that hangs on nothing is the grid's own doing, mm². */
const step = 0.5
const leastArea = 2

/** One stretch of the axis; what of it is there, and what of it goes on into the next stretch. */
interface Level {
  readonly solid: (x: number, y: number) => boolean
  readonly on: (x: number, y: number) => boolean
}

/**
 * Whether a dovetail leaves something that hangs on nothing: its socket goes through the wall before a nest and cuts off
 * what stands beside it, or a nest cuts the tongue off its root. Looked at on a grid; the finished solid is judged again.
 * `items`: the body before it was split.
 */
export const cutsOff = remember(
  256,
  (a: { readonly d: Dovetail; readonly items: readonly PlanItem[] }) => JSON.stringify([near(a).map(itemNumber), a.d]),
  (a: { readonly d: Dovetail; readonly items: readonly PlanItem[] }): boolean => {
    const { d } = a
    const items = near(a)
    return [socketLevels(d, items), tongueLevels(d, items)].some((levels) => looseArea(levels, d.R) > leastArea)
  },
)

const near = ({ d, items }: { readonly d: Dovetail; readonly items: readonly PlanItem[] }): PlanItem[] =>
  items.filter(({ solid }) => planSpan(solid).z1 > d.z - 1 && planSpan(solid).z0 < d.z + d.length + d.gap + 1)

/** From what lies beyond the socket, where it takes nothing away, back to the plane. */
function socketLevels(d: Dovetail, items: readonly PlanItem[]): Level[] {
  const top = d.z + d.length + d.gap
  const slabs = slabsOf(items, true)
  const beyond = slabs.find((s) => s.z0 <= top && s.z1 > top)
  if (!beyond) return []
  const beside = (z: number) => (x: number, y: number) => across(d, x, y) > halfAt(d, z, d.gap)
  const level = (s: Slab): Level => {
    // The socket is narrowest where a stretch begins.
    const [free, on] = [beside(Math.max(s.z0, d.z)), beside(s.z0)]
    return { solid: (x, y) => s.region.contains({ x, y }) && free(x, y), on }
  }
  const held: Level = { solid: (x, y) => beyond.region.contains({ x, y }), on: beside(top) }
  return [held, ...between(slabs, d.z, top).toReversed().map(level)]
}

/** From what the tongue stands on up to its end. */
function tongueLevels(d: Dovetail, items: readonly PlanItem[]): Level[] {
  const end = d.z + d.length
  const base = slabsOf(items, true).find((s) => s.z0 < d.z && s.z1 >= d.z)
  if (!base) return []
  const round = { shape: 'cylinder', x: 0, y: 0, z0: d.z, z1: end, r0: d.R, r1: d.R } as const
  const whole: PlanItem = { id: 'tongue', op: 'add', by: '', nest: '', dimensions: [], solid: round }
  const cut = items.filter((x) => x.op === 'cut')
  const slabs = between(slabsOf([whole, ...cut], true), d.z, end)
  const inside = (z: number) => (x: number, y: number) => across(d, x, y) < halfAt(d, z, 0)
  return [
    { solid: (x, y) => base.region.contains({ x, y }), on: inside(d.z) },
    ...slabs.map((s): Level => {
      const widest = inside(Math.min(s.z1, end))
      return { solid: (x, y) => s.region.contains({ x, y }) && widest(x, y), on: inside(s.z1) }
    }),
  ]
}

/** The stretches that reach in between two heights. */
const between = (slabs: readonly Slab[], z0: number, z1: number): Slab[] =>
  slabs.filter((s) => s.z1 > z0 + 0.001 && s.z0 < z1 - 0.001)

const across = (d: Dovetail, x: number, y: number): number => {
  const a = (d.theta * Math.PI) / 180
  return Math.abs(y * Math.cos(a) - x * Math.sin(a))
}

/** Half the width at a height; the gap goes on at its sides and its end. */
function halfAt(d: Dovetail, z: number, gap: number): number {
  const share = Math.min(1, Math.max(0, (z - d.z) / (d.length + gap)))
  return d.foot + gap + share * (d.head - d.foot)
}

/** Area of what is not held by the first level, through any of the others, mm². */
function looseArea(levels: readonly Level[], R: number): number {
  const n = 2 * Math.ceil(R / step) + 1
  const at = (i: number) => (i - (n - 1) / 2 + 0.01) * step
  const grid = (test: Level['solid']) =>
    Uint8Array.from({ length: n * n }, (_, i) => Number(test(at(i % n), at(Math.floor(i / n)))))
  const solid = levels.map((l) => grid(l.solid))
  const on = levels.map((l) => grid(l.on))
  const waiting: [number, number][] = []
  const hold = (k: number, i: number) => {
    if (solid[k]?.[i] !== 1) return
    ;(solid[k] as Uint8Array)[i] = 2
    waiting.push([k, i])
  }
  for (let i = 0; i < n * n; i++) hold(0, i)
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const [k, i] = next
    for (const dy of [-1, 0, 1])
      for (const dx of [-1, 0, 1]) if ((i % n) + dx >= 0 && (i % n) + dx < n) hold(k, i + dx + n * dy)
    if (on[k]?.[i]) hold(k + 1, i)
    if (on[k - 1]?.[i]) hold(k - 1, i)
  }
  return Math.max(0, ...solid.map((s) => s.filter((held) => held === 1).length)) * step * step
}
