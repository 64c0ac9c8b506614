import { parseLength } from '../entry/entry.ts'
import { isBetween, isFromReadings } from './forms.ts'
import { freshId, valueAt, withRecord, withValue } from './path.ts'
import type { Project } from './schema/project.ts'

type Fields = Readonly<Record<string, unknown>>

/** What a fix puts at its path: a number, a preset's id or a record sets it, a list takes the place of the one there, a record with an id is one more in the list there. */
export type FixValue = number | string | Fields | readonly Fields[]

/** A change that a finding offers, as far as applying it needs to know. */
export interface Applicable {
  readonly path: string
  readonly value?: FixValue | undefined
}

/**
 * The project with a fix applied; undefined where the fix is only advice, or names a record that there is not. A
 * number keeps the spread of the one it takes the place of. What is there already (metal, screws, parts) is not made
 * so by saying it: its new size stands as assumed until somebody measures it.
 */
export function applyFix(project: Project, { path, value }: Applicable): Project | undefined {
  if (value === undefined) return undefined
  const before = valueAt(project, path)
  if (typeof value === 'number') return withNumber(project, path, before, value)
  if (typeof value === 'string' || isList(value) || !('id' in value) || isRecord(before))
    return withValue(project, path, value)
  const list = isList(before) ? before : []
  return withRecord(project, path, { ...value, id: freshId(list, String(value.id)) })
}

const isList = (v: unknown): v is readonly Fields[] => Array.isArray(v)
const isRecord = (v: unknown): v is Fields => v !== null && typeof v === 'object' && !Array.isArray(v)

/** Of two ways to say one thing the newer one counts. */
const instead: Readonly<Record<string, string>> = { tip: 'reach', reach: 'tip' }

function withNumber(project: Project, path: string, before: unknown, value: number): Project | undefined {
  const at = path.lastIndexOf('/')
  const [record, field] = [path.slice(0, at), path.slice(at + 1)]
  const other = instead[field]
  const bare = other === undefined ? project : (withValue(project, `${record}/${other}`, undefined) ?? project)
  const assumed = isInHand(path) ? { source: 'assumed', from: 'taken from a fix; make it so and measure it' } : {}
  const kept = spreadOf(before, value)
  const next = kept || isInHand(path) ? { ...(kept ?? { value }), ...assumed } : value
  return withValue(bare, path, next)
}

/** Sizes of what is there already, in metal or in the bag of parts; all else is drawn by the program. */
function isInHand(path: string): boolean {
  const [list, , field] = path.split('/')
  return list === 'sections' || list === 'features' || list === 'screws' || (list === 'parts' && field === 'body')
}

/** The spread that the number before had, about the new one; undefined where it was a plain number or readings. */
function spreadOf(before: unknown, value: number): Fields | undefined {
  if (typeof before === 'string') {
    const read = parseLength(before)
    if (!read.ok || read.value.plus === undefined) return undefined
    return { value, plus: read.value.plus, minus: read.value.minus ?? 0 }
  }
  if (!isRecord(before) || isFromReadings(before)) return undefined
  const { text: _text, from: _from, source: _source, ...rest } = before
  if (isBetween(before)) {
    const by = value - (before.nominal ?? (before.min + before.max) / 2)
    return {
      ...rest,
      min: before.min + by,
      max: before.max + by,
      ...(before.nominal === undefined ? {} : { nominal: value }),
    }
  }
  return 'value' in before ? { ...rest, value } : undefined
}
