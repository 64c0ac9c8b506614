import { equal } from './equal.ts'

/** So many ids; those asked for longest ago go first. */
const mostIds = 4000

/**
 * Of all things that are equal in every number and word, always the same object. Most changes at the bench leave most
 * of a job as it was, although each answer makes it anew; what was found out about a thing is kept with the object and
 * so holds for the next answer too. Of one id `most` are kept: before and after a change or two.
 */
export function oneOf<T extends object>(idOf: (thing: T) => string, most = 3): (thing: T) => T {
  const kept = new Map<string, T[]>()
  const chosen = new WeakMap<T, T>()
  return (thing) => {
    const before = chosen.get(thing)
    if (before) return before
    const id = idOf(thing)
    const list = kept.get(id) ?? []
    const i = list.findIndex((x) => equal(x, thing))
    const one = i < 0 ? thing : (list[i] as T)
    if (i !== 0) kept.set(id, [one, ...list.filter((x) => x !== one)].slice(0, most))
    if (kept.size > mostIds) kept.delete(kept.keys().next().value as string)
    chosen.set(thing, one)
    return one
  }
}
