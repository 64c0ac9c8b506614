import type { Presets } from '../presets/presets.ts'
import { type ListName, listNames } from '../project/format.ts'
import { isRelative } from '../project/forms.ts'
import type { Project } from '../project/schema/project.ts'
import type { QuantityInput } from '../project/schema/quantity.ts'
import { contextOf } from '../resolve/context.ts'
import { dimensionOf } from '../resolve/dimension.ts'
import { quantityOf } from '../resolve/quantity.ts'
import { isBare } from '../resolve/typed-limit.ts'
import { type Size, size } from './sizes.ts'

type Fields = Readonly<Record<string, unknown>>

/** Lists whose dimensions people type; of the others nothing is echoed. */
const measured: readonly ListName[] = ['sections', 'joints', 'features', 'sleeves', 'screws', 'parts', 'wires']

/**
 * Every dimension that was typed, as the interval it came to by itself: its own spread or its tool's. What follows from
 * several of them (the free bore of a thread with its coating) is in `sizesOf`. What cannot be read is left out.
 */
export function typedSizes(project: Project, presets: Presets): Size[] {
  const ctx = contextOf(project, presets)
  const found: Size[] = []
  const visit = (value: unknown, path: string): void => {
    const dimension = dimensionOf(project, path)
    if (dimension && isQuantity(value)) {
      if (isDrawn(project, path) && isBare(value)) return
      const q = quantityOf(ctx, value, { path, ...dimension })
      if (q) found.push(size(path, q))
      return
    }
    for (const [key, inner] of childrenOf(value)) visit(inner, `${path}/${key}`)
  }
  for (const list of listNames.filter((l) => measured.includes(l)))
    for (const [key, record] of childrenOf(project[list])) visit(record, `${list}/${key}`)
  return found
}

/** The place of a part on a sled: where it will be drawn, so that a bare number there has no spread. */
function isDrawn(project: Project, path: string): boolean {
  const [list, id, field] = path.split('/')
  return list === 'parts' && field === 'at' && !project.parts.some((p) => p.id === id && p.on?.startsWith('sections/'))
}

/** What lies in a value, each under the name that paths give it. */
function childrenOf(value: unknown): (readonly [string, unknown])[] {
  if (Array.isArray(value)) return value.map((item: unknown, i) => [nameOf(item) ?? String(i), item] as const)
  return value !== null && typeof value === 'object' ? Object.entries(value) : []
}

function nameOf(item: unknown): string | undefined {
  const id = item !== null && typeof item === 'object' ? (item as Fields)['id'] : undefined
  return typeof id === 'string' ? id : undefined
}

function isQuantity(value: unknown): value is QuantityInput {
  if (typeof value === 'number') return true
  if (typeof value === 'string') return /\d/.test(value)
  if (value === null || typeof value !== 'object' || Array.isArray(value) || isRelative(value as QuantityInput))
    return false
  return 'value' in value || 'min' in value || 'readings' in value
}
