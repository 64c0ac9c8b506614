import { z } from 'zod'
import { feature, section } from './schema/hilt.ts'
import { body, part } from './schema/part.ts'
import { across, id, ref, zPlace } from './schema/place.ts'
import { formatName, formatVersion, project } from './schema/project.ts'
import { quantity } from './schema/quantity.ts'
import { sled } from './schema/sled.ts'

/** What is used in many places stands once, under its own name. */
const named = { id, ref, quantity, height: zPlace, across, section, feature, part, body, sled }

const described: Partial<Record<keyof typeof named, string>> = {
  id: 'A short name, used once in its list.',
  ref: 'The list, a slash and the id: sections/body, parts/cell; a bore step as sections/body/neck.',
  quantity: 'A dimension in mm or degrees: a number, a text as typed, a value with its spread, or readings.',
  height: 'A height along the hilt in mm, or measured from the end of something else.',
  across: 'Where in the cross-section something sits, in one of four forms.',
}

/**
 * The project file as JSON Schema (draft 2020-12), for editors and other programs: what may be written, defaults left
 * out. What only the whole project can tell (references, sums of lengths) is not in it; `sledwright check` tells that.
 */
export function projectJsonSchema(): Record<string, unknown> {
  const metadata = z.registry<{ id: string; description?: string }>()
  for (const [name, type] of Object.entries(named)) {
    const description = described[name as keyof typeof named]
    metadata.add(type, { id: name, ...(description === undefined ? {} : { description }) })
  }
  const { $schema, ...schema } = z.toJSONSchema(project, { io: 'input', target: 'draft-2020-12', metadata })
  return {
    $schema,
    $id: `${formatName}-${formatVersion}.schema.json`,
    title: 'Sledwright project',
    description: 'A prop hilt, its parts and the sled that carries them. Lengths in mm, angles in degrees.',
    ...schema,
  }
}
