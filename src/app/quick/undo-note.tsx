import { useEffect, useEffectEvent, useRef } from 'react'
import type { FieldName } from './field-paths.ts'
import type { Kept } from './kept-form.ts'

/** Something that was done to the form at one click. */
export interface Done {
  readonly text: string
  /** The field that was changed: marked, and left where it is. */
  readonly field?: FieldName | undefined
  /** The form as it was; undefined where it is that again. */
  readonly before?: Kept
  /** What was done before that, and can be undone after it. */
  readonly earlier?: Done | undefined
}

/**
 * Says what was done, beside the verdict that came of it, with the way back. It takes the focus: the button that did it
 * is gone, and whoever hears the page is told. Ctrl or Cmd with Z does the same wherever no text is being typed.
 */
export default function UndoNote({ done, onUndo }: { readonly done: Done; readonly onUndo: () => void }) {
  const note = useRef<HTMLParagraphElement>(null)
  const undo = useEffectEvent(onUndo)
  useEffect(() => {
    note.current?.focus()
    if (!done.before) return undefined
    const field = document.getElementById(done.field ?? '')
    field?.toggleAttribute('data-changed', true)
    const press = (event: KeyboardEvent) => {
      if (event.key !== 'z' || !(event.ctrlKey || event.metaKey) || (event.target as Element).matches('[type=text]'))
        return
      event.preventDefault()
      undo()
    }
    document.addEventListener('keydown', press)
    return () => {
      field?.removeAttribute('data-changed')
      document.removeEventListener('keydown', press)
    }
  }, [done])
  return (
    <p ref={note} className="example-note undo-note small" tabIndex={-1}>
      {done.text}
      {done.before && (
        <button type="button" className="button button-small" onClick={onUndo}>
          Undo
        </button>
      )}
    </p>
  )
}
