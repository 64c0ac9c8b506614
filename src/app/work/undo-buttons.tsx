import { useState } from 'react'
import { useStore } from 'zustand'
import { useUndoKeys } from './use-undo-keys.ts'
import { useWork } from './work-context.ts'

/** A step back and forward again, by button and by key. */
export function UndoButtons() {
  const { job } = useWork()
  const past = useStore(job.history, (h) => h.pastStates.length)
  const future = useStore(job.history, (h) => h.futureStates.length)
  const [said, setSaid] = useState('')
  const undo = () => {
    if (past === 0) return
    job.undo()
    setSaid(`Undone. ${past - 1} more can be undone.`)
  }
  const redo = () => {
    if (future === 0) return
    job.redo()
    setSaid(`Done again. ${future - 1} more can be done again.`)
  }
  useUndoKeys(undo, redo)
  return (
    <>
      <button
        type="button"
        className="button head-button"
        aria-disabled={past === 0}
        aria-keyshortcuts="Control+Z Meta+Z"
        onClick={undo}
      >
        <Arrow way="back" /> <span>Undo</span>
      </button>
      <button
        type="button"
        className="button head-button"
        aria-disabled={future === 0}
        aria-keyshortcuts="Control+Shift+Z Meta+Shift+Z Control+Y"
        onClick={redo}
      >
        <Arrow way="on" /> <span>Redo</span>
      </button>
      <p className="unseen" aria-live="polite">
        {said}
      </p>
    </>
  )
}

function Arrow({ way }: { readonly way: 'back' | 'on' }) {
  return (
    <svg className="head-arrow" width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
      <path
        d="M5.5 2.5 2 6l3.5 3.5M2 6h7.5a4 4 0 0 1 0 8H7"
        transform={way === 'on' ? 'matrix(-1 0 0 1 16 0)' : undefined}
      />
    </svg>
  )
}
