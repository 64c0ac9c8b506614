import type { Bench } from './bench.ts'
import type { JobBench } from './job-bench.ts'
import type { LinkBench } from './link-bench.ts'

/** All calls of the page's worker: the quick check's, and those of a full job. */
export type WorkCalls = Later<Pick<Bench, 'check' | 'draw' | 'solid' | 'file' | 'grow' | 'mend'>> &
  Pick<JobBench, keyof JobBench> &
  Pick<LinkBench, 'link' | 'unlink'>

/** The quick check's calls as the worker has them: its presets are fetched first. */
type Later<T> = {
  readonly [K in keyof T]: T[K] extends (...asked: infer A) => infer R ? (...asked: A) => Promise<Awaited<R>> : never
}
