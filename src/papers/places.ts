import type { Quantity } from '../quantity/quantity.ts'
import type { Assembly } from '../resolve/assembly.ts'

/** Where a thing lies in the frame of the hilt, at its nominal: what a place is measured from, or turned into. mm. */
export interface Place {
  /** `parts/cell`, `sections/body`, `sleds/main`. */
  readonly ref: string
  readonly rear: number
  readonly blade: number
  /** Middle in the cross-section and the way it faces, degrees; undefined for what has none. */
  readonly across: { readonly x: number; readonly y: number; readonly facing: number } | undefined
}

/** Everything in the hilt that has two ends along it. */
export function placesOf(assembly: Assembly): Place[] {
  return [
    ...assembly.sections.map((s) => place(`sections/${s.id}`, s.ends)),
    ...assembly.sleds.map((s) => place(`sleds/${s.id}`, s.ends)),
    ...assembly.parts.map((p) => ({
      ...place(p.id, p.ends),
      across: { x: p.across.x.nominal, y: p.across.y.nominal, facing: p.across.facing },
    })),
  ]
}

function place(ref: string, ends: { readonly rear: Quantity; readonly blade: Quantity }): Place {
  return { ref, rear: ends.rear.nominal, blade: ends.blade.nominal, across: undefined }
}
