import { type Ref, useId, useImperativeHandle, useRef, useState } from 'react'
import { parseReadings, readingsText } from '../../entry/reading-table.ts'
import type { Problem } from '../../problem/problem.ts'
import { readingsOf } from '../../project/typed-size.ts'
import { saveFile } from '../sheet/save-file.ts'
import { type Draft, type DraftRow, inputOf } from './draft.ts'
import { rowOf } from './reading-rows.tsx'

export interface ReadingToolsProps {
  /** What is measured: the file is named after it. */
  readonly name: string
  readonly draft: Draft
  readonly onRows: (rows: readonly DraftRow[]) => void
  /** Set here: takes what stands in the box and says whether nothing is left in it. */
  readonly ref: Ref<() => boolean>
}

interface Told {
  readonly taken: number
  /** What stood alone in the sheet before. */
  readonly before: string | undefined
  readonly problems: readonly Problem[]
}

/** Many readings at once: pasted, from a file, to a file. */
export function ReadingTools({ name, draft, onRows, ref }: ReadingToolsProps) {
  const [text, setText] = useState('')
  const [told, setTold] = useState<Told>()
  const field = useId()
  const file = useRef<HTMLInputElement>(null)
  const take = (from: string) => {
    const { rows, problems } = parseReadings(from)
    const [first, ...others] = readingsOf(inputOf(draft))
    const before = first && others.length === 0 && rows.length > 0 ? String(first.value) : undefined
    if (rows.length > 0) onRows(rows.map(rowOf))
    setTold({ taken: rows.length, before, problems })
    return problems
  }
  /** What was not understood stays in the box, to be corrected there. */
  const takeBox = (from: string): boolean => {
    const lines = from.split(/\r\n|\r|\n/)
    const refused = take(from).flatMap((p) => {
      const at = Number(p.path.replace('line/', '')) - 1
      return lines.slice(at, p.code === 'too-large' ? undefined : at + 1)
    })
    setText(refused.join('\n'))
    return refused.length === 0
  }
  useImperativeHandle(ref, () => () => text.trim() === '' || takeBox(text))
  const save = () => {
    const rows = readingsOf(inputOf(draft)).map((r) => ({ z: r.z, theta: r.theta, value: String(r.value) }))
    saveFile(`${name.replaceAll(/[^\p{L}\p{N}]+/gu, '-')}.csv`, new TextEncoder().encode(readingsText(rows)))
  }
  return (
    <details className="readings-tools">
      <summary>Many at once: paste, open or save a table</summary>
      <label className="field-label" htmlFor={field}>
        A column of readings, or three: depth from the rear of the hilt, angle, diameter
      </label>
      <textarea
        id={field}
        className="field-input number"
        rows={4}
        value={text}
        placeholder={'20; 0; 30,02\n20; 60; 29,98\n20; 120; 30,01'}
        spellCheck={false}
        onChange={(event) => setText(event.target.value)}
      />
      <div className="save-buttons">
        <button type="button" className="button" disabled={text.trim() === ''} onClick={() => takeBox(text)}>
          Add these
        </button>
        <button type="button" className="button" onClick={() => file.current?.click()}>
          Open a CSV file
        </button>
        <button type="button" className="button" onClick={save} disabled={inputOf(draft) === ''}>
          Save as CSV
        </button>
        <input
          ref={file}
          type="file"
          hidden
          accept=".csv,.tsv,.txt,text/csv,text/plain"
          aria-label="CSV file of readings"
          onChange={(event) => {
            const [chosen] = event.target.files ?? []
            event.target.value = ''
            void chosen?.text().then(take)
          }}
        />
      </div>
      <div className="small" aria-live="polite">
        {told && (
          <>
            <p>
              {told.taken === 1 ? '1 reading added.' : `${told.taken} readings added.`}
              {told.before !== undefined && ` The ${told.before} typed before counts with them; × takes it out.`}
            </p>
            <ul>
              {told.problems.map((p) => (
                <li key={p.path} className="field-fault">
                  Line {p.path.replace('line/', '')} is left out: {p.got}. {p.hint}
                </li>
              ))}
            </ul>
          </>
        )}
      </div>
    </details>
  )
}
