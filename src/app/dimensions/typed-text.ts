import { parseAngle, parseLength } from '../../entry/entry.ts'
import type { Outcome } from '../../problem/problem.ts'

/** What a field keeps of a text: one number, or the text as typed where the place takes one. */
export type Keeps = 'number' | 'text'
export type Unit = 'mm' | '°' | 'N' | ''

/** How a value of the project reads in a field: a text as typed, a number, or a size with its spread. */
export function typedText(value: unknown): string {
  if (typeof value === 'string') return value
  if (typeof value === 'number') return String(value)
  if (value === null || typeof value !== 'object') return ''
  const v = value as Readonly<Record<string, unknown>>
  if (typeof v['text'] === 'string') return v['text']
  if (typeof v['min'] === 'number' && typeof v['max'] === 'number') return `${v['min']}..${v['max']}`
  if (typeof v['value'] !== 'number') return ''
  const [up, down] = [v['plus'] ?? v['minus'], v['minus'] ?? v['plus']]
  if (typeof up !== 'number' || typeof down !== 'number') return String(v['value'])
  return up === down ? `${v['value']} ±${up}` : `${v['value']} +${up} -${down}`
}

/** What a text is kept as: nothing where it is empty, which gives way to the default. */
export function keptValue(text: string, unit: Unit, keeps: Keeps): Outcome<number | string | undefined> {
  const t = text.trim()
  if (t === '') return { ok: true, value: undefined }
  const read = unit === '°' ? parseAngle(t) : parseLength(t)
  if (!read.ok) return read
  const spread = read.value.plus !== undefined || read.value.minus !== undefined
  if (keeps === 'text') return { ok: true, value: spread || !/^-?\d+(\.\d+)?$/.test(t) ? text : read.value.value }
  if (!spread) return { ok: true, value: read.value.value }
  return {
    ok: false,
    problems: [
      {
        code: 'not-a-number',
        path: '',
        got: text,
        limit: 'one number',
        hint: 'Type one number: it is drawn as it stands, and has no spread of its own.',
      },
    ],
  }
}
