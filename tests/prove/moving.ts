import type { Convex } from './convex.ts'
import type { Memo } from './demand.ts'
import { type Bounds, enough, type Heading, type Mover, meshMover, solidMover, toMetal, toSolids } from './gaps.ts'
import type { PartTruth } from './load.ts'
import type { Intrusion, Metal } from './metal.ts'
import { all, type Keep } from './sled-mesh.ts'
import { turned } from './turned.ts'
import type { V3 } from './vec.ts'
import type { SledTruth, World } from './world.ts'

export const still: V3 = { x: 0, y: 0, z: 0 }

export const sledIn = (w: World, id: string): SledTruth => w.sleds.find((s) => s.id === id) as SledTruth
export const partIn = (w: World, of: string): PartTruth => w.parts.find((p) => p.of === of) as PartTruth
export const carried = (w: World, sled: string): PartTruth[] =>
  w.parts.filter((p) => p.sled === sled && p.goesIn === 'with-sled')

export interface Moving {
  readonly mover: Mover
  readonly error: number
}

export function sledMover(w: World, id: string, aside: V3 = still): Moving {
  const { shift, built, error, turn } = sledIn(w, id)
  const by = { x: shift.x + aside.x, y: shift.y + aside.y, z: shift.z }
  return { mover: meshMover(built.mesh, id, by, turn), error }
}

export const partMover = (w: World, of: string, aside: V3 = still): Moving => ({
  mover: solidMover(partIn(w, of).solids, aside),
  error: 0,
})

export const moverOf = (w: World, of: string, aside: V3 = still): Moving =>
  of.startsWith('sleds/') ? sledMover(w, of.slice(6), aside) : partMover(w, of, aside)

/** `mover` and `key` apart: a mover's key is long, and written anew it would be read anew each time. */
export function remembered(memo: Memo, mover: string, key: string, measure: () => Bounds): Bounds {
  let own = memo.get(mover)
  if (!own) {
    own = new Map()
    memo.set(mover, own)
  }
  const known = own.get(key)
  if (known) return known
  const found = measure()
  own.set(key, found)
  return found
}

export const least = (list: readonly Bounds[]): Bounds => ({
  lo: list.reduce((n, b) => Math.min(n, b.lo), enough),
  hi: list.reduce((n, b) => Math.min(n, b.hi), enough),
})

export const most = (list: readonly Bounds[]): Bounds => ({
  lo: Math.max(...list.map((b) => b.lo)),
  hi: Math.max(...list.map((b) => b.hi)),
})

export const less = (b: Bounds, by: number): Bounds => ({ lo: b.lo - by, hi: b.hi - by })

export function gapToSolids(m: Moving, solids: readonly Convex[], way: Heading | undefined, memo: Memo): Bounds {
  const found = solids.map((s) =>
    remembered(memo, m.mover.key, `${s.key}|${way ?? ''}`, () => toSolids(m.mover, [s], way)),
  )
  return less(least(found), m.error)
}

export function gapToMetal(
  m: Moving,
  metal: Pick<Metal, 'axis' | 'wall' | 'key'> & Partial<Metal>,
  way: Heading | undefined,
  memo: Memo,
  keep: Keep = all,
): Bounds {
  const key = `${metal.key}|${way ?? ''}|${keep.key}`
  return less(
    remembered(memo, m.mover.key, key, () => toMetal(m.mover, metal, way, keep)),
    m.error,
  )
}

export function gapToIntrusion(m: Moving, i: Intrusion, way: Heading | undefined, memo: Memo): Bounds {
  return i.ring ? gapToMetal(m, i.ring, way, memo) : gapToSolids(m, i.solids, way, memo)
}

/** To another sled: bounded from below by its full cylinders, from above by some of its corners. */
export function gapToSled(w: World, m: Moving, other: string, way: Heading | undefined, memo: Memo): Bounds {
  const o = sledIn(w, other)
  const key = `sled ${other} ${o.shift.z.toFixed(7)} ${o.error} ${o.turn}|${way ?? ''}`
  return remembered(memo, m.mover.key, key, () => {
    const turnedWith = (c: Convex): Convex => turned(c, o.turn)
    const full = gapToSolids(m, o.built.mesh.hullOf(o.shift).map(turnedWith), way, memo)
    const some = gapToSolids(m, o.built.mesh.someCorners(o.shift).map(turnedWith), way, memo)
    return { lo: full.lo - o.error, hi: some.hi - o.error }
  })
}

/** Corners of the mesh lie this little beside a round, mm: vertices are stored in single precision. */
const facetsOff = 1e-4

/** What of the sled is not meant to touch this step: other slices, and what stands out of a body that is seated all along. */
export function notSeated(w: World, of: string, metal: Metal): Keep {
  if (!of.startsWith('sleds/')) return all
  const { input, built, shift } = sledIn(w, of.slice(6))
  const seats = (input.seats ?? []).filter((s) => s.against === metal.of)
  if (seats.length === 0) return all
  const free = (za: number, zb: number): boolean =>
    seats.every((s) => {
      if (s.face === 'blade') return zb < built.blade - 1
      if (s.face === 'rear') return za > built.rear + 1
      if (s.ring === undefined) return true
      const ring = built.rings.find((r) => r.id === s.ring)
      return !ring || zb <= ring.rear + 0.01 || za >= ring.blade - 0.01
    })
  const whole = seats.some((s) => s.face === 'around' && s.ring === undefined)
  const radius = Math.max(...built.pieces.map((p) => p.radius)) + facetsOff
  // The mesh is asked in its own frame.
  return {
    key: `seats of ${metal.of} ${shift.z.toFixed(6)}`,
    slice: free,
    point: whole ? (p) => Math.hypot(p.x, p.y) > radius : () => true,
  }
}
