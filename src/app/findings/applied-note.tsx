import type { Difference } from '../../papers/compare.ts'
import type { Project } from '../../project/schema/project.ts'
import { capital } from '../sheet/numbers.ts'

/** A fix that was just applied: its words, what it changed, and the job as it was right after. */
export interface Applied {
  /** What else is worse since. */
  readonly spoilt: string | undefined
  readonly changes: readonly Difference[]
  readonly after: Project
}

/** Says what a fix has changed, for as long as it is the last thing that was done. */
export function AppliedNote({
  applied,
  onUndo,
}: {
  readonly applied: Applied | undefined
  readonly onUndo: () => void
}) {
  return (
    <div aria-live="polite">
      {applied && (
        <p className="applied small">
          <span>
            <b>Applied.</b>{' '}
            {applied.changes.slice(0, 3).map((c) => (
              <span key={c.path}>
                {capital(c.what)}: {c.before} → {c.after}.{' '}
              </span>
            ))}
            {applied.changes.length > 3 && `And ${applied.changes.length - 3} more. `}
            {applied.spoilt}
          </span>
          <button type="button" className="button button-small" onClick={onUndo}>
            Undo
          </button>
        </p>
      )}
    </div>
  )
}
