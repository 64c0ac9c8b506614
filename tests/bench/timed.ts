/** Median and 95th percentile of a run, ms. */
export interface Timed {
  readonly median: number
  readonly p95: number
  readonly runs: number
}

export function timed(runs: number, warmup: number, work: (i: number) => void): Timed {
  for (let i = 0; i < warmup; i++) work(i)
  return summed(
    Array.from({ length: runs }, (_, i) => {
      const start = performance.now()
      work(warmup + i)
      return performance.now() - start
    }),
  )
}

/** What was timed elsewhere, ms; at least one time. */
export function summed(times: readonly number[]): Timed {
  const sorted = [...times].sort((a, b) => a - b)
  const runs = sorted.length
  return { median: sorted[runs >> 1] as number, p95: sorted[Math.floor(runs * 0.95)] as number, runs }
}

/** One line of the bench. `aside`: the target, or what the number means. */
export function row(what: string, t: Timed, aside: string): void {
  console.log(
    `${what.padEnd(66)} ${t.median.toFixed(2).padStart(8)} ms  p95 ${t.p95.toFixed(2).padStart(8)}  n ${String(t.runs).padStart(3)}  ${aside}`,
  )
}
