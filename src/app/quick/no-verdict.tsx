import { problemText } from '../../problem/problem.ts'
import { homeless } from './said.ts'
import type { Check } from './use-quick-check.ts'

/** There is no verdict without numbers: never one that belongs to others. */
export function NoVerdict({ check, retry }: { readonly check: Check; readonly retry: () => void }) {
  return (
    <section className="verdict verdict-none" aria-label="Verdict">
      <span className="verdict-hatch" aria-hidden="true" />
      <div aria-live="polite">
        {check.kind === 'lacking' && (
          <p>
            No verdict yet.
            {check.unread.length > 0 && ` Not understood: ${check.unread.join(', ')}.`}
            {check.lacks.length > 0 && ` Still wanted: ${check.lacks.join(', ')}.`}
          </p>
        )}
        {check.kind === 'working' && <p>Checking …</p>}
        {check.kind === 'wrong' && (
          <>
            <p>No verdict: {homeless(check).length > 0 ? 'this does not go together.' : 'see the marked field.'}</p>
            <ul className="problem-list small">
              {homeless(check).map((p) => (
                <li key={`${p.path} ${p.hint}`}>{problemText(p)}</li>
              ))}
            </ul>
          </>
        )}
        {check.kind === 'stopped' && (
          <p>
            {check.text}{' '}
            <button type="button" className="button button-small" onClick={retry}>
              Try again
            </button>
          </p>
        )}
      </div>
    </section>
  )
}
