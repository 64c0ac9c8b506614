import { useRef, useState } from 'react'
import { type Reference, referencesTo, withoutThing } from '../../../job/references-to.ts'
import { useWork } from '../../work/work-context.ts'
import type { PartInHand } from './use-part.ts'

/** Takes the part out. Where something refers to it, it is said first what becomes of that. */
export function RemovePart({ hand, onRemoved }: { readonly hand: PartInHand; readonly onRemoved: () => void }) {
  const { job } = useWork()
  const { part, path, placeOf } = hand
  const dialog = useRef<HTMLDialogElement>(null)
  const [references, setReferences] = useState<readonly Reference[]>([])
  const name = part.name ?? part.id
  const remove = () => {
    dialog.current?.close()
    job.settle()
    if (job.edit((p) => withoutThing(p, path, placeOf))) onRemoved()
  }
  const start = () => {
    const found = referencesTo(job.get(), path)
    if (found.length === 0) return remove()
    setReferences(found)
    dialog.current?.showModal()
  }
  return (
    <>
      <button type="button" className="button fill-button" onClick={start}>
        Remove<span className="unseen"> {name}</span>
      </button>
      <dialog ref={dialog} className="fill-dialog" aria-labelledby={`${path}-remove`}>
        <h3 id={`${path}-remove`}>Remove {name}?</h3>
        <p>This refers to it:</p>
        <ul>
          {references.map((r) => (
            <li key={`${r.path} ${r.words}`}>{r.words}.</li>
          ))}
        </ul>
        <p className="small soft">One Undo brings all of it back.</p>
        <div className="fill-tools">
          <button type="button" className="button button-strong" onClick={remove}>
            Remove {name}
          </button>
          <button type="button" className="button" onClick={() => dialog.current?.close()}>
            Keep it
          </button>
        </div>
      </dialog>
    </>
  )
}
