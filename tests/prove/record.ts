import type { Fault, Remark } from './judge.ts'

/** What is kept of one judged job. */
export interface Record {
  readonly seed: number
  readonly verdict: 'clear' | 'unsure' | 'clash' | 'refused' | 'crashed'
  readonly demands?: number
  readonly faults?: readonly Fault[]
  readonly cautions?: number
  readonly remarks?: readonly Remark[]
  readonly why?: string
}

/** Whether a record alone makes the proof fail. */
export const isBad = (r: Record): boolean => r.verdict === 'crashed' || (r.faults?.length ?? 0) > 0

/** The counts of many jobs in one line. */
export function countsLine(records: readonly Record[]): string {
  const of = (verdict: Record['verdict']): number => records.filter((r) => r.verdict === verdict).length
  const faults = records.flatMap((r) => r.faults ?? [])
  const sum = (count: (r: Record) => number): number => records.reduce((n, r) => n + count(r), 0)
  return [
    `${records.length} jobs`,
    `${faults.filter((f) => f.kind === 'false clear').length} false clears`,
    `${faults.filter((f) => f.kind === 'false clash').length} false clashes`,
    `${of('unsure')} unsure`,
    `${of('clear')} clear`,
    `${of('clash')} clash`,
    `${of('refused')} refused`,
    `${of('crashed')} crashed`,
    `${sum((r) => r.demands ?? 0)} gaps judged`,
    `${sum((r) => r.cautions ?? 0)} could have been sharper`,
    `${sum((r) => r.remarks?.length ?? 0)} worst margins said too large`,
  ].join(', ')
}
