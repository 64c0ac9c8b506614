import './work.css'
import { useMemo, useState } from 'react'
import { useStore } from 'zustand'
import type { Desk } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { fileText } from '../keeping/save-job.ts'
import { CrashScreen } from '../sheet/crash-screen.tsx'
import { PanelGuard } from '../sheet/panel-guard.tsx'
import { CrossPanel } from '../strips/cross-panel.tsx'
import { useTheme } from '../theme/theme.ts'
import { FindingsPanel } from './findings-panel.tsx'
import type { JobStore } from './job-store.ts'
import { keptStep, useKeptStep } from './kept-step.ts'
import { SolidCorner } from './solid-corner.tsx'
import { StandingDock } from './standing.tsx'
import { StepPanel } from './step-panel.tsx'
import { stepWords } from './step-words.ts'
import { Strips } from './strips.tsx'
import { useJudged } from './use-judged.ts'
import { useTopAgain } from './use-top-again.ts'
import { createViewStore } from './view-store.ts'
import { WorkContext } from './work-context.ts'
import { WorkHead } from './work-head.tsx'

export interface WorkPageProps {
  readonly desk: Desk<WorkCalls>
  readonly job: JobStore
}

/** A whole job on the table: its strips across the page, and below them what one does, what came of it, and the solid. */
export default function WorkPage({ desk, job }: WorkPageProps) {
  const [view] = useState(() => createViewStore(keptStep()))
  useKeptStep(view)
  useTopAgain()
  const { theme, choose } = useTheme()
  const judged = useJudged(desk, job, view)
  const work = useMemo(() => ({ job, view, desk, judged, theme }), [job, view, desk, judged, theme])
  const step = useStore(view, (v) => v.step)
  // Stays while fixes come in: they are of the same answer, and a fault's button must not move under the hand for them.
  const answer = judged.report?.views
  const old = judged.stand === 'wrong' || judged.stand === 'stopped'
  return (
    <CrashScreen what="my job" rescue={() => fileText(job.get())}>
      <WorkContext value={work}>
        <div className="page work">
          <WorkHead theme={theme} onTheme={choose} />
          <main className="work-table" data-old={old || undefined}>
            <PanelGuard what="The drawing along the hilt" of={judged.views}>
              <Strips />
            </PanelGuard>
            <div className="work-lower">
              <PanelGuard key={step} what={stepWords[step]} of={answer}>
                <StepPanel step={step} />
              </PanelGuard>
              <PanelGuard what="The list of findings" of={answer}>
                <FindingsPanel />
              </PanelGuard>
              <div className="work-corner">
                <PanelGuard what="The cross-section" of={judged.views}>
                  <CrossPanel />
                </PanelGuard>
                <PanelGuard what="The solid" of={answer}>
                  <SolidCorner />
                </PanelGuard>
              </div>
            </div>
          </main>
          <StandingDock />
        </div>
      </WorkContext>
    </CrashScreen>
  )
}
