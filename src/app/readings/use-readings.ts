import { useEffect, useState } from 'react'
import type { ReadingsView } from '../../papers/readings-sheet.ts'
import type { Problem } from '../../problem/problem.ts'
import type { QuantityInput } from '../../project/schema/quantity.ts'
import { useWork } from '../work/work-context.ts'

export interface ReadingsAnswer {
  readonly view: ReadingsView | undefined
  readonly problems: readonly Problem[]
  readonly questions: readonly Problem[]
}

const nothing: ReadingsAnswer = { view: undefined, problems: [], questions: [] }

/** Asks the worker what a dimension comes to, at each change of it. */
export function useReadings(path: string, input: QuantityInput | undefined): ReadingsAnswer {
  const { desk, job } = useWork()
  const [answer, setAnswer] = useState(nothing)
  useEffect(() => {
    let wanted = true
    void desk
      .ask(`readings ${path}`, 8000, (calls) => calls.readings(job.get(), path))
      .then((reply) => {
        if (!wanted || reply.kind !== 'done') return
        const { value } = reply
        setAnswer(
          value.ok
            ? { view: value.value, problems: [], questions: value.value.questions }
            : {
                view: undefined,
                problems: value.problems,
                questions: value.problems.filter((p) => p.code === 'suspicious'),
              },
        )
      })
    return () => {
      wanted = false
    }
  }, [desk, job, path, input])
  return answer
}
