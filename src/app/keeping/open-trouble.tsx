import { useEffect, useRef } from 'react'
import { useStore } from 'zustand'
import { openTrouble } from './open-file.ts'
import { ProblemTable } from './problem-table.tsx'

/** Says why a file was not opened. */
export function OpenTrouble() {
  const trouble = useStore(openTrouble)
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    if (trouble) dialog.current?.showModal()
  }, [trouble])
  if (!trouble) return undefined
  const newer = trouble.problems.some((p) => p.code === 'newer-version')
  return (
    <dialog
      ref={dialog}
      className="sheet-dialog"
      aria-labelledby="trouble-title"
      onClose={() => openTrouble.setState(undefined, true)}
    >
      <h2 id="trouble-title">{newer ? `${trouble.file} is of a newer release` : `${trouble.file} was not opened`}</h2>
      <p>The file is as it was. Nothing of it was kept here.</p>
      <ProblemTable problems={trouble.problems} />
      <form method="dialog">
        <button className="button button-strong" type="submit">
          Close
        </button>
      </form>
    </dialog>
  )
}
