import { useEffect, useState } from 'react'
import type { QuickInput } from '../../job/quick.ts'
import { problemText } from '../../problem/problem.ts'
import type { Desk } from '../../worker/desk.ts'
import type { SolidView } from '../../worker/press.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'

/** The kernel is fetched at the first call, perhaps over a slow line, ms. */
const patience = 60_000

export interface Solid {
  readonly solid: SolidView | undefined
  readonly trouble: string | undefined
}

/** The sled as a solid for an input, built in the worker when it is wanted; the last one stays until the next is there. */
export function useSolid(desk: Desk<WorkCalls>, input: QuickInput | undefined, wanted: boolean): Solid {
  const [state, setState] = useState<Solid>({ solid: undefined, trouble: undefined })
  const key = wanted && input ? JSON.stringify(input) : undefined
  useEffect(() => {
    if (key === undefined) return
    let current = true
    const asked: QuickInput = JSON.parse(key)
    void desk
      .ask('solid', patience, (bench) => bench.solid(asked))
      .then((reply) => {
        if (!current || reply.kind === 'overtaken') return
        if (reply.kind === 'done' && reply.value.ok && reply.value.value.bodies.length > 0)
          return setState({ solid: reply.value.value, trouble: undefined })
        const why =
          reply.kind === 'done'
            ? (reply.value.ok ? reply.value.value.problems : reply.value.problems).map(problemText).join(' ')
            : reply.kind === 'stuck'
              ? `It took longer than ${reply.afterMs / 1000} s and was stopped.`
              : reply.message
        setState({ solid: undefined, trouble: `No solid could be built. ${why}` })
      })
    return () => {
      current = false
    }
  }, [desk, key])
  return state
}
