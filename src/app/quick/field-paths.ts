import { partChoices } from '../../presets/choices.ts'
import { own, type QuickForm, type RoundPart } from './quick-form.ts'

/** The fields of the form, named like their elements' ids. */
export type FieldName =
  | 'bore'
  | 'depth'
  | 'thread'
  | 'threadLength'
  | 'cell'
  | 'cell.diameter'
  | 'cell.length'
  | 'speaker'
  | 'speaker.diameter'
  | 'speaker.length'
  | 'board'
  | 'board.width'
  | 'board.height'
  | 'board.length'
  | 'wires'
  | 'sledDiameter'

/** Beginnings of paths in the project that the quick check makes, the longer ones first. */
const fields: readonly (readonly [string, FieldName])[] = [
  ['sections/tube/bore/mouth/length', 'threadLength'],
  ['sections/tube/bore/mouth', 'thread'],
  ['sections/tube/bore/bore', 'bore'],
  ['sections/tube/bore', 'threadLength'],
  ['sections/tube', 'depth'],
  ['parts/cell/body/diameter', 'cell.diameter'],
  ['parts/cell/body/length', 'cell.length'],
  ['parts/cell', 'cell'],
  ['parts/speaker/body/diameter', 'speaker.diameter'],
  ['parts/speaker/body/length', 'speaker.length'],
  ['parts/speaker', 'speaker'],
  ['parts/board/body/width', 'board.width'],
  ['parts/board/body/height', 'board.height'],
  ['parts/board/body/length', 'board.length'],
  ['parts/board', 'board'],
  ['wires', 'wires'],
  ['sleds/sled/diameter', 'sledDiameter'],
]

/** The field that a path of the project comes from; undefined for what the form does not ask. */
export const fieldOf = (path: string): FieldName | undefined =>
  fields.find(([start]) => path === start || path.startsWith(`${start}/`))?.[1]

/** What the fields are called in a sentence. */
export const fieldLabels: Readonly<Record<FieldName, string>> = {
  bore: 'bore',
  depth: 'depth',
  thread: 'thread at the mouth',
  threadLength: 'length of the thread',
  cell: 'cell',
  'cell.diameter': 'diameter of the cell',
  'cell.length': 'length of the cell',
  speaker: 'speaker',
  'speaker.diameter': 'diameter of the speaker',
  'speaker.length': 'depth of the speaker',
  board: 'board',
  'board.width': 'width of the board',
  'board.height': 'height of the board',
  'board.length': 'length of the board',
  wires: 'wires',
  sledDiameter: 'diameter of the sled',
}

/** The form with a number, or a part from the list, that a finding offers; undefined where the form has no field for it. */
export function withFix(form: QuickForm, path: string, value: number | string): QuickForm | undefined {
  const [name, size] = (fieldOf(path) ?? '').split('.')
  if (name === 'sledDiameter') return { ...form, sledDiameter: String(value) }
  if (typeof value === 'string')
    return name === 'cell' || name === 'speaker' ? { ...form, [name]: { ...form[name], choice: value } } : undefined
  if ((name === 'cell' || name === 'speaker') && size !== undefined)
    return { ...form, [name]: { ...ownSizes(form, name), [size]: String(value) } }
  return undefined
}

/** A round part by its own sizes; what was a preset's is written out as one would type it. */
export function ownSizes(form: QuickForm, name: 'cell' | 'speaker'): RoundPart {
  const part = form[name]
  const preset = partChoices[name].find((c) => c.id === part.choice)
  return { choice: own, diameter: part.diameter, length: part.length, ...preset?.typed }
}
