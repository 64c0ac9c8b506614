import { nothingChecked } from '../findings/nothing-checked.ts'
import { signed } from '../sheet/numbers.ts'
import { statusWords, VerdictMark } from '../verdict/verdict-mark.tsx'
import { useWork } from './work-context.ts'

/** The verdict in the corner of the eye, wherever one works. */
export function Standing() {
  const { judged } = useWork()
  const { report, stand } = judged
  const tightest = report?.findings.find((f) => f.status !== 'advice')
  if (stand === 'stopped')
    return (
      <div className="standing" aria-live="polite">
        <b>The check was stopped</b>
        <button type="button" className="button" onClick={judged.retry}>
          Check again
        </button>
      </div>
    )
  const known = report && stand !== 'wrong'
  if (known && nothingChecked(report))
    return (
      <p className="standing" aria-live="polite" data-stand={stand}>
        <b>Nothing to check yet</b>
      </p>
    )
  return (
    <p className={known ? `standing standing-${report.verdict}` : 'standing'} aria-live="polite" data-stand={stand}>
      {known ? (
        <>
          <VerdictMark status={report.verdict} />
          <b>{statusWords[report.verdict]}</b>
          {tightest && (
            <span className="number">
              <span className="standing-word">tightest </span>
              {signed(tightest.margin.worst)} {tightest.unit}
            </span>
          )}
        </>
      ) : (
        <b>{stand === 'working' ? 'Checking …' : 'No verdict'}</b>
      )}
    </p>
  )
}
