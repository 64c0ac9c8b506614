import { boxesApart, type Convex, Drawn, shifted } from './convex.ts'
import { distanceBetween } from './gjk.ts'
import { type Column, passed, toWall } from './half-plane.ts'
import type { Metal } from './metal.ts'
import { all, type Keep, type SledMesh } from './sled-mesh.ts'
import { turned, turnedAbout } from './turned.ts'
import type { V2, V3 } from './vec.ts'

/** The true gap lies between these; equal wherever it is computed and not bounded. */
export interface Bounds {
  readonly lo: number
  readonly hi: number
}

export type Heading = 'blade' | 'rear'

/** Gaps beyond this are not told apart, mm. */
export const enough = 3
/** A thing that comes along z has come from beyond every hilt, mm. */
const gone = 3000

/** What is pushed in or sits there: solids, or the sled's mesh with its print error. */
export interface Mover {
  readonly key: string
  readonly columns: (axis: V2, keep: Keep) => readonly Column[]
  readonly to: (c: Convex) => number
  readonly meshed: boolean
}

export function solidMover(solids: readonly Convex[], by: V3): Mover {
  const moved = solids.map((s) => shifted(s, by))
  return {
    key: moved.map((s) => s.key).join(';'),
    columns: (axis) => moved.flatMap((s) => s.columns(axis)),
    to: (c) => betweenSolids(moved, [c]),
    meshed: false,
  }
}

/** The mesh turned about the hilt's axis by `turn` degrees, then moved. */
export function meshMover(mesh: SledMesh, id: string, by: V3, turn: number): Mover {
  const back = { x: -by.x, y: -by.y, z: -by.z }
  return {
    key: `mesh ${id} ${[by.x, by.y, by.z, turn].map((n) => n.toFixed(7)).join(',')}`,
    columns: (axis, keep) =>
      mesh
        .columns(turnedAbout({ x: axis.x - by.x, y: axis.y - by.y }, -turn), turnedKeep(keep, turn))
        .map((c) => ({ ...c, za: c.za + by.z, zb: c.zb + by.z })),
    to: (c) => mesh.distanceTo(turned(shifted(c, back), -turn), enough),
    meshed: true,
  }
}

/** What counts is said of the mesh where it lies; the mesh asks in its own frame. */
const turnedKeep = (keep: Keep, turn: number): Keep =>
  turn === 0
    ? keep
    : {
        ...keep,
        key: `${keep.key} turned ${turn.toFixed(7)}`,
        point: (p, axis) => keep.point(turnedAbout(p, turn), turnedAbout(axis, turn)),
      }

export function betweenSolids(a: readonly Convex[], b: readonly Convex[]): number {
  let best = enough
  for (const p of a)
    for (const q of b) {
      if (boxesApart(p, q) >= best) continue
      best = Math.min(best, distanceBetween(p, q, best))
    }
  return best
}

/** As a body sees a solid it passes on its way: drawn out towards where the body is going. */
const met = (c: Convex, way: Heading | undefined): Convex =>
  way === undefined ? c : way === 'blade' ? new Drawn(c, 0, gone) : new Drawn(c, -gone, 0)

/** To solids that stand still. */
export function toSolids(m: Mover, solids: readonly Convex[], way: Heading | undefined): Bounds {
  const d = solids.reduce((least, s) => Math.min(least, m.to(met(s, way))), enough)
  return { lo: d, hi: d }
}

/** To the metal around a bore step. */
export function toMetal(
  m: Mover,
  metal: Pick<Metal, 'axis' | 'wall'> & Partial<Metal>,
  way: Heading | undefined,
  keep = all,
): Bounds {
  const wall = way === undefined ? metal.wall : passed(metal.wall, way)
  const whole = Math.min(enough, toWall(m.columns(metal.axis, keep), wall))
  if (!metal.slotted) return { lo: whole, hi: whole }
  if (!m.meshed) return toSolids(m, metal.slotted(), way)
  // A slot only takes metal away; where there is none of it, the wall is as it was.
  const beside = { ...keep, key: `${keep.key} beside ${metal.key}`, point: metal.besideSlots ?? keep.point }
  return { lo: whole, hi: Math.min(enough, toWall(m.columns(metal.axis, beside), wall)) }
}
