import { useMemo } from 'react'
import type { Size } from '../../papers/sizes.ts'
import type { Problem } from '../../problem/problem.ts'
import { useWork } from '../work/work-context.ts'

/** What the program said about the values at a path, or about what lies in them. */
export interface Said {
  readonly fault: (path: string) => Problem | undefined
  readonly question: (path: string) => Problem | undefined
  /** What the value came to; not while an older answer stands beside newer numbers. */
  readonly size: (path: string) => Size | undefined
}

/** What the newest answer says about each field of the job. */
export function useSaid(): Said {
  const { judged } = useWork()
  return useMemo(() => {
    const { problems, report, stand } = judged
    const current = stand === 'wrong' ? undefined : report
    const sizes = new Map(current?.sizes.map((s) => [s.path, s]))
    const first = (list: readonly Problem[] | undefined) => (path: string) =>
      list?.find((p) => p.path === path || p.path.startsWith(`${path}/`))
    return { fault: first(problems), question: first(current?.questions), size: (path) => sizes.get(path) }
  }, [judged])
}
