import init, {
  type gp_Ax2,
  type gp_Pnt,
  type OpenCascadeInstance,
  type TopoDS_Shape,
  type TopoDS_Wire,
} from 'replicad-opencascadejs'
import { type Owned, scoped } from '../../../geometry/kernel/scope.ts'
import type { PlanBody, PlanItem, PlanSolid } from '../../../geometry/plan/plan.ts'
import type { Measured } from './measured.ts'

export type OpenCascade = OpenCascadeInstance

export const loadOpenCascade = (): Promise<OpenCascade> => init()

type Own = <O extends Owned>(o: O) => O
type P3 = readonly [number, number, number]

/** What a kernel call needs: the kernel, and the bag its objects go back from. */
interface Bench {
  readonly oc: OpenCascade
  readonly own: Own
  readonly way: Way
}

/** All tools of a cut in one go, or one after the other: dearer, but right where the one go is wrong without a word. */
export type Way = 'list' | 'chain'

/**
 * A body of a plan made by OpenCascade from the plan's numbers, every round truly round. Tools go in as a list: a
 * compound of tools that overlap is wrong without a word too.
 */
export function openCascadeBody(oc: OpenCascade, body: PlanBody, way: Way = 'list'): Measured {
  return scoped((own) => {
    const bench = { oc, own, way }
    const of = (op: PlanItem['op'], stage: 1 | 2) =>
      body.items.filter((x) => x.op === op && (x.stage ?? 1) === stage).map((x) => solidOf(bench, x.solid))
    const first = less(bench, joined(bench, of('add', 1)), of('cut', 1))
    const second = of('add', 2)
    const whole = second.length > 0 ? joined(bench, [first, ...second]) : first
    return measured(bench, less(bench, whole, of('cut', 2)))
  })
}

function listOf({ oc, own }: Bench, shapes: readonly TopoDS_Shape[]) {
  const list = own(new oc.NCollection_List_TopoDS_Shape())
  for (const s of shapes) own(list.Append(s))
  return list
}

function joined(b: Bench, shapes: readonly TopoDS_Shape[]): TopoDS_Shape {
  const [first, ...rest] = shapes
  if (!first || rest.length === 0) return first as TopoDS_Shape
  return operate(b, b.own(new b.oc.BRepAlgoAPI_Fuse()), first, rest)
}

function less(b: Bench, base: TopoDS_Shape, cuts: readonly TopoDS_Shape[]): TopoDS_Shape {
  const cut = (from: TopoDS_Shape, tools: readonly TopoDS_Shape[]) =>
    operate(b, b.own(new b.oc.BRepAlgoAPI_Cut()), from, tools)
  if (b.way === 'chain') return cuts.reduce((left, tool) => cut(left, [tool]), base)
  return cuts.length === 0 ? base : cut(base, cuts)
}

type Operation = InstanceType<OpenCascade['BRepAlgoAPI_Cut']> | InstanceType<OpenCascade['BRepAlgoAPI_Fuse']>

function operate(b: Bench, algorithm: Operation, base: TopoDS_Shape, tools: readonly TopoDS_Shape[]): TopoDS_Shape {
  algorithm.SetArguments(listOf(b, [base]))
  algorithm.SetTools(listOf(b, tools))
  algorithm.Build()
  if (!algorithm.IsDone() || algorithm.HasErrors()) throw new Error('OpenCascade could not combine the solids')
  return b.own(algorithm.Shape())
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180

function solidOf(b: Bench, s: PlanSolid): TopoDS_Shape {
  if (s.shape === 'cylinder') {
    if (s.r0 === s.r1) return bar(b, [s.x, s.y, s.z0], [0, 0, 1], s.r0, s.z1 - s.z0)
    const profile = [
      [0, s.z0],
      [s.r0, s.z0],
      [s.r1, s.z1],
      [0, s.z1],
    ] as const
    return revolved(b, profile, [s.x, s.y, 0], 0, 360)
  }
  if (s.shape === 'spoke') {
    const [c, d] = [Math.cos(radians(s.theta)), Math.sin(radians(s.theta))]
    return bar(b, [s.rIn * c, s.rIn * d, s.z], [c, d, 0], s.radius, s.rOut - s.rIn)
  }
  if (s.shape === 'ring-sector') {
    const profile = [
      [s.rIn, s.z0],
      [s.rOut, s.z0],
      [s.rOut, s.z1],
      [s.rIn, s.z1],
    ] as const
    const half = Math.min(180, s.half)
    return revolved(b, profile, [s.x ?? 0, s.y ?? 0, 0], s.theta - half, 2 * half)
  }
  if (s.shape === 'plate') {
    const [c, d] = [Math.cos(radians(s.theta)), Math.sin(radians(s.theta))]
    const corners = s.points.map(([t, z]): P3 => [s.rIn * c - t * d, s.rIn * d + t * c, z])
    return swept(b, corners, [(s.rOut - s.rIn) * c, (s.rOut - s.rIn) * d, 0])
  }
  return swept(
    b,
    (s.shape === 'box' ? blockCorners(s) : s.points).map(([x, y]): P3 => [x, y, s.z0]),
    [0, 0, s.z1 - s.z0],
  )
}

function blockCorners(s: Extract<PlanSolid, { shape: 'box' }>): (readonly [number, number])[] {
  const [c, d] = [Math.cos(radians(s.facing)), Math.sin(radians(s.facing))]
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([u, v]) => {
    const [out, across] = [((u as number) * s.height) / 2, ((v as number) * s.width) / 2]
    return [s.x + out * c - across * d, s.y + out * d + across * c] as const
  })
}

