import type { PartKind } from '../../../job/add-part.ts'
import type { ShapeForm } from '../../../job/part-forms.ts'
import type { AcrossForm } from '../../../job/place-forms.ts'
import { choices } from '../../../project/choice-words.ts'

/** What parts, shapes and places are called on the page. */
export const kindWords: Readonly<Record<PartKind, string>> = {
  cell: 'Cell',
  contact: 'Contact',
  board: 'Board',
  speaker: 'Speaker',
  switch: 'Switch',
  port: 'Port',
  connector: 'Connector',
  other: 'Other',
}

export const shapeWords: Readonly<Record<ShapeForm, string>> = {
  ...choices['parts/shape'],
  box: 'block: width × height × length',
  outline: 'board outline, and what stands on it',
}

export const acrossWords: Readonly<Record<AcrossForm, string>> = {
  axis: 'on the axis',
  xy: 'off the axis, by x and y',
  polar: 'off the axis, by r and θ',
  pushed: 'pushed to the wall',
  beside: 'beside another part',
}

export const endWords = { rear: 'rear end', middle: 'middle', blade: 'blade end' } as const
