import { useState } from 'react'
import { useWork } from '../work/work-context.ts'
import { useKeeping, useStanding } from './keeping-context.ts'
import { saveJob } from './save-job.ts'

/** What has to be known or decided about keeping the job, across the page below its head. */
export function Notices() {
  const standing = useStanding()
  return (
    <div className="notices" aria-live="polite">
      {standing.kind === 'failed' && <NotSaved full={standing.full} message={standing.message} />}
      {standing.kind === 'elsewhere' && <Elsewhere what={standing.what} />}
      <UnknownFields />
    </div>
  )
}

function NotSaved({ full, message }: { readonly full: boolean; readonly message: string }) {
  const { job } = useWork()
  const { keeper } = useKeeping()
  return (
    <div className="notice notice-wrong">
      <p>
        <b>Not saved.</b>{' '}
        {full
          ? 'The browser has no room left for this page. Save the job as a file, or delete other jobs.'
          : `The browser does not let this page keep anything (${message}). Save the job as a file before you close it.`}
      </p>
      <div className="notice-deeds">
        <button type="button" className="button button-strong" onClick={() => void saveJob(job.get(), keeper.id)}>
          Save as a file
        </button>
        <button type="button" className="button" onClick={() => void keeper.keepNow()}>
          Try again
        </button>
      </div>
    </div>
  )
}

function Elsewhere({ what }: { readonly what: 'changed' | 'deleted' }) {
  const { keeper } = useKeeping()
  return (
    <div className="notice notice-wrong">
      <p>
        <b>{what === 'changed' ? 'Another tab has changed this job.' : 'Another tab has deleted this job.'}</b> Nothing
        is saved here until you choose{what === 'changed' ? ' which one to go on with' : ''}.
      </p>
      <div className="notice-deeds">
        {what === 'changed' && (
          <button type="button" className="button" onClick={() => void keeper.takeTheirs()}>
            Take theirs
          </button>
        )}
        <button type="button" className="button button-strong" onClick={() => void keeper.keepAsCopy()}>
          Keep mine as a copy
        </button>
      </div>
    </div>
  )
}

/** A file of somebody else's program, or of another release: nothing of it is dropped, and nothing is passed over. */
function UnknownFields() {
  const { notices } = useKeeping()
  const [closed, setClosed] = useState(false)
  if (closed || notices.length === 0) return undefined
  return (
    <div className="notice">
      <p>
        Not understood here, and kept as it is: <span className="number">{notices.join(', ')}</span>.
      </p>
      <div className="notice-deeds">
        <button type="button" className="button" onClick={() => setClosed(true)}>
          Close
        </button>
      </div>
    </div>
  )
}
