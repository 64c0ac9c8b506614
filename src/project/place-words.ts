import { fieldWords, spaced } from './field-words.ts'
import type { ListName, Project } from './schema/project.ts'

/** The lists of a project that paths go through. */
export type Named = Pick<Project, ListName>

type Fields = Readonly<Record<string, unknown>>

/** What a path has come to: the thing it names, in which thing that is, and what is left of the path. */
interface Found {
  readonly thing: string
  readonly inside: string | undefined
  readonly rest: readonly string[]
}

/**
 * A path of the project in the project's own names: `sections/body/bore/neck/diameter` is "diameter of the neck, body".
 * Paths of findings, problems and fixes all read so. What the project does not know keeps its path's words.
 */
export function placeWords(project: Named, path: string): string {
  const [list = '', id, ...rest] = path.split('/')
  if (list === 'printer' && (id === 'error' || rest[0] === 'error')) return 'print error'
  if (list === 'thresholds' && id !== undefined) return `setting "${id}"`
  if (id === undefined) return spaced(list)
  const record = (project[list as keyof Named] as readonly Fields[] | undefined)?.find((r) => r['id'] === id)
  if (!record) return listWords[list] === undefined && rest.length === 0 ? spaced(path) : plain(list, id, rest)
  const found = inner(project, list, record, rest)
  const field = fieldWords(list, found.rest)
  const whole = found.inside === undefined || found.thing.includes(found.inside)
  const place = whole ? found.thing : `${found.thing}, ${found.inside}`
  return field === undefined ? place : `${field} ${field.endsWith(' on') ? '' : 'of '}${the(place)}`
}

/** Names that say what a thing is; one that is a sentence of its own takes no article. */
const the = (name: string): string => (/^(the|a|an|every|all|what) /i.test(name) ? name : `the ${name}`)

/** Lists in which a record is said to be one of many. */
const listWords: Readonly<Record<string, string>> = {
  sections: 'section',
  joints: 'joint',
  features: 'feature',
  sleeves: 'sleeve',
  screws: 'screw',
  parts: 'part',
  sleds: 'sled',
  insertions: 'move',
  states: 'state',
  wires: 'wires',
  hilts: 'hilt',
  bulkheads: 'bulkhead',
  discs: 'disc',
  rods: 'rod',
  keys: 'key',
  towers: 'tower',
  splits: 'split',
  marks: 'mark',
  rings: 'ring',
  channels: 'channel',
  windows: 'window',
  seats: 'seat',
  bodies: 'piece',
}

function inner(project: Named, list: string, record: Fields, rest: readonly string[]): Found {
  const name = nameOf(project, list, record)
  if (list === 'sections') return ofSection(record, name, rest)
  if (list === 'parts' && rest[1] === 'components' && rest[2] !== undefined)
    return { thing: component(record, name, rest[2]), inside: name, rest: rest.slice(3) }
  if (list === 'parts' && rest[0] === 'preset' && rest.length === 1) return { thing: name, inside: undefined, rest: [] }
  if (list === 'sleds') return ofSled(project, record, name, rest)
  return { thing: name, inside: undefined, rest }
}

/** A step of the bore, written with its list or, as references do, without it; the two states of a clamp are one step. */
function ofSection(section: Fields, name: string, rest: readonly string[]): Found {
  const steps = (section['bore'] ?? []) as readonly Fields[]
  const key = rest[0] === 'bore' ? rest[1] : rest[0]
  const bare = key?.replace(/-(open|closed|\d+)$/, '')
  const step = steps.find((s, i) => s['id'] === key || String(i) === key) ?? steps.find((s) => s['id'] === bare)
  if (step && (rest[0] === 'bore' || rest.length === 1))
    return { thing: stepName(step, steps), inside: name, rest: rest.slice(rest[0] === 'bore' ? 2 : 1) }
  const pieces = (section['outside'] ?? []) as readonly Fields[]
  if (rest[0] === 'outside' && rest[1] !== undefined && pieces.length > 1)
    return { thing: `outside step ${Number(rest[1]) + 1}`, inside: name, rest: rest.slice(2) }
  return { thing: name, inside: undefined, rest }
}

function stepName(step: Fields, steps: readonly Fields[]): string {
  const own = step['name'] ?? step['id']
  if (typeof own === 'string' && own !== '') return own.replaceAll('-', ' ')
  return steps.length === 1 ? 'bore' : `bore step ${steps.indexOf(step) + 1}`
}

function component(part: Fields, name: string, at: string): string {
  const own = (part['body'] as { components?: readonly Fields[] } | undefined)?.components?.[Number(at)]?.['name']
  if (typeof own === 'string' && own !== '') return own
  // The components of a preset have no names in the project.
  return part['body'] === undefined ? `what stands on ${the(name)}` : `component ${Number(at) + 1}`
}

function ofSled(project: Named, sled: Fields, name: string, rest: readonly string[]): Found {
  const [list = '', key] = rest
  if (list === 'nests' && rest[1] === 'parts' && rest[2] !== undefined) {
    const part = project.parts.find((p) => p.id === rest[2])
    const thing = `nest of ${the(part ? nameOf(project, 'parts', part) : rest[2])}`
    return { thing, inside: project.sleds.length > 1 ? name : undefined, rest: rest.slice(3) }
  }
  const word = listWords[list]
  if (word === undefined || key === undefined) return { thing: name, inside: undefined, rest }
  const records = (sled[list] ?? []) as readonly Fields[]
  const record = records.find((r, i) => r['id'] === key || String(i) === key)
  const aim = record?.['for']
  const thing =
    typeof aim === 'string'
      ? `${word} for ${the(placeWords(project, aim))}`
      : `${word} ${/^\d+$/.test(key) ? Number(key) + 1 : key.replaceAll('-', ' ')}`
  return { thing: thing.replace(/^(\w+) \1$/, '$1'), inside: name, rest: rest.slice(2) }
}

/** The record's own name; a joint is named by what it joins. */
function nameOf(project: Named, list: string, record: Fields): string {
  const own = record['name']
  if (typeof own === 'string' && own.trim() !== '') return own
  if (list === 'joints') {
    const [rear, blade] = [record['rear'], record['blade']].map((end) => placeWords(project, `sections/${String(end)}`))
    return `joint of ${rear} and ${blade}`
  }
  return String(record['id']).replaceAll('-', ' ')
}

/** What nobody wrote down: the words of its path. */
function plain(list: string, id: string, rest: readonly string[]): string {
  const thing = [listWords[list], id.replaceAll('-', ' ')].filter(Boolean).join(' ')
  const field = fieldWords(list, rest)
  return field === undefined ? thing : `${field} of the ${thing}`
}