const point = ({ oc, own }: Bench, [x, y, z]: P3): gp_Pnt => own(new oc.gp_Pnt(x, y, z))

function bar(b: Bench, from: P3, [dx, dy, dz]: P3, r: number, length: number): TopoDS_Shape {
  const { oc, own } = b
  const axes: gp_Ax2 = own(new oc.gp_Ax2(point(b, from), own(new oc.gp_Dir(dx, dy, dz))))
  return own(own(new oc.BRepPrimAPI_MakeCylinder(axes, r, length)).Shape())
}

function faceOf(b: Bench, corners: readonly P3[]): TopoDS_Shape {
  const { oc, own } = b
  const points = corners.map((c) => point(b, c))
  const wire = own(new oc.BRepBuilderAPI_MakeWire())
  for (const [i, p] of points.entries())
    wire.Add(own(own(new oc.BRepBuilderAPI_MakeEdge(p, points[(i + 1) % points.length] as gp_Pnt)).Edge()))
  const closed: TopoDS_Wire = own(wire.Wire())
  return own(own(new oc.BRepBuilderAPI_MakeFace(closed, true)).Face())
}

function swept(b: Bench, corners: readonly P3[], [dx, dy, dz]: P3): TopoDS_Shape {
  const { oc, own } = b
  return own(own(new oc.BRepPrimAPI_MakePrism(faceOf(b, corners), own(new oc.gp_Vec(dx, dy, dz)))).Shape())
}

/** A profile in (r, z) turned about an axis along z, from one clock angle on by so many degrees. */
function revolved(
  b: Bench,
  profile: readonly (readonly [number, number])[],
  [x, y]: P3,
  from: number,
  turn: number,
): TopoDS_Shape {
  const { oc, own } = b
  const [c, d] = [Math.cos(radians(from)), Math.sin(radians(from))]
  const face = faceOf(
    b,
    profile.map(([r, z]): P3 => [x + r * c, y + r * d, z]),
  )
  const axis = own(new oc.gp_Ax1(point(b, [x, y, 0]), own(new oc.gp_Dir(0, 0, 1))))
  const made =
    turn >= 360
      ? own(new oc.BRepPrimAPI_MakeRevol(face, axis, false))
      : own(new oc.BRepPrimAPI_MakeRevol(face, axis, radians(turn), false))
  return own(made.Shape())
}

function count({ oc, own }: Bench, shape: TopoDS_Shape, what: 'TopAbs_SOLID' | 'TopAbs_SHELL'): number {
  const found = own(new oc.TopExp_Explorer(shape, what))
  let n = 0
  for (; found.More(); found.Next()) n++
  return n
}

function measured(b: Bench, shape: TopoDS_Shape): Measured {
  const { oc, own } = b
  const mass = own(new oc.GProp_GProps())
  oc.BRepGProp.VolumeProperties(shape, mass, false, false, false)
  const box = own(new oc.Bnd_Box())
  oc.BRepBndLib.AddOptimal(shape, box, false, false)
  const solids = count(b, shape, 'TopAbs_SOLID')
  return {
    volume: mass.Mass(),
    min: [box.GetXMin(), box.GetYMin(), box.GetZMin()],
    max: [box.GetXMax(), box.GetYMax(), box.GetZMax()],
    solids,
    hollows: count(b, shape, 'TopAbs_SHELL') - solids,
  }
}
