import { useState } from 'react'
import type { Fix } from '../../checks/finding.ts'
import { differencesOf } from '../../papers/compare.ts'
import { applyFix } from '../../project/apply-fix.ts'
import { placeWords } from '../../project/place-words.ts'
import { stepOf } from '../fields/step-of.ts'
import { goToPath } from '../work/go-to.ts'
import { useProject, useWork } from '../work/work-context.ts'
import type { Applied } from './applied-note.tsx'
import type { FindingActions } from './fix-line.tsx'

export interface FixDesk {
  readonly actions: FindingActions
  /** The fix that was applied, while nothing was changed after it. */
  readonly applied: Applied | undefined
  readonly undo: () => void
}

/** What can be done about a finding: apply a fix as one step, or go to a field. */
export function useFindingActions(): FixDesk {
  const { job, view } = useWork()
  const project = useProject((p) => p)
  const [last, setLast] = useState<Applied>()
  const apply = (fix: Fix) => {
    const before = job.get()
    job.settle()
    if (!job.edit((p) => applyFix(p, fix))) return
    const after = job.get()
    setLast({ spoilt: fix.spoils?.text, changes: differencesOf(before, after), after })
    view.setState({ lit: fix.path })
  }
  return {
    actions: {
      apply: (fix) => (applyFix(project, fix) ? () => apply(fix) : undefined),
      goTo: (path) =>
        stepOf(path) === undefined ? undefined : { label: placeWords(project, path), go: () => goToPath(view, path) },
      placeName: (path) => placeWords(project, path),
    },
    applied: last?.after === project ? last : undefined,
    undo: () => job.undo(),
  }
}
