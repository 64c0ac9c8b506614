import { listNames } from './format.ts'
import type { Project } from './schema/project.ts'

type Fields = Readonly<Record<string, unknown>>

/** Fields that name a record by its bare id, and the list it is in. */
const bare: Readonly<Record<string, string>> = {
  'joints/rear': 'sections',
  'joints/blade': 'sections',
  'sections/hilt': 'hilts',
  'sleds/hilt': 'hilts',
  'wires/sled': 'sleds',
}

/**
 * The records that name a record, as paths in the order of the project: `joints/pommel-body`, `features/pin`,
 * `sleds/main/windows/switch`. Whoever takes it away leaves them pointing at nothing. `ref` is a list and an id
 * (`sections/body`), or a bore step (`sections/body/neck`). Names inside the record itself do not count.
 */
export function referrersOf(project: Project, ref: string): string[] {
  const [inList, id] = ref.split('/')
  const named = (value: string, list: string, field: string): boolean =>
    value === ref ||
    value.startsWith(`${ref}/`) ||
    (bare[`${list}/${field}`] === inList && value === id && ref.split('/').length === 2)
  const found: string[] = []
  for (const list of listNames)
    for (const record of project[list] as readonly Fields[]) {
      const path = `${list}/${String(record['id'])}`
      if (path === `${inList}/${id}`) continue
      for (const at of within(record, path, (value, field) => named(value, list, field))) found.push(at)
    }
  return [...new Set(found)]
}

/** The nearest record around each text that is meant: a window of a sled before the sled, a nest by its part. */
function within(at: Fields, path: string, meant: (value: string, field: string) => boolean): string[] {
  return Object.entries(at).flatMap(([field, value]): string[] => {
    if (typeof value === 'string') return field !== 'id' && field !== 'text' && meant(value, field) ? [path] : []
    if (Array.isArray(value))
      return value.flatMap((item: unknown, i): string[] => {
        if (typeof item === 'string') return meant(item, field) ? [`${path}/${field}/${i}`] : []
        if (!isRecord(item)) return []
        const key = item['part'] ?? item['id']
        const inner = typeof key === 'string' && field !== 'outline' ? `${path}/${field}/${key}` : path
        return within(item, inner, meant)
      })
    return isRecord(value) ? within(value, path, meant) : []
  })
}

const isRecord = (v: unknown): v is Fields => v !== null && typeof v === 'object' && !Array.isArray(v)
