import { parseAngle, parseLength } from '../../entry/entry.ts'
import { type Problem, problem } from '../../problem/problem.ts'
import { isFromReadings } from '../../project/forms.ts'
import type { QuantityInput, ReadingInput } from '../../project/schema/quantity.ts'
import { assumed, fromReadings, isAssumed, readingsOf, toolOf } from '../../project/typed-size.ts'

/** One line of the sheet, as typed. */
export interface DraftRow {
  readonly z: string
  readonly theta: string
  readonly value: string
}

/** The sheet as it stands on the screen: texts that are no numbers yet are kept until they are. */
export interface Draft {
  readonly rows: readonly DraftRow[]
  /** Id of a tool; the usual one of the dimension where empty. */
  readonly tool: string
  /** Width of the flats of inside jaws. */
  readonly flat: string
  readonly assumed: boolean
}

export const emptyRow: DraftRow = { z: '', theta: '', value: '' }

/** The sheet of a dimension; always with one line at least. */
export function draftOf(input: QuantityInput | undefined): Draft {
  const rows = readingsOf(input).map((r) => ({ z: text(r.z), theta: text(r.theta), value: String(r.value) }))
  const flat = typeof input === 'object' && isFromReadings(input) ? text(input.jawFlat) : ''
  return { rows: rows.length > 0 ? rows : [emptyRow], tool: toolOf(input) ?? '', flat, assumed: isAssumed(input) }
}

/** What the sheet says of the dimension. Lines without a reading say nothing. */
export function inputOf(draft: Draft): QuantityInput {
  const filled = draft.rows.filter((r) => r.value.trim() !== '')
  if (draft.assumed) return filled[0] ? assumed(filled[0].value) : ''
  const readings = filled.map((r): ReadingInput => {
    const [z, theta] = [parseLength(r.z), parseAngle(r.theta)]
    return {
      value: r.value,
      ...(z.ok ? { z: z.value.value } : {}),
      ...(theta.ok ? { theta: theta.value.value } : {}),
    }
  })
  const flat = parseLength(draft.flat)
  return fromReadings(
    readings,
    draft.tool || undefined,
    flat.ok && flat.value.value >= 0 ? flat.value.value : undefined,
  )
}

/** What is wrong with a cell by itself. */
export function faultOf(row: DraftRow, cell: keyof DraftRow, alone: boolean, path: string): Problem | undefined {
  const typed = row[cell]
  if (typed.trim() === '') return undefined
  const read = cell === 'theta' ? parseAngle(typed, path) : parseLength(typed, path)
  if (!read.ok) return read.problems[0]
  const spread = read.value.plus !== undefined || read.value.minus !== undefined
  if (!spread || (cell === 'value' && alone)) return undefined
  const hint = 'The spread of readings follows from them and the tool: type the reading alone.'
  return problem('contradiction', path, typed, 'one number', hint)
}

/** The sheet with more lines at a place: an empty line there makes room. */
export function withRows(draft: Draft, at: number, more: readonly DraftRow[]): Draft {
  const there = draft.rows[at]
  const blank = there !== undefined && [there.z, there.theta, there.value].every((t) => t.trim() === '')
  return { ...draft, rows: [...draft.rows.slice(0, blank ? at : at + 1), ...more, ...draft.rows.slice(at + 1)] }
}

/** Whether the sheet and the project say the same. */
export const sameInput = (a: QuantityInput | undefined, b: QuantityInput | undefined): boolean =>
  JSON.stringify(a ?? '') === JSON.stringify(b ?? '')

const text = (n: number | undefined): string => (n === undefined ? '' : String(n))
