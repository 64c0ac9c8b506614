import { useMemo } from 'react'
import { litPlace } from '../../papers/lit-stretch.ts'
import type { Mark } from '../drawing/lengthwise-section.tsx'
import { fixed } from '../sheet/numbers.ts'
import { useView, useWork } from '../work/work-context.ts'
import type { Range } from './strip-frame.ts'

/** What is lit in the strips: the finding that is open, and the field or part in hand. */
export interface Lit {
  readonly marks: readonly Mark[]
  /** References whose outlines are lit. */
  readonly ids: readonly string[]
  readonly stretch: Range | undefined
}

export function useLit(): Lit {
  const { judged } = useWork()
  const [open, path] = [useView((v) => v.finding), useView((v) => v.lit)]
  const { report, views } = judged
  return useMemo(() => {
    const findings = report?.findings ?? []
    const finding = findings.find((f) => f.id === open)
    const tightest = open === null ? undefined : findings.find((f) => f.status !== 'advice' && f.at)
    const shown = finding ?? tightest
    const place = path !== undefined && views ? litPlace(views.lengthwise, path) : undefined
    const record = path?.split('/').slice(0, 2).join('/')
    return {
      marks: shown?.at
        ? [{ at: shown.at, tone: shown.status, ...(shown.unit === 'mm' && { text: fixed(shown.value) }) }]
        : [],
      ids: [...(finding?.parts ?? []), ...(record === undefined ? [] : [record])],
      stretch: place,
    }
  }, [report, views, open, path])
}
