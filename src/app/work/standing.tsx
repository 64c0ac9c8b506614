import type { JobReport } from '../../worker/job-bench.ts'
import { nothingChecked } from '../findings/nothing-checked.ts'
import { signed } from '../sheet/numbers.ts'
import { needed } from '../verdict/needed.ts'
import { statusWords, VerdictMark } from '../verdict/verdict-mark.tsx'
import { useWork } from './work-context.ts'

/** The verdict in the corner of the eye, wherever one works. */
export function Standing() {
  const { judged } = useWork()
  const { report, stand } = judged
  if (stand === 'stopped')
    return (
      <div className="standing" aria-live="polite">
        <b>The check was stopped</b>
        <button type="button" className="button" onClick={judged.retry}>
          Check again
        </button>
      </div>
    )
  const known = report && stand !== 'wrong' && !nothingChecked(report)
  return (
    <p className={known ? `standing standing-${report.verdict}` : 'standing'} aria-live="polite" data-stand={stand}>
      <StandingWords />
    </p>
  )
}

/** The same at the foot of a narrow page, where the head scrolls away; it leads to what was found. */
export function StandingDock() {
  const toFindings = () => document.querySelector('.findings-panel')?.scrollIntoView({ block: 'start' })
  return (
    <button type="button" className="dock" onClick={toFindings}>
      <StandingWords />
      <span className="unseen">: to the findings</span>
    </button>
  )
}

function StandingWords() {
  const { report, stand } = useWork().judged
  if (!report || stand === 'wrong' || stand === 'stopped')
    return <b>{stand === 'working' ? 'Checking …' : 'No verdict'}</b>
  if (nothingChecked(report)) return <b>Nothing to check yet</b>
  const tightest = report.findings.find((f) => f.status !== 'advice')
  const unknown =
    report.verdict === 'unsure' && (!tightest || tightest.status === 'clear') ? whatIsMissing(report.notChecked) : ''
  return (
    <>
      <VerdictMark status={report.verdict} />
      <b>{statusWords[report.verdict]}</b>
      {unknown && <span>{unknown}</span>}
      {tightest && !unknown && (
        <span className="number">
          <span className="standing-lead">tightest leaves </span>
          {signed(tightest.margin.worst, tightest.unit)} {tightest.unit}
          <span className="standing-needed"> {needed(tightest)}</span>
        </span>
      )}
    </>
  )
}

/** Why nothing that was found is in doubt and yet the whole is: what is not there to be checked. */
function whatIsMissing(notChecked: JobReport['notChecked']): string {
  const empty = notChecked.filter((n) => n.id.startsWith('waiting:')).length
  if (empty > 0) return empty === 1 ? '1 thing is still empty' : `${empty} things are still empty`
  return notChecked.length > 0 ? `${notChecked.length} not checked` : ''
}
