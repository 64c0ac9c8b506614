import { parseLength } from '../../entry/entry.ts'
import type { QuickInput } from '../../job/quick.ts'
import { parseThread } from '../../rules/thread-designation.ts'
import { type FlatPart, own, type QuickForm, type RoundPart } from './quick-form.ts'

/** What a form amounts to: an input to check, or what it still lacks, in the words of its labels. */
export type Reading = { readonly kind: 'ready'; readonly input: QuickInput } | Lacking

export interface Lacking {
  readonly kind: 'lacking'
  readonly lacks: readonly string[]
  /** Typed, and no size: its own field says why. */
  readonly unread: readonly string[]
}

/** The form as an input. */
export function readForm(form: QuickForm): Reading {
  const lacks: string[] = []
  const unread: string[] = []
  const needed = (text: string, label: string): string => {
    if (!parseLength(text).ok) (text.trim() === '' ? lacks : unread).push(label)
    return text
  }
  const optional = (text: string, label: string): string | undefined => {
    if (text.trim() === '') return undefined
    return needed(text, label)
  }
  const bore = needed(form.bore, 'bore')
  const depth = needed(form.depth, 'depth')
  const thread = form.thread.trim()
  if (thread !== '' && !parseThread(thread).ok) unread.push('thread at the mouth')
  const threadLength = thread === '' ? undefined : needed(form.threadLength, 'length of the thread')
  const cell = roundPart(form.cell, 'cell', needed)
  if (cell === undefined) lacks.push('cell')
  const speaker = roundPart(form.speaker, 'speaker', needed)
  const board = flatPart(form.board, needed)
  const sledDiameter = optional(form.sledDiameter, 'diameter of the sled')
  if (lacks.length + unread.length > 0 || cell === undefined) return { kind: 'lacking', lacks, unread }
  return {
    kind: 'ready',
    input: {
      bore,
      depth,
      ...(thread === '' ? {} : { thread }),
      ...(threadLength === undefined ? {} : { threadLength }),
      cell,
      ...(speaker === undefined ? {} : { speaker }),
      ...(board === undefined ? {} : { board }),
      wires: form.wires,
      ...(sledDiameter === undefined ? {} : { sledDiameter }),
    },
  }
}

type Needed = (text: string, label: string) => string

function roundPart(part: RoundPart, name: string, needed: Needed): QuickInput['speaker'] {
  if (part.choice !== own) return part.choice === '' ? undefined : part.choice
  return {
    diameter: needed(part.diameter, `diameter of the ${name}`),
    length: needed(part.length, `length of the ${name}`),
  }
}

function flatPart(part: FlatPart, needed: Needed): QuickInput['board'] {
  if (part.choice !== own) return part.choice === '' ? undefined : part.choice
  return {
    width: needed(part.width, 'width of the board'),
    height: needed(part.height, 'height of the board'),
    length: needed(part.length, 'length of the board'),
  }
}
