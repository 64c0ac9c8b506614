import type { Contribution } from './margins.ts'

/** Bins of the density over the whole range: about 1 % of a probability. */
const bins = 128

/**
 * The chance that the margin is not negative once the unknowns turn out as they are, with every variation at its
 * tight end. `floor` is that margin with all unknowns at their tight end (the worst margin); the unknowns'
 * contributions are taken as independent and their densities are folded one into the other.
 */
export function chanceToHold(floor: number, unknowns: readonly Contribution[]): number {
  const free = unknowns.filter((c) => c.up - c.down > 1e-12)
  const range = free.reduce((sum, c) => sum + (c.up - c.down), 0)
  if (floor >= 0) return 1
  if (floor + range < 0) return 0
  const step = range / bins
  let density: number[] = [1]
  for (const c of free) density = fold(density, weights(c, step))
  // Bin i stands for a rise of i·step on average above the floor.
  let hold = 0
  let total = 0
  for (const [i, w] of density.entries()) {
    total += w
    const above = (floor + (i + 0.5) * step) / step
    hold += w * Math.min(1, Math.max(0, above + 0.5))
  }
  return total > 0 ? hold / total : 0
}

/** A spread's density over its own bins; its mean lies where the spread's mode does. */
function weights(c: Contribution, step: number): number[] {
  const n = Math.max(1, Math.round((c.up - c.down) / step))
  return Array.from({ length: n }, (_, i) => densityAt(c, (i + 0.5) / n))
}

/** Density at t in 0…1 from the tight to the loose end, not normalised. */
function densityAt(c: Contribution, t: number): number {
  if (c.distribution === 'rectangular') return 1
  const mode = Math.min(1, Math.max(0, -c.down / (c.up - c.down)))
  const side = t < mode ? mode : 1 - mode
  const off = side === 0 ? 1 : Math.abs(t - mode) / side
  // A normal spread is cut at its ends, which stand at 2.58 standard deviations (99 %).
  return c.distribution === 'triangular' ? 1 - off : Math.exp(-0.5 * (2.58 * off) ** 2)
}

function fold(a: readonly number[], b: readonly number[]): number[] {
  const out = Array.from({ length: a.length + b.length - 1 }, () => 0)
  for (const [i, x] of a.entries()) for (const [j, y] of b.entries()) out[i + j] = (out[i + j] as number) + x * y
  return out
}
