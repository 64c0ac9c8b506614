import type { JobCard } from './kept-job.ts'

/** What a tab has seen of a kept job: the last writing that its own work builds on. */
export type Seen = Pick<JobCard, 'revision' | 'stamp'>

/** What a tab may do with its work. */
export type MayWrite =
  | 'write'
  /** This very writing is there already. */
  | 'written'
  /** Another tab has written since: whoever wrote now would wipe that out. */
  | 'changed'
  /** Another tab has deleted it. */
  | 'deleted'

/** Whether the writing with a stamp, whose work builds on one of `seen`, may take the place of what is kept. */
export function mayWrite(kept: Seen | undefined, stamp: string, seen: readonly string[]): MayWrite {
  if (!kept) return seen.length > 0 ? 'deleted' : 'write'
  if (kept.stamp === stamp) return 'written'
  return seen.includes(kept.stamp) ? 'write' : 'changed'
}
