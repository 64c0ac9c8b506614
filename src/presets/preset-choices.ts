import type { BodyInput, PartInput } from '../project/schema/part.ts'
import type { QuantityInput } from '../project/schema/quantity.ts'
import { howKnown } from './known.ts'
import type { Presets } from './presets.ts'
import type { Interval } from './schema/interval.ts'
import type { Preset } from './schema/kinds.ts'
import { bodyText, figuresText } from './text.ts'

/** A preset as a person chooses it from a list. */
export interface PresetChoice {
  readonly id: string
  readonly name: string
  /** Its figures in one line. */
  readonly sizes: string
  /** How they are known: read, from memory … */
  readonly known: string
  readonly source: string
  readonly note: string | undefined
}

/** A part, with what a project takes over when its sizes are typed by hand. */
export interface PartPreset extends PresetChoice {
  readonly body: BodyInput
  readonly swapped: boolean
  readonly tags: QuantityInput | undefined
  readonly wireBend: QuantityInput | undefined
  readonly solid: QuantityInput | undefined
  readonly free: QuantityInput | undefined
}

/** A measuring tool: what it measures, and whether its jaws have flats. */
export interface ToolChoice extends PresetChoice {
  readonly measures: readonly ('outside' | 'thickness' | 'bore' | 'depth' | 'length')[]
  readonly jaws: boolean
}

/** A way to print, and what kind of material it prints. */
export interface ProcessChoice extends PresetChoice {
  readonly family: 'filament' | 'resin' | 'powder'
}

/** A material, and which kind of process prints it; metal is not printed. */
export interface MaterialChoice extends PresetChoice {
  readonly use: 'filament' | 'resin' | 'powder' | 'metal'
}

/** Everything the work page offers from presets. */
export interface PresetChoices {
  readonly parts: Readonly<Record<Exclude<PartInput['kind'], 'other'>, readonly PartPreset[]>>
  readonly wires: readonly PresetChoice[]
  readonly tools: readonly ToolChoice[]
  readonly processes: readonly ProcessChoice[]
  readonly materials: readonly MaterialChoice[]
}

/** The lists of the work page, as plain data that a worker can send. */
export function presetChoices(presets: Presets): PresetChoices {
  const parts = <K extends 'cell' | 'contact' | 'speaker' | 'board' | 'switch' | 'port' | 'connector'>(kind: K) =>
    presets.ofKind(kind).map((entry) => partPreset(entry as PartEntry))
  return {
    parts: {
      cell: parts('cell'),
      contact: parts('contact'),
      speaker: parts('speaker'),
      board: parts('board'),
      switch: parts('switch'),
      port: parts('port'),
      connector: parts('connector'),
    },
    wires: presets.ofKind('wire').map((w) => choice(w, figuresText(w), 'outside')),
    tools: presets
      .ofKind('tool')
      .map((t) => ({ ...choice(t, figuresText(t), 'mpe'), measures: t.measures, jaws: t.jaws })),
    processes: presets.ofKind('process').map((p) => ({ ...choice(p, figuresText(p), 'error'), family: p.family })),
    materials: presets
      .ofKind('material')
      .map((m) => ({ ...choice(m, figuresText(m), m.density ? 'density' : 'expansion'), use: m.use })),
  }
}

type PartEntry = Extract<Preset, { kind: 'cell' | 'contact' | 'speaker' | 'board' | 'switch' | 'port' | 'connector' }>

function partPreset(entry: PartEntry): PartPreset {
  const { body } = entry
  const known = body.shape === 'outline' ? 'body.outline' : body.shape === 'box' ? 'body.width' : 'body.diameter'
  const field = (name: string) => (entry as unknown as Record<string, QuantityInput | Interval | undefined>)[name]
  return {
    ...choice(entry, bodyText(body), known),
    body: body as BodyInput,
    swapped: 'swapped' in entry,
    tags: field('tags'),
    wireBend: field('wireBend'),
    solid: field('solid'),
    free: field('free'),
  }
}

const choice = (entry: Preset, sizes: string, field: string): PresetChoice => ({
  id: entry.id,
  name: entry.name,
  sizes,
  known: howKnown(entry, field) ?? 'not said',
  source: entry.source,
  note: entry.note,
})
