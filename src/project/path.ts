import type { Project } from './schema/project.ts'

/**
 * Paths as findings, problems and dimensions name them: `parts/cell/body/diameter`, `sections/body/bore/neck/length`,
 * `sleds/main/nests/parts/cell/gap`, `thresholds/clearance/value`. A record of a list is named by its id, a nest by
 * the part it holds, anything else by its place in the list.
 */

type Fields = Readonly<Record<string, unknown>>
interface Keyed extends Fields {
  readonly id?: string
  readonly part?: string
}

const isRecord = (v: unknown): v is Fields => v !== null && typeof v === 'object' && !Array.isArray(v)

/** Lists whose records need not be there: each default is a record nobody has written yet. */
const made: Readonly<Record<string, (key: string) => Keyed>> = {
  nests: (part) => ({ part }),
  thresholds: (id) => ({ id }),
}

/** The value at a path; undefined where there is none. */
export function valueAt(project: Project, path: string): unknown {
  let at: unknown = project
  let names = path.split('/')
  let list = ''
  while (names.length > 0) {
    if (Array.isArray(at)) {
      const { key, rest } = keyOf(list, names)
      at = at[placeOf(at, key)]
      names = rest
    } else {
      const [name = '', ...rest] = names
      at = isRecord(at) ? at[name] : undefined
      list = name
      names = rest
    }
  }
  return at
}

/**
 * The project with a value at a path; undefined for the value takes a field away, and a record out of its list. What
 * lacks on the way is made. Undefined where the path names a record that there is not.
 */
export function withValue(project: Project, path: string, value: unknown): Project | undefined {
  return put(project, path.split('/'), value, '') as Project | undefined
}

/** The project with one more record in the list at a path, which is made where it lacks. */
export function withRecord(project: Project, path: string, record: Fields): Project | undefined {
  const list = valueAt(project, path)
  return list === undefined || Array.isArray(list) ? withValue(project, path, [...(list ?? []), record]) : undefined
}

/** An id like the wanted one that no record of a list has. */
export function freshId(list: readonly { readonly id?: string | undefined }[], wanted: string): string {
  const base =
    wanted
      .toLowerCase()
      .replaceAll(/[^a-z0-9]+/g, '-')
      .replaceAll(/^-+|-+$/g, '')
      .slice(0, 50) || 'new'
  const taken = new Set(list.map((r) => r.id))
  for (let n = 1; ; n++) {
    const id = n === 1 ? base : `${base}-${n}`
    if (!taken.has(id)) return id
  }
}

function put(at: unknown, names: readonly string[], value: unknown, list: string): unknown {
  if (names.length === 0) return value
  if (Array.isArray(at) || (at === undefined && list in made)) {
    const records: readonly unknown[] = Array.isArray(at) ? at : []
    const { key, rest } = keyOf(list, names)
    const i = placeOf(records, key)
    const record = records[i] ?? made[list]?.(key)
    if (record === undefined) return undefined
    const next = put(record, rest, value, '')
    if (next === undefined) return rest.length === 0 ? records.filter((_, n) => n !== i) : undefined
    return i < 0 ? [...records, next] : records.map((r, n) => (n === i ? next : r))
  }
  const [name = '', ...rest] = names
  const fields = isRecord(at) ? at : {}
  const next = put(fields[name], rest, value, name)
  if (next === undefined && rest.length > 0) return undefined
  const { [name]: _, ...others } = fields
  return next === undefined ? others : { ...fields, [name]: next }
}

/** A nest's name takes two steps of the path: the part it holds. */
function keyOf(list: string, names: readonly string[]): { readonly key: string; readonly rest: string[] } {
  const n = list === 'nests' && names[0] === 'parts' ? 2 : 1
  return { key: names.slice(0, n).join('/'), rest: names.slice(n) }
}

function placeOf(list: readonly unknown[], key: string): number {
  const named = list.findIndex((r) => isRecord(r) && ((r as Keyed).part === key || (r as Keyed).id === key))
  if (named >= 0) return named
  const place = /^\d+$/.test(key) ? Number(key) : -1
  const there = list[place]
  return isRecord(there) && (there as Keyed).id !== undefined ? -1 : place < list.length ? place : -1
}
