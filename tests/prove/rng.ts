/** Random choices that follow from a seed: the same seed, the same job. */
export interface Rng {
  /** 0 ≤ n < 1. */
  readonly next: () => number
  readonly between: (lo: number, hi: number, digits?: number) => number
  readonly whole: (lo: number, hi: number) => number
  readonly chance: (p: number) => boolean
  readonly pick: <T>(list: readonly T[]) => T
}

/** Source: mulberry32, a public-domain generator of T. Ettinger (from memory); good enough to scatter jobs. */
export function rngOf(seed: number): Rng {
  let state = seed >>> 0
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = state
    t = Math.imul(t ^ (t >>> 15), t | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
  for (let i = 0; i < 8; i++) next()
  const between = (lo: number, hi: number, digits = 2): number => Number((lo + (hi - lo) * next()).toFixed(digits))
  return {
    next,
    between,
    whole: (lo, hi) => lo + Math.floor((hi - lo + 1) * next()),
    chance: (p) => next() < p,
    pick: (list) => list[Math.floor(next() * list.length)] as (typeof list)[number],
  }
}
