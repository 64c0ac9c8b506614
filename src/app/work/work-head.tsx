import { useStore } from 'zustand'
import { signed } from '../sheet/numbers.ts'
import { SheetMark } from '../sheet/sheet-mark.tsx'
import type { Theme } from '../theme/theme.ts'
import { statusWords, VerdictMark } from '../verdict/verdict-mark.tsx'
import { stepWords } from './step-words.ts'
import { steps } from './view-store.ts'
import { useProject, useView, useWork } from './work-context.ts'

/** Whose job it is, which step is in hand, and how it stands. */
export function WorkHead({ theme, onTheme }: { readonly theme: Theme; readonly onTheme: (theme: Theme) => void }) {
  const name = useProject((p) => p.job[0]?.name ?? 'New job')
  return (
    <header className="work-head">
      <h1>
        <SheetMark /> <span className="unseen">Sledwright: </span>
        {name}
      </h1>
      <StepBar />
      <div className="masthead-tools">
        <UndoButtons />
        <button type="button" className="button" onClick={() => onTheme(theme === 'dark' ? 'light' : 'dark')}>
          {theme === 'dark' ? 'Light' : 'Dark'}
        </button>
      </div>
      <Standing />
    </header>
  )
}

function StepBar() {
  const { view } = useWork()
  const step = useView((v) => v.step)
  return (
    <nav className="step-bar" aria-label="Steps of the job">
      {steps.map((s) => (
        <button
          key={s}
          type="button"
          aria-current={s === step ? 'step' : undefined}
          onClick={() => view.setState({ step: s })}
        >
          {stepWords[s]}
        </button>
      ))}
    </nav>
  )
}

function UndoButtons() {
  const { job } = useWork()
  const [past, future] = [
    useStore(job.history, (h) => h.pastStates.length),
    useStore(job.history, (h) => h.futureStates.length),
  ]
  return (
    <>
      <button type="button" className="button" disabled={past === 0} onClick={() => job.undo()}>
        Undo
      </button>
      <button type="button" className="button" disabled={future === 0} onClick={() => job.redo()}>
        Redo
      </button>
    </>
  )
}

/** The verdict in the corner of the eye, wherever one works. */
function Standing() {
  const { judged } = useWork()
  const { report, stand } = judged
  const tightest = report?.findings.find((f) => f.status !== 'advice')
  return (
    <p className="standing" aria-live="polite" data-stand={stand}>
      {report && (stand === 'answered' || stand === 'working') ? (
        <>
          <VerdictMark status={report.verdict} />
          <b>{statusWords[report.verdict]}</b>
          {tightest && <span className="number">{signed(tightest.margin.worst)} mm</span>}
        </>
      ) : (
        <b>{stand === 'working' ? 'Checking …' : 'No verdict'}</b>
      )}
    </p>
  )
}
