import { useEffect } from 'react'
import { nameless } from '../keeping/kept-job.ts'
import { renamed } from '../keeping/renamed.ts'
import { useProject, useWork } from './work-context.ts'

/** The name of the job, to be written over at any time. */
export function JobName() {
  const { job } = useWork()
  const id = useProject((p) => p.job[0]?.id ?? 'job')
  const name = useProject((p) => p.job[0]?.name ?? '')
  const shown = name.trim() || nameless
  useEffect(() => {
    document.title = `${shown} – Sledwright`
  }, [shown])
  return (
    <>
      <h1 className="unseen">{shown}</h1>
      <input
        id={`job/${id}/name`}
        className="head-name"
        aria-label="Name of the job"
        value={name}
        placeholder={nameless}
        maxLength={120}
        autoComplete="off"
        spellCheck={false}
        onChange={(event) => {
          const text = event.target.value
          job.edit((p) => renamed(p, text), 'name of the job')
        }}
        onKeyDown={(event) => event.key === 'Enter' && event.currentTarget.blur()}
        onBlur={() => job.settle()}
      />
    </>
  )
}
