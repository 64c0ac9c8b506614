import type { Presets } from '../presets/presets.ts'
import { good, type Outcome } from '../problem/problem.ts'
import type { BodyInput, PartInput } from '../project/schema/part.ts'
import type { Project } from '../project/schema/project.ts'
import type { QuantityInput } from '../project/schema/quantity.ts'
import { type Answer, answer } from './answer.ts'
import { roomier, type Spacing, usualSpacing } from './quick-spacing.ts'
import { usualLayout as usual } from './usual-layout.ts'

/** What the quick check asks for: one bore, and what shall go in. Sizes in any form a project takes. */
export interface QuickInput {
  readonly bore: QuantityInput
  readonly depth: QuantityInput
  /** Thread at the mouth, and how deep it goes. */
  readonly thread?: string
  readonly threadLength?: QuantityInput
  /** A preset's id, or diameter and length. */
  readonly cell: string | { readonly diameter: QuantityInput; readonly length: QuantityInput }
  readonly speaker?: string | { readonly diameter: QuantityInput; readonly length: QuantityInput }
  readonly board?:
    | string
    | { readonly width: QuantityInput; readonly height: QuantityInput; readonly length: QuantityInput }
  /** Wires along the sled; 4 of 26 AWG where left out. */
  readonly wires?: number
  /** What the narrowest bore on the way in allows where left out. */
  readonly sledDiameter?: QuantityInput
}

export interface QuickAnswer {
  readonly project: Project
  readonly layout: Layout
  readonly answer: Answer
}

/** Where the board sits: over the cell, or behind it along the axis. */
export type Layout = 'over the cell' | 'in line'

/**
 * The quick check: lays the parts out from the mouth (speaker, contact, cell, contact), the board over the cell where
 * that holds and in line where it does not, and judges it like any other project. Fails with what is wrong in the
 * numbers typed.
 */
export function quickCheck(input: QuickInput, presets: Presets): Outcome<QuickAnswer> {
  if (input.board === undefined) return laidOut(input, 'in line', presets)
  const over = laidOut(input, 'over the cell', presets)
  if (over.ok && over.value.answer.verdict === 'clear') return over
  const line = laidOut(input, 'in line', presets)
  if (!over.ok || !line.ok) return over.ok ? over : line
  return rank(line.value.answer) > rank(over.value.answer) ? line : over
}

const standing = (a: Answer): number => ['clash', 'unsure', 'clear'].indexOf(a.verdict)

/** Of two that clash, the one in fewer places says best what is wrong. */
function rank(a: Answer): number {
  const clashes = a.findings.filter((f) => f.status === 'clash').map((f) => f.margin.worst)
  return standing(a) * 1e6 - clashes.length * 1000 + Math.min(0, ...clashes)
}

/** So often a layout is given more room: one place mended may show the next. */
const rounds = 3

/** The best of the usual distances and of those with what lacks in them. */
function laidOut(input: QuickInput, layout: Layout, presets: Presets): Outcome<QuickAnswer> {
  let spacing: Spacing | undefined = usualSpacing
  let best: QuickAnswer | undefined
  for (let round = 0; round < rounds && spacing; round++) {
    const project = quickProject(input, layout, spacing)
    const judged = answer(project, presets)
    if (!judged.ok) return judged
    // Room that does not help is not given: what is told then is told of the usual layout.
    if (!best || standing(judged.value) > standing(best.answer)) best = { project, layout, answer: judged.value }
    if (judged.value.verdict === 'clear') break
    spacing = roomier(spacing, judged.value.findings, layout)
  }
  return good(best as QuickAnswer)
}

