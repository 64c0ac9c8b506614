/**
 * Ids of fields that may stand for a path, the best first: the path itself, then what it is a piece of, up to its
 * record. What a preset says of a part is changed where the preset is chosen.
 */
export function fieldsFor(path: string): readonly string[] {
  const names = path.replace(/^(parts\/[^/]+\/preset)\/.*$/, '$1').split('/')
  const ids: string[] = []
  for (let n = names.length; n >= Math.min(2, names.length); n--) ids.push(names.slice(0, n).join('/'))
  return ids
}

/** The record of a list that a path is in: `parts/cell`, or undefined where it names a whole list. */
export function recordOf(path: string): string | undefined {
  const [list, id] = path.split('/')
  return id === undefined ? undefined : `${list}/${id}`
}
