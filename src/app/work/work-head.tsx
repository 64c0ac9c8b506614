import './work-head.css'
import { JobMenu } from '../keeping/job-menu.tsx'
import { Notices } from '../keeping/notices.tsx'
import { SavedNote } from '../keeping/saved-note.tsx'
import { SheetMark } from '../sheet/sheet-mark.tsx'
import type { Theme } from '../theme/theme.ts'
import { JobName } from './job-name.tsx'
import { Standing } from './standing.tsx'
import { StepBar } from './step-bar.tsx'
import { UndoButtons } from './undo-buttons.tsx'

/** Whose job it is, whether it is kept, which step is in hand, and how it stands. */
export function WorkHead({ theme, onTheme }: { readonly theme: Theme; readonly onTheme: (theme: Theme) => void }) {
  return (
    <div className="work-top">
      <header className="work-head">
        <div className="head-job">
          <a className="head-home" href="#jobs" aria-label="Sledwright: all jobs">
            <SheetMark />
          </a>
          <JobName />
          <SavedNote />
        </div>
        <StepBar />
        <Standing />
        <div className="head-tools">
          <UndoButtons />
          <JobMenu theme={theme} onTheme={onTheme} />
        </div>
      </header>
      <Notices />
    </div>
  )
}
