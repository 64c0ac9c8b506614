import type { Tight } from '../quantity/level.ts'
import type { Quantity } from '../quantity/quantity.ts'

/** Gives a number for a quantity; `tight` tells which way leaves less room, 0 that it has no such way (a place). */
export type Pick = (q: Quantity, tight: Tight | 0) => number

/** Smallest size kept when an interval would let a body vanish, mm. */
export const least = 1e-4
