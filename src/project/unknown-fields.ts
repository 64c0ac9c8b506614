import { z } from 'zod'
import { project as schema } from './schema/project.ts'

/** Paths of fields the schema does not know; they are kept in the file and named to the person. At most 20. */
export function unknownFields(data: unknown): string[] {
  const found: string[] = []
  walk(schema, data, '', found)
  return found.slice(0, 20)
}

function walk(type: z.core.$ZodType, value: unknown, path: string, found: string[]): void {
  if (found.length >= 20 || value === null || typeof value !== 'object') return
  const inner = unwrapped(type)
  if (inner instanceof z.ZodArray && Array.isArray(value)) {
    for (const [i, item] of value.entries())
      walk(inner.element, item, `${path}/${(item as { id?: string } | null)?.id ?? i}`.replace(/^\//, ''), found)
  } else if (inner instanceof z.ZodObject) {
    for (const [key, item] of Object.entries(value)) {
      const at = path === '' ? key : `${path}/${key}`
      const field = inner.shape[key]
      if (field === undefined) found.push(at)
      else walk(field, item, at, found)
    }
  } else if (inner instanceof z.ZodUnion) {
    const fits = inner.options.filter((o) => z.safeParse(o, value).success)
    const best = fits.map((o) => {
      const here: string[] = []
      walk(o, value, path, here)
      return here
    })
    const least = best.sort((a, b) => a.length - b.length)[0]
    if (least) found.push(...least)
  }
}

function unwrapped(type: z.core.$ZodType): z.core.$ZodType {
  return type instanceof z.ZodOptional || type instanceof z.ZodDefault
    ? unwrapped(type.unwrap() as z.core.$ZodType)
    : type
}