/** The quick check's numbers as a whole project, from which a full job can grow. */
export function quickProject(input: QuickInput, layout: Layout, spacing = usualSpacing): Project {
  const behindSpeaker = (by: number): Z =>
    input.speaker === undefined
      ? behindMouth(input, by)
      : { of: 'parts/speaker', end: 'blade', by: spacing.bulkhead + by }
  const parts: PartInput[] = [
    ...(input.speaker === undefined ? [] : [round('speaker', 'speaker', input.speaker, behindMouth(input, 0))]),
    round('cell', 'cell', input.cell, behindSpeaker(usual.rearContact)),
    contact('rear-contact', 'contact-coil', 'rear', behindSpeaker(0)),
    contact('blade-contact', 'contact-leaf', 'blade'),
    ...(input.board === undefined ? [] : [board(input.board, layout, spacing)]),
  ]
  const cell = parts.find((p) => p.id === 'cell') as PartInput
  if (spacing.isCellAside || (layout === 'over the cell' && input.board !== undefined))
    cell.at = { ...cell.at, across: { pushed: 180, gap: usual.cellToOutside } }
  return {
    ...noLists,
    format: 'sledwright',
    version: 1,
    job: [{ id: 'job', name: 'Quick check' }],
    hilts: [{ id: 'hilt', name: 'Hilt' }],
    sections: [
      {
        id: 'tube',
        name: 'tube',
        length: input.depth,
        bore: [
          ...(input.thread
            ? [
                {
                  id: 'mouth',
                  name: 'mouth thread',
                  kind: 'threaded' as const,
                  thread: input.thread,
                  length: input.threadLength ?? usual.threadLength,
                },
              ]
            : []),
          { id: 'bore', name: 'bore', diameter: input.bore },
        ],
      },
      {
        id: 'end',
        name: 'end of the bore',
        length: usual.closure,
        bore: [{ id: 'closed', name: 'end of the bore', kind: 'solid' }],
      },
    ],
    sleds: [
      { id: 'sled', name: 'sled', ...(input.sledDiameter === undefined ? {} : { diameter: input.sledDiameter }) },
    ],
    insertions: [{ id: 'in', name: 'sled in', moves: 'sleds/sled', through: { of: 'sections/tube', end: 'rear' } }],
    parts,
    wires:
      (input.wires ?? 4) > 0
        ? [{ id: 'wires', name: 'wires', preset: 'wire-26-silicone', count: input.wires ?? 4 }]
        : [],
  }
}

/** What the quick check does not ask for. */
const noLists = {
  blades: [],
  joints: [],
  features: [],
  sleeves: [],
  screws: [],
  layouts: [],
  states: [],
  vents: [],
  printer: [],
  permissions: [],
  wishes: [],
  thresholds: [],
  record: [],
}

type Z = NonNullable<NonNullable<PartInput['at']>['z']>

/** Where the first part begins: behind the thread of the mouth, which is for what screws into it. */
function behindMouth({ thread }: QuickInput, more: number): Z {
  const by = usual.mouth + usual.endWall + more
  return thread ? { of: 'sections/tube/mouth', end: 'blade', by } : by
}

function round(
  id: string,
  kind: PartInput['kind'],
  given: string | { diameter: QuantityInput; length: QuantityInput },
  z: Z,
): PartInput {
  const size = typeof given === 'string' ? { preset: given } : { body: { shape: 'cylinder', ...given } as BodyInput }
  return { id, name: id, kind, ...size, at: { z } }
}

function contact(id: string, preset: string, end: 'rear' | 'blade', z?: Z): PartInput {
  return {
    id,
    name: end === 'rear' ? 'rear contact' : 'front contact',
    kind: 'contact',
    preset,
    presses: { part: 'parts/cell', end },
    at: z === undefined ? {} : { z },
  }
}

function board(given: NonNullable<QuickInput['board']>, layout: Layout, spacing: Spacing): PartInput {
  const size = typeof given === 'string' ? { preset: given } : { body: { shape: 'box', ...given } as BodyInput }
  const at: PartInput['at'] =
    layout === 'over the cell'
      ? {
          z: { of: 'parts/cell', end: 'rear', by: 2 },
          across: { beside: 'parts/cell', theta: 0, gap: spacing.boardToCell },
        }
      : { z: { of: 'parts/cell', end: 'blade', by: usual.bladeContact + spacing.boardBehind } }
  return { id: 'board', name: 'board', kind: 'board', ...size, at }
}
