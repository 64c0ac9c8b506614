import { type Convex, prism, rectangleAt } from './convex.ts'
import { atClock, type V2 } from './vec.ts'

/** A slot through or into the wall: where along z, towards which clock angle, how wide, how deep from the wall. */
export interface SlotTruth {
  readonly rear: number
  readonly blade: number
  readonly theta: number
  readonly halfWidth: number
  readonly depth: number | undefined
}

interface Bored {
  readonly axis: V2
  readonly z0: number
  readonly z1: number
  readonly r0: number
  readonly r1: number
}

/** Radians of arc a piece may span: at 20 mm its chord lies within 0.0008 mm of the wall. */
const pieceOfArc = Math.PI / 180

/** The metal of a bore step with slots in it, as convex pieces `behind` mm thick. Slots of one step must not meet. */
export function slottedMetal(b: Bored, slots: readonly SlotTruth[], aside: V2, behind: number): Convex[] {
  const inside = slots.flatMap((s) => [s.rear, s.blade]).filter((z) => z > b.z0 && z < b.z1)
  const stations = [b.z0, ...inside.sort((p, q) => p - q), b.z1]
  return stations.slice(1).flatMap((zb, i) => {
    const za = stations[i] as number
    const here = slots.filter((s) => s.rear <= za && s.blade >= zb)
    return stretch(b, here, aside, behind, za, zb)
  })
}

function stretch(b: Bored, slots: readonly SlotTruth[], aside: V2, behind: number, za: number, zb: number): Convex[] {
  const radius = (z: number): number => b.r0 + ((z - b.z0) / (b.z1 - b.z0)) * (b.r1 - b.r0)
  const [ra, rb] = [radius(za), radius(zb)]
  const ordered = slots.toSorted((p, q) => wrap(p.theta) - wrap(q.theta))
  /** Each arc of metal runs from the far side of one slot to the near side of the next. */
  const arcs = ordered.map((s, i) => ({ from: s, to: ordered[(i + 1) % ordered.length] as SlotTruth }))
  const walls = arcs.length === 0 ? round(b, ra, rb, behind, za, zb) : arcs.flatMap((a) => arc(a.from, a.to))
  return [...walls, ...ordered.flatMap((s) => floor(s, Math.max(ra, rb)))]

  function arc(from: SlotTruth, to: SlotTruth): Convex[] {
    const edges = (r: number): [number, number] => {
      const a = sideAngle(b.axis, r, aside, from, 1)
      const e = sideAngle(b.axis, r, aside, to, -1)
      return [a, e > a ? e : e + 2 * Math.PI]
    }
    const at = (r: number) => {
      const [a, e] = edges(r)
      return (t: number): V2 => around(b.axis, r, a + t * (e - a))
    }
    const [a, e] = edges(ra)
    return pieces(Math.ceil((e - a) / pieceOfArc), at(ra), at(ra + behind), at(rb), at(rb + behind), za, zb)
  }

  function floor(s: SlotTruth, r: number): Convex[] {
    if (s.depth === undefined) return []
    const along = (b.axis.x - aside.x) * atClock(1, s.theta).x + (b.axis.y - aside.y) * atClock(1, s.theta).y
    const [low, high] = [along + r + s.depth, along + r + s.depth + behind]
    const p = atClock((low + high) / 2, s.theta)
    return [prism(rectangleAt({ x: p.x + aside.x, y: p.y + aside.y }, s.halfWidth, (high - low) / 2, s.theta), za, zb)]
  }
}

function round(b: Bored, ra: number, rb: number, behind: number, za: number, zb: number): Convex[] {
  const at = (r: number) => (t: number) => around(b.axis, r, 2 * Math.PI * t)
  return pieces(360, at(ra), at(ra + behind), at(rb), at(rb + behind), za, zb)
}

type Path = (t: number) => V2

function pieces(n: number, inA: Path, outA: Path, inB: Path, outB: Path, za: number, zb: number): Convex[] {
  return Array.from({ length: n }, (_, i) => {
    const [s, t] = [i / n, (i + 1) / n]
    return prism([inA(s), outA(s), outA(t), inA(t)], za, zb, [inB(s), outB(s), outB(t), inB(t)])
  })
}

const around = (c: V2, r: number, angle: number): V2 => ({ x: c.x + r * Math.cos(angle), y: c.y + r * Math.sin(angle) })
const wrap = (theta: number): number => ((theta % 360) + 360) % 360

/** The angle about the bore's axis at which a side of a slot meets the circle of radius r; side 1 where θ grows. */
function sideAngle(axis: V2, r: number, aside: V2, s: SlotTruth, side: 1 | -1): number {
  const u = atClock(1, s.theta)
  const foot = { x: aside.x - s.halfWidth * side * u.y, y: aside.y + s.halfWidth * side * u.x }
  const [dx, dy] = [foot.x - axis.x, foot.y - axis.y]
  const [along, across] = [dx * u.x + dy * u.y, dy * u.x - dx * u.y]
  const t = -along + Math.sqrt(r * r - across * across)
  return Math.atan2(foot.y + t * u.y - axis.y, foot.x + t * u.x - axis.x)
}
