import type { Body } from '../body/body.ts'
import type { SectionInput } from '../project/schema/hilt.ts'
import type { Quantity } from '../quantity/quantity.ts'
import type { Ends } from './heights.ts'

/** A section as the checks see it. */
export interface Section {
  readonly id: string
  readonly name: string
  readonly input: SectionInput
  readonly ends: Ends
  /** Outside diameter along it, where it was given. */
  readonly outside: readonly {
    readonly z0: Quantity
    readonly z1: Quantity
    readonly d0: Quantity
    readonly d1: Quantity
  }[]
  readonly material: string | undefined
  readonly steps: readonly Step[]
  /** How far it may stand aside of the first section because of joint play, mm. */
  readonly play: Quantity | undefined
}

/** One step of its bore; `radius` is missing where nothing was measured. */
export interface Step {
  readonly id: string
  readonly name: string
  readonly section: string
  readonly kind: 'plain' | 'threaded' | 'solid'
  readonly z0: Quantity
  readonly z1: Quantity
  readonly r0: Quantity | undefined
  readonly r1: Quantity | undefined
  readonly x: Quantity
  readonly y: Quantity
  readonly sway: Quantity | undefined
  /** States in which this bore is the true one (a clamp open or closed). */
  readonly states: readonly string[] | undefined
  readonly thread: { readonly name: string; readonly major: number; readonly pitch: number } | undefined
}

/** Something that takes room inside the bore: a screw tip, a lip, a switch body fitted before. */
export interface Intrusion {
  readonly body: Body
  readonly section: string
  readonly fitted: 'before' | 'after'
}
