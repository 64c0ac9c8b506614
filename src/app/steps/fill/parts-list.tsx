import { useState } from 'react'
import { flushSync } from 'react-dom'
import { addPart, type PartKind, partKinds } from '../../../job/add-part.ts'
import { recordOf } from '../../fields/fields-for.ts'
import { focusPath } from '../../fields/focus-path.ts'
import { useChoices } from '../../readings/use-choices.ts'
import { fixed } from '../../sheet/numbers.ts'
import { useProject, useView, useWork } from '../../work/work-context.ts'
import { HiltFirst } from './hilt-first.tsx'
import { kindWords } from './kind-words.ts'
import { PartRow } from './part-row.tsx'
import { usePlaces } from './use-part.ts'

/** Every part in a row, one of them open for its details. */
export function PartsList() {
  const { job, view } = useWork()
  const parts = useProject((p) => p.parts)
  const [open, setOpen] = useOpenPart()
  const [said, setSaid] = useState({ words: '', doubt: false })
  const choices = useChoices()
  const { placeOf } = usePlaces()
  const show = (path: string | undefined) => {
    setOpen(path)
    view.setState({ lit: path })
  }
  const add = (kind: PartKind) => {
    const { project, id, noRoom } = addPart(job.get(), kind, choices?.parts, placeOf)
    flushSync(() => {
      job.settle()
      job.edit(() => project)
      show(`parts/${id}`)
      setSaid({
        words: addedWords(project.parts.find((p) => p.id === id)?.name ?? id, noRoom),
        doubt: noRoom !== undefined,
      })
    })
    focusPath(kind === 'other' ? `parts/${id}/name` : `parts/${id}/preset`)
  }
  const removed = (name: string, next: string | undefined) => {
    show(undefined)
    setSaid({ words: `${name} is out; Undo brings it back.`, doubt: false })
    document.getElementById(next ?? addId('cell'))?.focus()
  }
  return (
    <section aria-labelledby="fill-parts">
      <h3 id="fill-parts">What goes in</h3>
      <HiltFirst />
      {parts.length > 0 && (
        <>
          <div className="fill-heads small soft" aria-hidden="true">
            <span>at z, mm</span>
            <span>known by</span>
          </div>
          <ol className="fill-list">
            {parts.map((p, i) => (
              <PartRow
                key={p.id}
                id={p.id}
                open={open === `parts/${p.id}`}
                onOpen={(to) => show(to ? `parts/${p.id}` : undefined)}
                onRemoved={() => {
                  const near = parts[i + 1] ?? parts[i - 1]
                  removed(p.name ?? p.id, near && `parts/${near.id}`)
                }}
                onDuplicated={(id) => show(`parts/${id}`)}
              />
            ))}
          </ol>
        </>
      )}
      <fieldset id="parts" className="fill-add">
        <legend className="unseen">Add a part</legend>
        <span className="small soft" aria-hidden="true">
          Add
        </span>
        {partKinds.map((kind) => (
          <button key={kind} id={addId(kind)} type="button" className="button fill-button" onClick={() => add(kind)}>
            <span className="unseen">Add a part: </span>
            {kindWords[kind]}
          </button>
        ))}
      </fieldset>
      <output className={`fill-said small ${said.doubt ? 'field-question-plain' : 'soft'}`}>{said.words}</output>
    </section>
  )
}

const addedWords = (name: string, noRoom: number | undefined): string =>
  noRoom === undefined
    ? `${name} is in.`
    : `${name} is in, but no free stretch of ${fixed(noRoom, 1)} mm is left: it lies over others. Move it, or make room.`

const addId = (kind: PartKind): string => `fill-add-${kind}`

/**
 * The open part: the last one opened here, or lit from elsewhere; opened in the same drawing, so that its fields are there
 * to go to. A field of a row that is typed in lights its part, too: it stays where it is.
 */
function useOpenPart() {
  const path = useView((v) => v.lit)
  const lit = path?.startsWith('parts/') ? recordOf(path) : undefined
  const [open, setOpen] = useState(lit)
  const [seen, setSeen] = useState(lit)
  if (lit !== seen) {
    setSeen(lit)
    if (lit !== undefined && document.activeElement?.id !== path) setOpen(lit)
  }
  return [open, setOpen] as const
}
