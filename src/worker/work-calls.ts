import type { Bench } from './bench.ts'
import type { JobBench } from './job-bench.ts'
import type { LinkBench } from './link-bench.ts'

/** All calls of the page's worker: the quick check's, and those of a full job. */
export type WorkCalls = Pick<Bench, 'check' | 'draw' | 'solid' | 'file' | 'grow' | 'mend'> &
  Pick<JobBench, keyof JobBench> &
  Pick<LinkBench, 'link' | 'unlink'>
