import { useEffect, useId, useRef, useState } from 'react'
import { valueAt } from '../../project/path.ts'
import { placeWords } from '../../project/place-words.ts'
import type { QuantityInput } from '../../project/schema/quantity.ts'
import { dimensionOf, usualTool } from '../../resolve/dimension.ts'
import { useProject } from '../work/work-context.ts'
import { type Draft, draftOf, inputOf, sameInput, withRows } from './draft.ts'
import { KnownBy } from './known-by.tsx'
import { ReadingRows } from './reading-rows.tsx'
import { ReadingTools } from './reading-tools.tsx'
import { ReadingsResult } from './readings-result.tsx'
import { useReadings } from './use-readings.ts'

export interface ReadingsSheetProps {
  readonly path: string
  readonly onValue: (value: QuantityInput | undefined) => void
  readonly onClose: () => void
}

/** The sheet of one dimension: how it is known, its readings, and what they come to. Every change is the job's at once. */
export function ReadingsSheet({ path, onValue, onClose }: ReadingsSheetProps) {
  const title = useId()
  const words = useProject((p) => placeWords(p, path))
  const input = useProject((p) => valueAt(p, path)) as QuantityInput | undefined
  const [typed, setTyped] = useState(() => draftOf(input))
  // What was typed here holds until the job says otherwise: an undo, another tab.
  const draft = sameInput(inputOf(typed), input) ? typed : draftOf(input)
  const change = (next: Draft) => {
    setTyped(next)
    if (!sameInput(inputOf(next), input)) onValue(inputOf(next))
  }
  const result = useReadings(path, input)
  const as = useProject((p) => dimensionOf(p, path)?.as)
  const shown = useDialog()
  const takesRest = useRef<() => boolean>(null)
  return (
    <dialog ref={shown} className="readings" aria-labelledby={title} onClose={onClose}>
      <div className="readings-head">
        <h2 id={title}>Readings: {words}</h2>
        <button
          type="button"
          className="button"
          onClick={() => (takesRest.current?.() ?? true) && shown.current?.close()}
        >
          Done
        </button>
      </div>
      <div className="readings-body">
        <KnownBy path={path} draft={draft} onDraft={change} usual={as && usualTool[as]} />
        <ReadingRows
          path={path}
          draft={draft}
          onDraft={change}
          round={as === 'bore' || as === 'outside'}
          questions={result.questions}
        />
        {!draft.assumed && (
          <ReadingTools
            name={words}
            draft={draft}
            ref={takesRest}
            onRows={(more) => change(withRows(draft, draft.rows.length - 1, more))}
          />
        )}
        <ReadingsResult result={result} />
      </div>
    </dialog>
  )
}

/** Shown above the page, which waits: the focus stays in it and goes back to where it came from. */
function useDialog() {
  const ref = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    const dialog = ref.current
    dialog?.showModal()
    return () => dialog?.close()
  }, [])
  return ref
}
