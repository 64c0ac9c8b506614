import { z } from 'zod'
import { formatName, formatVersion } from '../format.ts'
import { feature, hilt, joint, screw, section, sleeve } from './hilt.ts'
import { notNegative } from './number.ts'
import { part } from './part.ts'
import { id, ref } from './place.ts'
import { quantity } from './quantity.ts'
import { insertion, sled } from './sled.ts'

// The page needs the names of the format, and none of the schema's weight.
export { formatName, formatVersion, type ListName, listNames } from '../format.ts'

const named = { id, name: z.string().max(120).optional(), note: z.string().max(4000).optional() }
const list = <T extends z.ZodType>(of: T) =>
  z.array(of, { error: 'a list§Give a list of records, each with an id.' }).max(500).default([])

const job = z.looseObject({
  ...named,
  client: z.string().max(120).optional(),
  invented: z.boolean().optional(),
  /** Every number of a file is mm; another unit stands beside its number, in text. */
  units: z
    .literal('mm', {
      error: '"mm"§Every number in a file is mm. Write inches with their unit, "1 1/4 in", and leave this out.',
    })
    .optional(),
})

/** A moment of the hilt's life: what is not there then. */
const state = z.looseObject({ ...named, without: z.array(ref).max(500).optional() })

const wire = z.looseObject({
  ...named,
  preset: id.optional(),
  diameter: quantity.optional(),
  count: z.int().min(1).max(50).optional(),
  from: ref.optional(),
  to: ref.optional(),
  sled: id.optional(),
})

const printer = z.looseObject({
  ...named,
  process: id.optional(),
  material: id.optional(),
  /** How far a printed face may lie from where it was drawn, mm. */
  error: quantity.optional(),
  bead: notNegative.optional(),
  leastWall: notNegative.optional(),
})

const threshold = z.looseObject({ ...named, value: z.number({ error: 'a number§Give the value of the setting.' }) })

/** Lists whose records later work fills; until then any record with an id is kept as it is. */
const reserved = z.looseObject(named)

/** Every list is there from version 1 on; later work adds inside them and never moves them. */
export const project = z.looseObject({
  format: z.literal(formatName, {
    error: `"${formatName}"§This is not a Sledwright project; open a file that starts with "format": "${formatName}".`,
  }),
  version: z.literal(formatVersion, { error: `${formatVersion}§Save it with version ${formatVersion}.` }),
  job: list(job),
  hilts: list(hilt),
  blades: list(reserved),
  sections: list(section),
  joints: list(joint),
  features: list(feature),
  sleeves: list(sleeve),
  screws: list(screw),
  parts: list(part),
  layouts: list(reserved),
  sleds: list(sled),
  insertions: list(insertion),
  states: list(state),
  wires: list(wire),
  vents: list(reserved),
  printer: list(printer),
  permissions: list(reserved),
  wishes: list(reserved),
  thresholds: list(threshold),
  record: list(reserved),
})

export type Project = z.infer<typeof project>
/** @internal */
export type ProjectInput = z.input<typeof project>
export type StateInput = z.infer<typeof state>
export type WireInput = z.infer<typeof wire>
export type PrinterInput = z.infer<typeof printer>
export type ThresholdInput = z.infer<typeof threshold>
