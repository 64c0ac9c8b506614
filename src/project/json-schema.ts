import { z } from 'zod'
import { formatName, formatVersion, project } from './schema/project.ts'

/**
 * The project file as JSON Schema (draft 2020-12), for editors and other programs: what may be written, defaults left
 * out. What only the whole project can tell (references, sums of lengths) is not in it; `sledwright check` tells that.
 */
export function projectJsonSchema(): Record<string, unknown> {
  const { $schema, ...schema } = z.toJSONSchema(project, { io: 'input', target: 'draft-2020-12' })
  return {
    $schema,
    $id: `${formatName}-${formatVersion}.schema.json`,
    title: 'Sledwright project',
    description: 'A prop hilt, its parts and the sled that carries them. Lengths in mm, angles in degrees.',
    ...schema,
  }
}
