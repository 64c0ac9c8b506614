import '../findings/findings-panel.css'
import { CompareButton } from '../compare/compare-button.tsx'
import { AppliedNote } from '../findings/applied-note.tsx'
import { FindingsList } from '../findings/findings-list.tsx'
import { ProblemList } from '../findings/problem-list.tsx'
import { StateChooser } from '../findings/state-chooser.tsx'
import { useFindingActions } from '../findings/use-finding-actions.ts'
import { useView, useWork } from './work-context.ts'

/** What was found, tightest first, with what is wrong with the entries before it. */
export function FindingsPanel() {
  const { view, judged } = useWork()
  const chosen = useView((v) => v.finding)
  const { actions, applied, undo } = useFindingActions()
  const { report, problems, stand, trouble } = judged
  const tightest = report?.findings.find((f) => f.status !== 'advice')
  // What keeps the job from being clear lies open with its reason until one looks elsewhere.
  const unasked = tightest?.status === 'clear' ? undefined : tightest?.id
  const selected = chosen === null ? undefined : (chosen ?? unasked)
  const old = report !== undefined && (stand === 'wrong' || stand === 'stopped')
  return (
    <div className="findings-panel" aria-busy={stand === 'working'}>
      <AppliedNote applied={applied} onUndo={undo} />
      <div aria-live="polite">
        {trouble && <p className="problems problems-fault">{trouble}</p>}
        {problems.every((p) => p.code === 'missing') ? (
          <ProblemList title="Still wanted" tone="wanted" problems={problems} actions={actions} />
        ) : (
          <ProblemList title="No verdict: correct these first" tone="fault" problems={problems} actions={actions} />
        )}
      </div>
      <ProblemList
        title="Is this meant so?"
        tone="question"
        problems={old ? [] : (report?.questions ?? [])}
        actions={actions}
      />
      {old && <p className="old-note small">Drawings and findings are of the last numbers that could be checked.</p>}
      {report && (
        <FindingsList
          findings={report.findings}
          notChecked={report.notChecked}
          assumptions={report.assumptions}
          selected={selected}
          onSelect={(id) => {
            const at = report.findings.find((f) => f.id === id)?.at
            view.setState({ finding: id ?? null, ...(at && { cursor: { z: at.z, theta: at.theta } }) })
          }}
          actions={old ? { ...actions, apply: () => undefined } : actions}
          trying={judged.trying}
          tools={
            <>
              <StateChooser />
              <CompareButton />
            </>
          }
        />
      )}
    </div>
  )
}
