import { isBeside, isRelative } from '../project/forms.ts'
import type { Assembly, Part } from '../resolve/assembly.ts'

/** A part that can be taken hold of in the drawings: where it lies, how large it is, and what it may be snapped to. */
export interface PartHandle {
  /** `parts/cell`. */
  readonly id: string
  readonly name: string
  readonly z0: number
  readonly z1: number
  /** Its middle in the cross-section, mm. */
  readonly x: number
  readonly y: number
  readonly shape: HandleShape
  /** Whether it moves along the axis by itself: a contact goes with what it presses. */
  readonly along: boolean
  /** Whether its place in the cross-section can be changed there. */
  readonly across: boolean
  /** Faces along the axis to which its ends may be brought. */
  readonly faces: readonly SnapFace[]
  /** Radii, from the axis, which nothing of it should pass. */
  readonly rims: readonly SnapRim[]
  /** What lies beside it. */
  readonly beside: readonly Neighbour[]
  /** Least gap between parts, mm. */
  readonly gap: number
  /** Middle of the part it is placed beside. */
  readonly around: { readonly x: number; readonly y: number } | undefined
}

/** A circle, or a rectangle: half its width across and half its height along the clock angle it faces. */
export type HandleShape =
  | { readonly kind: 'round'; readonly radius: number }
  | { readonly kind: 'box'; readonly halfU: number; readonly halfV: number; readonly facing: number }

export interface SnapFace {
  readonly z: number
  readonly name: string
  /** Which of its own ends comes to lie there. */
  readonly end: 'rear' | 'blade'
}

export interface SnapRim {
  readonly radius: number
  readonly name: string
}

export interface Neighbour {
  readonly id: string
  readonly name: string
  readonly x: number
  readonly y: number
  readonly shape: HandleShape
}

/** Every part of the sleds, and those in the wall, by what one takes hold of. */
export function partHandles(assembly: Assembly): PartHandle[] {
  return assembly.parts.map((p) => handleOf(assembly, p))
}

function handleOf(assembly: Assembly, p: Part): PartHandle {
  const gap = assembly.thresholds['part-gap'].value
  const [z0, z1] = [p.ends.rear.nominal, p.ends.blade.nominal]
  const others = assembly.parts.filter((o) => o !== p && o.sled === p.sled && o.section === p.section)
  const { at } = p.input
  const spoke = p.bodies.some((b) => b.shape.kind === 'pin')
  return {
    id: p.id,
    name: p.name,
    z0,
    z1,
    x: p.across.x.nominal,
    y: p.across.y.nominal,
    shape: shapeOf(p),
    along: at?.z !== undefined,
    across: !spoke && !(p.input.presses && at?.across === undefined) && p.sled !== undefined,
    faces: [...facesOfParts(p, others, gap), ...facesAround(assembly, p)],
    rims: rimsOf(assembly, p),
    beside: others
      .filter((o) => !o.contact && o.ends.rear.nominal < z1 && o.ends.blade.nominal > z0)
      .map((o) => ({ id: o.id, name: o.name, x: o.across.x.nominal, y: o.across.y.nominal, shape: shapeOf(o) })),
    gap,
    around: aroundOf(assembly, p),
  }
}

function aroundOf(assembly: Assembly, { input }: Part): PartHandle['around'] {
  const across = input.at?.across
  const other =
    across !== undefined && isBeside(across) ? assembly.parts.find((o) => o.id === across.beside) : undefined
  return other && { x: other.across.x.nominal, y: other.across.y.nominal }
}

function shapeOf({ extent, across }: Part): HandleShape {
  return extent.round
    ? { kind: 'round', radius: extent.halfU.nominal }
    : { kind: 'box', halfU: extent.halfU.nominal, halfV: extent.halfV.nominal, facing: across.facing }
}

/** Each neighbour's ends: face to face, and with the least gap between them. What hangs on the part moves with it. */
function facesOfParts(p: Part, others: readonly Part[], gap: number): SnapFace[] {
  return others
    .filter((o) => !hangsOn(o, p))
    .flatMap(({ name, ends }): SnapFace[] => [
      { z: ends.blade.nominal, name: `face of ${name}`, end: 'rear' },
      { z: ends.blade.nominal + gap, name: `least gap to ${name}`, end: 'rear' },
      { z: ends.rear.nominal, name: `face of ${name}`, end: 'blade' },
      { z: ends.rear.nominal - gap, name: `least gap to ${name}`, end: 'blade' },
      { z: ends.rear.nominal, name: `flush with ${name}`, end: 'rear' },
      { z: ends.blade.nominal, name: `flush with ${name}`, end: 'blade' },
    ])
}

function hangsOn({ input }: Part, p: Part): boolean {
  const z = input.at?.z
  return input.presses?.part === p.id || (z !== undefined && isRelative(z) && z.of === p.id)
}

/** The ends of its sled with their walls, and the steps of the bore. */
function facesAround(assembly: Assembly, p: Part): SnapFace[] {
  const sled = assembly.sleds.find((s) => s.id === p.sled)
  const [rear, blade] = [sled?.ends.rear.nominal, sled?.ends.blade.nominal]
  const wall = sled?.print.leastWall ?? 0
  return [
    ...(sled && rear !== undefined && blade !== undefined
      ? ([
          { z: rear, name: `rear end of ${sled.name}`, end: 'rear' },
          { z: rear + wall, name: `least wall at the rear of ${sled.name}`, end: 'rear' },
          { z: blade, name: `blade end of ${sled.name}`, end: 'blade' },
          { z: blade - wall, name: `least wall at the blade end of ${sled.name}`, end: 'blade' },
        ] as const)
      : []),
    ...assembly.sections
      .flatMap((s) => s.steps)
      .flatMap((s): SnapFace[] => [
        { z: s.z0.nominal, name: `rear of ${s.name}`, end: 'rear' },
        { z: s.z1.nominal, name: `blade end of ${s.name}`, end: 'blade' },
      ]),
  ]
}

/** The sled's outside beside it, and the bore with the clearance it asks for. */
function rimsOf(assembly: Assembly, p: Part): SnapRim[] {
  const [z0, z1] = [p.ends.rear.nominal, p.ends.blade.nominal]
  const sled = assembly.sleds.find((s) => s.id === p.sled)
  const pieces = (sled?.pieces ?? []).filter((o) => o.z1 > z0 && o.z0 < z1)
  const steps = assembly.sections
    .flatMap((s) => s.steps)
    .filter((s) => s.kind !== 'solid' && s.r0 && s.z1.nominal > z0 && s.z0.nominal < z1)
  const clearance = assembly.thresholds.clearance.value
  const bore = Math.min(...steps.map((s) => Math.min(s.r0?.nominal ?? 0, s.r1?.nominal ?? 0)))
  const outside = Math.min(...pieces.map((o) => o.radius))
  return [
    ...(Number.isFinite(outside) ? [{ radius: outside, name: 'outside of the sled' }] : []),
    ...(Number.isFinite(bore) ? [{ radius: bore - clearance, name: 'least clearance to the bore' }] : []),
  ]
}
