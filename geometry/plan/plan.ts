/**
 * The sled as data: numbers only, no kernel. A plan is a list of solids to add and to cut; each names the part that
 * asked for it and the dimension that set it, so that a face can be traced back to an input.
 */
export interface Plan {
  /** The sled's id. */
  readonly id: string
  readonly name: string
  readonly bodies: readonly PlanBody[]
}

/** One printed body: what its items add up to must be one piece. */
export interface PlanBody {
  readonly id: string
  readonly name: string
  readonly items: readonly PlanItem[]
}

export interface PlanItem {
  readonly id: string
  readonly op: 'add' | 'cut'
  /**
   * 2: added or cut after everything of the first stage: ((adds − cuts) ∪ adds of 2) − cuts of 2. For what must stand
   * inside a nest another item cut: a lip, a cradle's arm, a pin in a split.
   */
  readonly stage?: 2
  readonly solid: PlanSolid
  /** Who asked for it: `parts/cell`, `sleds/main`. */
  readonly by: string
  /** Which nest it belongs to: "body", "cell pocket", "board shelf". */
  readonly nest: string
  /** The dimensions that made it, for telling which input to change. */
  readonly dimensions: readonly Dimension[]
}

/** One number of the plan: typed by the person, a default (with its source), or derived from others. */
export interface Dimension {
  readonly name: string
  readonly value: number
  readonly unit: 'mm' | '°'
  readonly how: 'typed' | 'default' | 'derived'
  /** Where to type another value: `sleds/main/nests/parts/cell/gap`. */
  readonly path: string
  readonly source: string
}

/** All in mm and degrees, in the frame of the hilt (x towards θ = 0, z towards the blade). */
export type PlanSolid = Cylinder | Box | RingSector | Spoke | Extruded | Plate

/** Round about an axis parallel to z through (x, y); radius r0 at z0, r1 at z1. */
export interface Cylinder {
  readonly shape: 'cylinder'
  readonly x: number
  readonly y: number
  readonly z0: number
  readonly z1: number
  readonly r0: number
  readonly r1: number
}

/** A block centred at (x, y): `width` across and `height` along the clock angle it faces. */
export interface Box {
  readonly shape: 'box'
  readonly x: number
  readonly y: number
  readonly z0: number
  readonly z1: number
  readonly width: number
  readonly height: number
  readonly facing: number
}

/** About an axis parallel to z through (x, y), the hilt's own where left out; a half-angle of 180° is a whole ring. */
export interface RingSector {
  readonly shape: 'ring-sector'
  readonly x?: number
  readonly y?: number
  readonly z0: number
  readonly z1: number
  readonly rIn: number
  readonly rOut: number
  readonly theta: number
  readonly half: number
}

/** A round bar or hole whose axis points at the hilt's axis, from rIn to rOut. */
export interface Spoke {
  readonly shape: 'spoke'
  readonly z: number
  readonly theta: number
  readonly rIn: number
  readonly rOut: number
  readonly radius: number
}

/** A simple polygon of the cross-section (counted the way θ grows), extruded along z. */
export interface Extruded {
  readonly shape: 'extruded'
  readonly points: readonly (readonly [number, number])[]
  readonly z0: number
  readonly z1: number
}

/**
 * A simple polygon lying on the outside at clock angle θ: corners (t, z), t along the way θ grows and z towards the
 * blade, counted counter-clockwise as seen from outside; from radius rIn to rOut, straight outwards.
 */
export interface Plate {
  readonly shape: 'plate'
  readonly theta: number
  readonly points: readonly (readonly [number, number])[]
  readonly rIn: number
  readonly rOut: number
}

/** The stretch of the axis an item takes up, mm. */
export function planSpan(s: PlanSolid): { readonly z0: number; readonly z1: number } {
  if (s.shape === 'spoke') return { z0: s.z - s.radius, z1: s.z + s.radius }
  if (s.shape !== 'plate') return { z0: s.z0, z1: s.z1 }
  let [z0, z1] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const [, z] of s.points) {
    if (z < z0) z0 = z
    if (z > z1) z1 = z
  }
  return { z0, z1 }
}
