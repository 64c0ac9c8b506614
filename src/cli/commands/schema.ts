import { projectJsonSchema } from '../../project/json-schema.ts'
import { exit } from '../exit.ts'
import type { Io } from '../io.ts'

/** The JSON Schema of a project file; public/schema/ holds the same text. */
export function schema(io: Io): number {
  io.out(`${JSON.stringify(projectJsonSchema(), null, 2)}\n`)
  return exit.done
}
