import type { Region } from '../../geometry/region/region.ts'
import type { Quantity } from '../quantity/quantity.ts'

/**
 * A solid whose dimensions know how well they are known, in the frame of the hilt. Checks never see nominal shapes:
 * they see a body at a level of its intervals (`realise`).
 */
export interface Body {
  /** Unique: `parts/cell`, `parts/board/port`, `sections/body/neck`, `sleds/main/ring-1`. */
  readonly id: string
  /** The record that asked for it: `parts/board`. */
  readonly of: string
  /** For people: "cell", "neck of the body". */
  readonly name: string
  readonly shape: Shape
  /** How far the whole body may stand aside in the cross-section, any way, beyond what its place says; nominal 0. */
  readonly drift?: Quantity
  /** How far it may stand aside one way only (play of a joint, a bore off the axis); nominal 0. */
  readonly sway?: Quantity
  /** How far it may be turned about the hilt's axis, degrees; nominal 0. */
  readonly turn?: Quantity
  /** How far its faces may lie outside where they were drawn (print error); nominal 0. */
  readonly swell?: Quantity
  /** States in which it is there; all where left out. */
  readonly states?: readonly string[]
}

export type Shape = Round | Box | Sector | Pin | BoreShape | Outline

interface Along {
  readonly z0: Quantity
  readonly z1: Quantity
}

interface Placed {
  readonly x: Quantity
  readonly y: Quantity
}

/** Round about an axis parallel to z; its radius may run straight from r0 to r1. */
export interface Round extends Along, Placed {
  readonly kind: 'round'
  readonly r0: Quantity
  readonly r1: Quantity
}

/** A rectangle in the cross-section: half width across, half height along the clock angle it faces. */
export interface Box extends Along, Placed {
  readonly kind: 'box'
  readonly halfWidth: Quantity
  readonly halfHeight: Quantity
  readonly facing: number
}

/** A ring sector about the hilt's axis; without `rOut` it is metal that goes on outwards. */
export interface Sector extends Along {
  readonly kind: 'sector'
  readonly rIn: Quantity
  readonly rOut?: Quantity
  readonly theta: number
  readonly half: Quantity
}

/** A round pin pointing at the axis, from rIn to rOut. */
export interface Pin {
  readonly kind: 'pin'
  readonly z: Quantity
  readonly theta: number
  readonly radius: Quantity
  readonly rIn: Quantity
  readonly rOut: Quantity
}

/** The metal around a bore step. `openings`: cross-sections that are cut out of it over its whole length. */
export interface BoreShape extends Along, Placed {
  readonly kind: 'bore'
  readonly r0: Quantity
  readonly r1: Quantity
  readonly openings?: readonly Opening[]
}

/** A slot's cross-section: half width across θ, open from the axis side out to radius `floor` (through: none). */
export interface Opening {
  readonly theta: number
  readonly halfWidth: Quantity
  readonly floor?: Quantity
  /** How far out it is wide enough to matter: what turns in it meets its sides there at the latest, mm. */
  readonly reach: number
}

/** Any fixed cross-section (a carved piece of the sled), drawn in the sled's own numbers. */
export interface Outline extends Along {
  readonly kind: 'outline'
  readonly region: Region
  /** Radii at z0 and z1 of a taper about the axis that all of it lies in: a chamfered end that is cut. */
  readonly taper?: { readonly r0: number; readonly r1: number }
}
