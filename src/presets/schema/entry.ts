import { z } from 'zod'
import type { How } from '../../rules/source.ts'

/** Nothing here was read in a standard itself: "read" is a page that restates it. */
const how = z.enum(['read', 'computed', 'from memory', 'common practice, no source'] satisfies How[])

/** One way for the whole entry, or one for each field by its dotted path, which covers everything below it. */
const knownHow = z.union([how, z.record(z.string().regex(/^[a-zA-Z0-9]+(\.[a-zA-Z0-9]+)*$/), how)])

/** The schema of one kind's entries: what every entry says of itself, and the kind's own figures. */
export function entryOf<K extends string, S extends z.ZodRawShape>(kind: K, shape: S) {
  return z.strictObject({
    id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
    kind: z.literal(kind),
    name: z.string().min(3),
    /** In words: the standard, "makers' data sheets", "common practice". */
    source: z.string().min(5),
    how: knownHow,
    note: z.string().min(5).optional(),
    ...shape,
  })
}
