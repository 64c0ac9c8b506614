import type { LengthwiseView } from './lengthwise.ts'

/** What of the hilt a path or reference is about: the record that is lit, and its stretch of the axis. */
export interface LitPlace {
  readonly id: string
  readonly z0: number
  readonly z1: number
}

/**
 * The place of a path of the project: `sections/body/bore/neck/diameter` is the neck's stretch, `parts/cell/at/z` the
 * cell's. Undefined for what has no place along the hilt.
 */
export function litPlace(view: LengthwiseView, path: string): LitPlace | undefined {
  const [list, id, field, step] = path.split('/')
  const record = `${list}/${id}`
  const bore = field === 'bore' ? `${record}/${step}` : path
  const places: readonly LitPlace[] = [...view.bores, ...view.sections, ...view.parts, ...view.sleds]
  const found = places.find((p) => p.id === bore) ?? places.find((p) => p.id === record)
  return found && { id: found.id, z0: found.z0, z1: found.z1 }
}
