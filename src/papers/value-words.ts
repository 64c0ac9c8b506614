import { choicesAt } from '../project/choice-words.ts'
import { placeWords } from '../project/place-words.ts'
import type { ListName, Project } from '../project/schema/project.ts'

type Fields = Readonly<Record<string, unknown>>

export const isRecord = (v: unknown): v is Fields => v !== null && typeof v === 'object' && !Array.isArray(v)

/** Whether a value of a project is read as one thing: a size in any of its forms, a height, a text, a choice. */
export function isOne(value: unknown): boolean {
  if (!isRecord(value)) return !Array.isArray(value) || value.every((v) => !isRecord(v))
  return (
    'value' in value || ('min' in value && 'max' in value) || 'readings' in value || ('of' in value && !('id' in value))
  )
}

/** A value of a project as a person reads it: `29.3 ±0.1`, "3 readings: 31.02, 30.98, 31"; a choice as its field says it. */
export function valueWords(project: Project, value: unknown, path = ''): string {
  if (value === undefined || value === null) return choicesAt(path)?.usual ?? 'not typed'
  if (typeof value === 'number') return numberWords(value)
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (typeof value === 'string') return choicesAt(path)?.words[value] ?? named(project, value, path)
  if (Array.isArray(value)) return listWords(project, value)
  if (!isRecord(value)) return ''
  if ('readings' in value) return readingsWords(project, value['readings'])
  if ('min' in value) return `${valueWords(project, value['min'])} to ${valueWords(project, value['max'])}`
  if ('of' in value) return placedWords(project, value)
  return 'value' in value ? `${valueWords(project, value['value'])}${spreadWords(value)}` : ''
}

/** At most thousandths, a true minus sign. */
const numberWords = (n: number): string => String(Number(n.toFixed(3))).replace('-', '−')

function listWords(project: Project, list: readonly unknown[]): string {
  if (list.length === 0) return 'none'
  return list.length > 4 ? `${list.length} values` : list.map((v) => valueWords(project, v)).join(', ')
}

/** Fields that name a record by its id alone, by their list: where those records are. */
const ids: Readonly<Record<string, ListName>> = {
  'wires/sled': 'sleds',
  'sections/hilt': 'hilts',
  'joints/rear': 'sections',
  'joints/blade': 'sections',
}

/** A reference by the name of what it means; any other text as it stands. */
function named(project: Project, text: string, path: string): string {
  const [list, , field] = path.split('/')
  const of = ids[`${list}/${field}`]
  if (of) return placeWords(project, `${of}/${text}`)
  return /^[a-z]+(\/[\w-]+)+$/.test(text) && (text.split('/')[0] ?? '') in project ? placeWords(project, text) : text
}

function readingsWords(project: Project, readings: unknown): string {
  if (!Array.isArray(readings)) return ''
  const values = readings.map((r) => valueWords(project, isRecord(r) ? r['value'] : r))
  const count = `${values.length} ${values.length === 1 ? 'reading' : 'readings'}`
  return values.length > 4 ? count : `${count}: ${values.join(', ')}`
}

function spreadWords({ plus, minus }: Fields): string {
  const [up, down] = [plus ?? minus, minus ?? plus]
  if (typeof up !== 'number' || typeof down !== 'number') return ''
  return up === down ? ` ±${numberWords(up)}` : ` +${numberWords(up)} −${numberWords(down)}`
}

/** "2 past the blade end of the body". */
function placedWords(project: Project, { of, end, by }: Fields): string {
  const from = `${typeof end === 'string' ? `${end} end` : 'rear end'} of ${valueWords(project, of)}`
  if (by === undefined || by === 0) return `at the ${from}`
  return `${valueWords(project, by)} from the ${from}`
}
