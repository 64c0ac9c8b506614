import { useEffect, useState } from 'react'
import type { Desk } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { CrashScreen } from '../sheet/crash-screen.tsx'
import { SheetMark } from '../sheet/sheet-mark.tsx'
import { useTheme } from '../theme/theme.ts'
import { DemoList } from './demo-list.tsx'
import { putBack } from './job-list.ts'
import { JobRow } from './job-row.tsx'
import type { KeptJob } from './kept-job.ts'
import { openFile } from './open-file.ts'
import { OpenTrouble } from './open-trouble.tsx'
import { pickFile } from './pick-file.ts'
import { useCards } from './use-cards.ts'

/** All jobs of this browser, and the ways to another one. */
export function JobsPage({ desk }: { readonly desk: Desk<WorkCalls> }) {
  const { theme, choose } = useTheme()
  const shelf = useCards()
  const [gone, setGone] = useState<KeptJob>()
  useEffect(() => {
    document.title = 'Jobs – Sledwright'
  }, [])
  const open = async () => {
    const chosen = await pickFile()
    if (chosen) await openFile(desk, chosen)
  }
  return (
    <CrashScreen>
      <div className="page">
        <header className="masthead">
          <h1>
            <SheetMark /> Sledwright <small>Jobs</small>
          </h1>
          <div className="masthead-tools">
            <a className="button" href="#quick">
              Quick check
            </a>
            <button type="button" className="button" onClick={() => choose(theme === 'dark' ? 'light' : 'dark')}>
              {theme === 'dark' ? 'Light' : 'Dark'}
            </button>
          </div>
        </header>
        <main className="jobs">
          <section aria-labelledby="jobs-title">
            <div className="jobs-head">
              <h2 id="jobs-title">Kept in this browser</h2>
              <div className="jobs-ways">
                <a className="button button-strong" href="#new">
                  New job
                </a>
                <button type="button" className="button" onClick={() => void open()}>
                  Open a file …
                </button>
              </div>
            </div>
            <p className="jobs-said" aria-live="polite">
              {gone && (
                <>
                  {gone.card.name} is deleted.{' '}
                  <button
                    type="button"
                    className="button button-plain"
                    onClick={() => void putBack(gone).then(() => setGone(undefined))}
                  >
                    Undo
                  </button>
                </>
              )}
            </p>
            {shelf.kind === 'fetched' && shelf.cards.length > 0 && (
              <ul className="job-list">
                {shelf.cards.map((card) => (
                  <JobRow key={card.id} card={card} onGone={setGone} />
                ))}
              </ul>
            )}
            {shelf.kind === 'fetched' && shelf.cards.length === 0 && (
              <p className="soft">None yet. Begin one, open a file, or drop a file on this page.</p>
            )}
            {shelf.kind === 'refused' && (
              <p>
                This browser does not let the page keep anything ({shelf.why}). A job can still be worked on and saved
                as a file.
              </p>
            )}
            <p className="small soft jobs-note">
              They are nowhere else: nothing is sent. Whoever clears the browser’s data deletes them, so save as a file
              what has to last.
            </p>
          </section>
          <section aria-labelledby="demos-title">
            <h2 id="demos-title">To look at first</h2>
            <p className="small soft">Invented hilts. A change to one makes a job of your own; the demo stays.</p>
            <DemoList />
          </section>
        </main>
        <OpenTrouble />
      </div>
    </CrashScreen>
  )
}
