import { z } from 'zod'
import { board } from './board.ts'
import { cell } from './cell.ts'
import { connector } from './connector.ts'
import { contact } from './contact.ts'
import { drill } from './drill.ts'
import { material } from './material.ts'
import { port } from './port.ts'
import { guideline, printProcess } from './process.ts'
import { speaker } from './speaker.ts'
import { switchPreset } from './switch.ts'
import { thread } from './thread.ts'
import { tool } from './tool.ts'
import { wire } from './wire.ts'

/** What each kind of entry must look like. A new kind is a file beside this one and a line here. */
export const schemas = {
  cell,
  contact,
  speaker,
  board,
  switch: switchPreset,
  port,
  connector,
  thread,
  drill,
  wire,
  material,
  process: printProcess,
  guideline,
  tool,
}

export type Kind = keyof typeof schemas
export type PresetOf<K extends Kind> = z.infer<(typeof schemas)[K]>
export type Preset = { [K in Kind]: PresetOf<K> }[Kind]

/** A whole file: entries may be of more than one kind, each obeys its own. */
export const presetFile = z.strictObject({
  title: z.string().min(3),
  unit: z.string().min(2),
  note: z.string().optional(),
  entries: z.array(z.looseObject({ kind: z.enum(Object.keys(schemas) as [Kind, ...Kind[]]) })).min(1),
})
