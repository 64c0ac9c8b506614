import geom2 from '@jscad/modeling/src/geometries/geom2/create.js'
import geom3 from '@jscad/modeling/src/geometries/geom3/create.js'
import toPolygons from '@jscad/modeling/src/geometries/geom3/toPolygons.js'
import type Geom3 from '@jscad/modeling/src/geometries/geom3/type.js'
import poly3 from '@jscad/modeling/src/geometries/poly3/create.js'
import subtract from '@jscad/modeling/src/operations/booleans/subtract.js'
import union from '@jscad/modeling/src/operations/booleans/union.js'
import extrudeLinear from '@jscad/modeling/src/operations/extrusions/extrudeLinear.js'
import { rotateX, rotateY, rotateZ } from '@jscad/modeling/src/operations/transforms/rotate.js'
import { translate } from '@jscad/modeling/src/operations/transforms/translate.js'
import type { PlanBody, PlanItem, PlanSolid } from '../../../geometry/plan/plan.ts'
import { coneVolume, type Measured, shellsOf } from './measured.ts'
import { arcSteps, facetsOf, innerCorner, outerCorner } from './rounds.ts'

type P2 = [number, number]
type P3 = [number, number, number]

/**
 * A body of a plan made by JSCAD from the plan's numbers: what is added of a stage is joined, what is cut of it is
 * joined too, and the two are subtracted once. `least`: fewest facets of a round body.
 */
export function jscadBody(body: PlanBody, least: number): Measured {
  const of = (op: PlanItem['op'], stage: 1 | 2) =>
    body.items.filter((x) => x.op === op && (x.stage ?? 1) === stage).map((x) => solidOf(x, least))
  const first = less(of('add', 1), of('cut', 1))
  return measured(less([first, ...of('add', 2)], of('cut', 2)))
}

function less(adds: readonly Geom3[], cuts: readonly Geom3[]): Geom3 {
  const base = adds.length === 1 ? (adds[0] as Geom3) : union([...adds])
  return cuts.length === 0 ? base : subtract(base, union([...cuts]))
}

function solidOf({ op, solid: s }: PlanItem, least: number): Geom3 {
  const n = facetsOf(s, least)
  if (s.shape === 'cylinder') {
    const r = (own: number) => outerCorner(op, own, n)
    return translate([s.x, s.y, s.z0], frustum(r(s.r0), r(s.r1), s.z1 - s.z0, n))
  }
  if (s.shape === 'spoke') {
    const r = outerCorner(op, s.radius, n)
    // Stands on the cross-section at first, corners on the axes; then its axis is laid along +x and turned to θ.
    const bar = rotateY(Math.PI / 2, frustum(r, r, s.rOut - s.rIn, n))
    return rotateZ(radians(s.theta), translate([s.rIn, 0, s.z], bar))
  }
  if (s.shape === 'box') return standing(blockCorners(s), s.z0, s.z1)
  if (s.shape === 'extruded')
    return standing(
      s.points.map(([x, y]): P2 => [x, y]),
      s.z0,
      s.z1,
    )
  if (s.shape === 'plate') {
    // Drawn lying in (t, z), as tall as it is deep; stood up, t across and z along the axis; then turned to θ.
    const lying = standing(
      s.points.map(([t, z]): P2 => [t, z]),
      s.rIn,
      s.rOut,
    )
    return rotateZ(radians(s.theta), rotateZ(Math.PI / 2, rotateX(Math.PI / 2, lying)))
  }
  return translate([s.x ?? 0, s.y ?? 0, 0], sector(op, s, n))
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180

function circle(r: number, n: number): P2[] {
  return Array.from({ length: n }, (_, i): P2 => {
    const w = (2 * Math.PI * i) / n
    return [r * Math.cos(w), r * Math.sin(w)]
  })
}

/** A round bar or taper standing on z = 0. */
function frustum(r0: number, r1: number, height: number, n: number): Geom3 {
  const low = circle(r0, n).map(([x, y]): P3 => [x, y, 0])
  const high = circle(r1, n).map(([x, y]): P3 => [x, y, height])
  const sides = low.map((p, i): P3[] => {
    const k = (i + 1) % n
    return [p, low[k] as P3, high[k] as P3, high[i] as P3]
  })
  return geom3([[...low].reverse(), high, ...sides].map((p) => poly3(p)))
}

function blockCorners(s: Extract<PlanSolid, { shape: 'box' }>): P2[] {
  const [c, d] = [Math.cos(radians(s.facing)), Math.sin(radians(s.facing))]
  const corner = (out: number, across: number): P2 => [s.x + out * c - across * d, s.y + out * d + across * c]
  const [h, w] = [s.height / 2, s.width / 2]
  return [corner(-h, -w), corner(h, -w), corner(h, w), corner(-h, w)]
}

/** Outlines (the second a hole, if any) between two heights. */
function standing(outline: readonly P2[], z0: number, z1: number, hole: readonly P2[] = []): Geom3 {
  const sides = [outline, [...hole].reverse()].flatMap((o) =>
    o.map((p, i): [P2, P2] => [p, o[(i + 1) % o.length] as P2]),
  )
  const tall = extrudeLinear({ height: z1 - z0 }, geom2(sides))
  return translate([0, 0, z0], tall)
}

function sector(op: PlanItem['op'], s: Extract<PlanSolid, { shape: 'ring-sector' }>, n: number): Geom3 {
  const [outer, inner] = [outerCorner(op, s.rOut, n), innerCorner(op, s, n)]
  if (s.half >= 180) return standing(circle(outer, n), s.z0, s.z1, s.rIn > 0 ? circle(inner, n) : [])
  const steps = arcSteps(s.half, n)
  const arc = (r: number): P2[] =>
    Array.from({ length: steps + 1 }, (_, i): P2 => {
      const w = radians(s.theta - s.half + (2 * s.half * i) / steps)
      return [r * Math.cos(w), r * Math.sin(w)]
    })
  return standing([...arc(outer), ...(s.rIn > 0 ? arc(inner).reverse() : [[0, 0] as P2])], s.z0, s.z1)
}

function measured(g: Geom3): Measured {
  const polygons = toPolygons(g).map((p) => p.vertices as P3[])
  const [min, max]: [P3, P3] = [
    [Infinity, Infinity, Infinity],
    [-Infinity, -Infinity, -Infinity],
  ]
  for (const p of polygons)
    for (const v of p)
      for (const k of [0, 1, 2] as const) {
        min[k] = Math.min(min[k], v[k])
        max[k] = Math.max(max[k], v[k])
      }
  return { volume: polygons.reduce((sum, p) => sum + coneVolume(p), 0), min, max, ...shellsOf(polygons) }
}
