import type { GapStripView } from '../../papers/gap-strip.ts'

/** What the gap strip's height stands for, mm, and where its lines are. */
export interface GapScale {
  readonly low: number
  readonly high: number
  readonly marks: readonly number[]
}

/** Room for the metal below the bore wall, mm. */
const metal = 0.3

/** So much that nine tenths of the sled are inside, and every overlap is. */
export function gapScale({ runs, widest, limit }: GapStripView): GapScale {
  const cells = runs.flatMap((r) => r.cells)
  const sorted = cells.map((c) => c.nominal).toSorted((a, b) => a - b)
  const usual = sorted[Math.floor(0.9 * (sorted.length - 1))] ?? 1
  const high = Math.min(widest, Math.max(4 * limit, 1, Math.ceil(2.2 * usual) / 2))
  const least = Math.min(0, ...cells.map((c) => c.worst))
  const low = Math.max(-widest, Math.min(-metal * high, 1.1 * least))
  const step = high - low > 2.4 ? 1 : 0.5
  const first = Math.ceil(low / step)
  const marks = Array.from({ length: Math.floor(high / step + 1e-9) - first + 1 }, (_, i) => (first + i) * step)
  return { low, high, marks }
}
