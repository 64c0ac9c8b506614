import boards from '../../presets/boards.json' with { type: 'json' }
import cells from '../../presets/cells.json' with { type: 'json' }
import speakers from '../../presets/speakers.json' with { type: 'json' }
import { howKnown } from './known.ts'
import type { Interval } from './schema/interval.ts'
import type { Preset, PresetOf } from './schema/kinds.ts'
import { bodyText } from './text.ts'

/** A preset as a person chooses it from a list. */
export interface PartChoice {
  readonly id: string
  readonly name: string
  /** Its sizes in one line. */
  readonly sizes: string
  /** How they are known: read, from memory … */
  readonly known: string
  readonly source: string
  /** A round part's sizes as one would type them: `18.2..18.6`. */
  readonly typed: { readonly diameter: string; readonly length: string } | undefined
}

/**
 * The parts that the quick check offers. A few files only, so that the page can show its lists before the worker with
 * all the presets is there.
 */
export const partChoices = {
  cell: cells.entries.map((e) => choice(e as PresetOf<'cell'>)),
  speaker: speakers.entries.map((e) => choice(e as PresetOf<'speaker'>)),
  board: boards.entries.map((e) => choice(e as unknown as PresetOf<'board'>)),
} as const

function choice(entry: Extract<Preset, { kind: 'cell' | 'speaker' | 'board' }>): PartChoice {
  const { body } = entry
  return {
    id: entry.id,
    name: entry.name,
    sizes: bodyText(body),
    known: howKnown(entry, body.shape === 'outline' ? 'body.outline' : 'body.diameter') ?? 'not said',
    source: entry.source,
    typed:
      body.shape === 'cylinder' ? { diameter: typedText(body.diameter), length: typedText(body.length) } : undefined,
  }
}

function typedText(i: Interval): string {
  return 'min' in i ? `${i.min}..${i.max}` : `${i.value} +${i.plus} -${i.minus}`
}
