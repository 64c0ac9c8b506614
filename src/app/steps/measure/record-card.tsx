import { type ReactNode, useEffect, useRef, useState } from 'react'
import { flushSync } from 'react-dom'
import type { Problem } from '../../../problem/problem.ts'
import { withValue } from '../../../project/path.ts'
import { placeWords } from '../../../project/place-words.ts'
import { referrersOf } from '../../../project/referrers.ts'
import type { Project } from '../../../project/schema/project.ts'
import { focusPath } from '../../fields/focus-path.ts'
import { useSaid } from '../../fields/use-said.ts'
import { useWork } from '../../work/work-context.ts'

export interface RecordCardProps {
  /** Of the record in the project. */
  readonly path: string
  /** What stands in its line while it is closed. */
  readonly line: ReactNode
  /** Cards of one group are open one at a time. */
  readonly group: string
  readonly name: string
  /** Further buttons beside the one that takes it out. */
  readonly tools?: ReactNode
  readonly children: ReactNode
}

/** A record of the job as a line that opens on its fields. */
export function RecordCard({ path, line, group, name, tools, children }: RecordCardProps) {
  const said = useSaid()
  const [fault, question] = [said.fault(path), said.question(path)]
  return (
    <details className="card" name={group} id={path}>
      <summary>
        {line}
        {(fault ?? question) && <span className={`card-mark ${markOf(fault).look}`}>{markOf(fault).words}</span>}
      </summary>
      <div className="card-body">
        <OwnFault path={path} />
        {children}
        <div className="card-tools">
          {tools}
          <TakeOut path={path} name={name} />
        </div>
      </div>
    </details>
  )
}

/** What was not typed yet is no fault. */
function markOf(fault: Problem | undefined): { readonly look: string; readonly words: string } {
  if (!fault) return { look: 'field-question', words: 'asked about' }
  return fault.code === 'missing'
    ? { look: 'soft', words: 'not all typed yet' }
    : { look: 'field-fault', words: 'to mend' }
}

/** What is wrong with a whole record or list, where no single field is to blame. */
export function OwnFault({ path }: { readonly path: string }) {
  const said = useSaid()
  const [fault, question] = [said.fault(path), said.question(path)]
  return (
    <div aria-live="polite" className="small">
      {fault?.path === path && (
        <p className="field-fault">
          {fault.got}: {fault.hint}
        </p>
      )}
      {question?.path === path && <p className="field-question">{question.hint}</p>}
    </div>
  )
}

/** Takes a record out. Where others name it, it says which first, and takes them out with it. */
export function TakeOut({
  path,
  name,
  label = 'Take out',
}: {
  readonly path: string
  readonly name: string
  readonly label?: string
}) {
  const { job } = useWork()
  const [others, setOthers] = useState<readonly string[]>()
  const ask = useRef<HTMLButtonElement>(null)
  useEffect(() => {
    if (others) ask.current?.focus()
  }, [others])
  const here = useRef<HTMLDivElement & HTMLFieldSetElement>(null)
  const remove = (also: readonly string[]) => {
    const list = here.current?.closest('[data-list]')
    flushSync(() => void edit(also))
    // What had the focus is gone: it goes on where another could be added.
    list?.querySelector<HTMLElement>('[data-add]')?.focus()
  }
  const edit = (also: readonly string[]) =>
    job.edit((p) =>
      [...also]
        .reverse()
        .reduce<Project | undefined>((q, at) => q && (withValue(q, at, undefined) ?? q), withValue(p, path, undefined)),
    )
  const start = () => {
    const found = referrersOf(job.get(), path.replace(/^(sections\/[^/]+)\/bore\//, '$1/'))
    if (found.length === 0) remove([])
    else setOthers(found)
  }
  if (!others)
    return (
      <div ref={here}>
        <button type="button" className="button" onClick={start}>
          {label}
          <span className="unseen"> {name}</span>
        </button>
      </div>
    )
  return (
    <fieldset ref={here} className="take-out" aria-label={`Take ${name} out?`}>
      <p>
        <b>{name}</b> is named by:
      </p>
      <ul>
        {others.map((at) => (
          <li key={at}>{placeWords(job.get(), at)}</li>
        ))}
      </ul>
      <div className="save-buttons">
        <button ref={ask} type="button" className="button" onClick={() => remove(others)}>
          Take all of it out
        </button>
        <button type="button" className="button" onClick={() => setOthers(undefined)}>
          Keep it
        </button>
      </div>
    </fieldset>
  )
}

/** Changes the job and goes on in a field that comes with the change. */
export function useEditAndGo(): (change: (project: Project) => Project | undefined, path: string) => void {
  const { job } = useWork()
  return (change, path) => {
    flushSync(() => void job.edit(change))
    focusPath(path)
  }
}
