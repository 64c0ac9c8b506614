import type { ProjectInput } from '../../../src/project/schema/project.ts'
import type { Rng } from '../../prove/rng.ts'

type Sections = NonNullable<ProjectInput['sections']>
type Step = Sections[number]['bore'][number]

/** A stretch of the bore with the least free radius at both its ends, mm: the truth that a sled must keep to. */
export interface Stretch {
  readonly z0: number
  readonly z1: number
  readonly r0: number
  readonly r1: number
}

export interface RandomBore {
  readonly steps: Step[]
  readonly stretches: readonly Stretch[]
}

/** Internal threads with the radius of their free bore, mm: half of D − 1.0825 P. */
const threads = [
  ['M24x1', 11.459],
  ['M27x1', 12.959],
  ['M30x1', 14.459],
  ['M33x1', 15.959],
  ['M36x1', 17.459],
] as const

/**
 * A bore from a mouth at z 0 to its end: plain, with a narrower mouth, with a thread in the mouth, with a step on the
 * way, or tapered. Every diameter is given from its least to its greatest value, so that the least is known.
 */
export function randomBore(rng: Rng, length: number): RandomBore {
  const main = rng.between(12, 18)
  const made = (list: readonly [number, number, number, string?][]): RandomBore => {
    let z = 0
    const stretches = list.map(([long, r0, r1]): Stretch => {
      z += long
      return { z0: z - long, z1: z, r0, r1 }
    })
    const steps = list.map(
      ([long, r0, r1, thread], i): Step => ({
        id: `b${i}`,
        length: exactly(long),
        ...(thread === undefined
          ? { diameter: from(rng, r0), ...(r1 === r0 ? {} : { diameterEnd: from(rng, r1) }) }
          : { kind: 'threaded' as const, thread }),
      }),
    )
    return { steps, stretches }
  }
  switch (rng.whole(0, 5)) {
    case 0:
      return made([
        [10, main - rng.between(0.3, 1.2), main - 0.3],
        [length - 10, main, main],
      ])
    case 1: {
      const [thread, r] = rng.pick(threads.filter(([, minor]) => minor < main))
      return made([
        [9, r, r, thread],
        [length - 9, main, main],
      ])
    }
    case 2: {
      const at = Number((length * rng.between(0.4, 0.7)).toFixed(1))
      const neck = main - rng.between(0.4, 2)
      return made([
        [at, main, main],
        [length - at, neck, neck],
      ])
    }
    case 3:
      return made([[length, main, main - rng.between(0.1, 0.8)]])
    default:
      return made([[length, main, main]])
  }
}

const exactly = (n: number): { min: number; max: number } => ({ min: n, max: n })
const from = (rng: Rng, r: number): { min: number; max: number } => ({
  min: Number((2 * r).toFixed(3)),
  max: Number((2 * r + rng.between(0.01, 0.12)).toFixed(3)),
})

/** Least free radius at a height, mm. At a step the narrower side counts. */
export function freeRadius(bore: readonly Stretch[], z: number): number {
  const here = bore.filter((s) => z >= s.z0 - 1e-4 && z <= s.z1 + 1e-4)
  return Math.min(...here.map((s) => s.r0 + ((s.r1 - s.r0) * (z - s.z0)) / (s.z1 - s.z0)))
}

/** Least free radius on the way from the mouth to a height, mm. */
export function throatTo(bore: readonly Stretch[], z: number): number {
  const passed = bore
    .filter((s) => s.z0 < z - 1e-4)
    .flatMap((s) => [s.r0, s.z1 < z ? s.r1 : s.r0 + ((s.r1 - s.r0) * (z - s.z0)) / (s.z1 - s.z0)])
  return Math.min(freeRadius(bore, z), ...passed)
}
