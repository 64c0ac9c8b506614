import type { ClipboardEvent, KeyboardEvent } from 'react'
import { parseReadings } from '../../entry/reading-table.ts'
import type { Problem } from '../../problem/problem.ts'
import { type Draft, type DraftRow, emptyRow, faultOf, withRows } from './draft.ts'

export interface ReadingRowsProps {
  readonly path: string
  readonly draft: Draft
  readonly onDraft: (draft: Draft) => void
  /** Something round has a clock angle and a depth to each reading. */
  readonly round: boolean
  readonly questions: readonly Problem[]
}

const cells = [
  { cell: 'z', head: 'Depth z', place: 'depth' },
  { cell: 'theta', head: 'Angle θ', place: 'angle' },
  { cell: 'value', head: 'Reading', place: 'reading' },
] as const

/** The readings, one a line. Enter goes on to the next line; what is pasted with several lines fills as many. */
export function ReadingRows({ path, draft, onDraft, round, questions }: ReadingRowsProps) {
  const shown = cells.filter(({ cell }) => cell === 'value' || (round && !draft.assumed))
  const idOf = (row: number, cell: keyof DraftRow) => `${path}/readings/${row}/${cell}`
  const put = (rows: readonly DraftRow[]) => onDraft({ ...draft, rows: rows.length > 0 ? rows : [emptyRow] })
  const go = (row: number, cell: keyof DraftRow) =>
    requestAnimationFrame(() => document.getElementById(idOf(row, cell))?.focus())
  const add = () => {
    onDraft({ ...draft, rows: [...draft.rows, emptyRow] })
    go(draft.rows.length, shown[0]?.cell ?? 'value')
  }
  const onKey = (event: KeyboardEvent, row: number, cell: keyof DraftRow) => {
    if (event.key !== 'Enter' || draft.assumed) return
    event.preventDefault()
    if (row + 1 < draft.rows.length) go(row + 1, cell)
    else add()
  }
  const onPaste = (event: ClipboardEvent, row: number) => {
    const text = event.clipboardData.getData('text')
    if (!/[\n\t;]/.test(text.trim())) return
    const { rows } = parseReadings(text)
    if (rows.length === 0) return
    event.preventDefault()
    onDraft(withRows(draft, row, rows.map(rowOf)))
  }
  return (
    <div>
      <table className="readings-table">
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">Number</span>
            </th>
            {shown.map(({ cell, head }) => (
              <th key={cell} scope="col">
                {head}
              </th>
            ))}
            <th scope="col">
              <span className="unseen">Take out</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {draft.rows.slice(0, draft.assumed ? 1 : undefined).map((row, i) => (
            // A reading has no name but its place
            <tr key={i}>
              <td className="number soft">{i + 1}</td>
              {shown.map(({ cell, place }) => (
                <Cell
                  key={cell}
                  id={idOf(i, cell)}
                  label={`${place} ${i + 1}`}
                  text={row[cell]}
                  fault={faultOf(row, cell, draft.rows.length === 1 && draft.tool === '', idOf(i, cell))}
                  question={cell === 'value' ? questions.find((q) => q.path === idOf(i, cell)) : undefined}
                  onText={(text) => put(draft.rows.map((r, n) => (n === i ? { ...r, [cell]: text } : r)))}
                  onKey={(event) => onKey(event, i, cell)}
                  onPaste={(event) => onPaste(event, i)}
                />
              ))}
              <td>
                <button
                  type="button"
                  className="button button-plain"
                  aria-label={`Take reading ${i + 1} out`}
                  onClick={() => {
                    put(draft.rows.filter((_, n) => n !== i))
                    go(Math.max(0, i - 1), 'value')
                  }}
                >
                  ×
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {!draft.assumed && (
        <button type="button" className="button" onClick={add}>
          Add a reading
        </button>
      )}
    </div>
  )
}

interface CellProps {
  readonly id: string
  readonly label: string
  readonly text: string
  readonly fault: Problem | undefined
  readonly question: Problem | undefined
  readonly onText: (text: string) => void
  readonly onKey: (event: KeyboardEvent) => void
  readonly onPaste: (event: ClipboardEvent) => void
}

function Cell({ id, label, text, fault, question, onText, onKey, onPaste }: CellProps) {
  const said = fault ?? question
  return (
    <td>
      <input
        id={id}
        className="field-input number"
        type="text"
        value={text}
        aria-label={label}
        aria-invalid={fault !== undefined}
        aria-describedby={said ? `${id}-note` : undefined}
        autoComplete="off"
        spellCheck={false}
        onChange={(event) => onText(event.target.value)}
        onKeyDown={onKey}
        onPaste={onPaste}
      />
      {said && (
        <div id={`${id}-note`} className={`small ${fault ? 'field-fault' : 'field-question'}`}>
          {said.hint}
        </div>
      )}
    </td>
  )
}

/** A pasted reading as a line of the sheet. */
export const rowOf = (r: { z: number | undefined; theta: number | undefined; value: string }): DraftRow => ({
  z: r.z === undefined ? '' : String(r.z),
  theta: r.theta === undefined ? '' : String(r.theta),
  value: r.value,
})
