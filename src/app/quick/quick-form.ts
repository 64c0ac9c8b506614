/** What stands in the form of the quick check: texts exactly as typed, and choices. */
export interface QuickForm {
  readonly bore: string
  readonly depth: string
  readonly thread: string
  readonly threadLength: string
  readonly cell: RoundPart
  readonly speaker: RoundPart
  readonly board: FlatPart
  readonly wires: number
  readonly sledDiameter: string
}

/** "" for nothing chosen, "own" for own sizes, else a preset's id. */
export type Choice = string

export interface RoundPart {
  readonly choice: Choice
  readonly diameter: string
  readonly length: string
}

export interface FlatPart {
  readonly choice: Choice
  readonly width: string
  readonly height: string
  readonly length: string
}

export const own = 'own'

export const emptyForm: QuickForm = {
  bore: '',
  depth: '',
  thread: '',
  threadLength: '',
  cell: { choice: '', diameter: '', length: '' },
  speaker: { choice: '', diameter: '', length: '' },
  board: { choice: '', width: '', height: '', length: '' },
  wires: 4,
  sledDiameter: '',
}

/** Invented numbers of a river ferry's lantern, for whoever wants to see the page at work first. */
export const exampleForm: QuickForm = {
  bore: '33.2',
  depth: '148',
  thread: 'M35x1.5',
  threadLength: '9',
  cell: { choice: 'cell-18650-flat', diameter: '', length: '' },
  speaker: { choice: own, diameter: '28', length: '5.4' },
  board: { choice: own, width: '18', height: '5.8', length: '42' },
  wires: 4,
  sledDiameter: '',
}

export const isEmpty = (form: QuickForm): boolean => JSON.stringify(form) === JSON.stringify(emptyForm)
