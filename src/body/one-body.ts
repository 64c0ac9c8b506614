import { equal } from '../quantity/equal.ts'
import type { Body } from './body.ts'

/** So many bodies of one id are kept: seen from several sleds, and before and after a change or two. */
const most = 8
/** So many ids; those asked for longest ago go first. */
const mostIds = 4000

const kept = new Map<string, Body[]>()
const chosen = new WeakMap<Body, Body>()

/**
 * Of all bodies that are equal in every number and word, always the same object. Most changes at the bench leave most
 * bodies as they were, although each answer makes them anew; what was found out about a body or a pair is kept with
 * the object and so holds for the next answer too.
 */
export function oneBody(b: Body): Body {
  const before = chosen.get(b)
  if (before) return before
  const list = kept.get(b.id) ?? []
  const i = list.findIndex((x) => equal(x, b))
  const one = i < 0 ? b : (list[i] as Body)
  if (i !== 0) kept.set(b.id, [one, ...list.filter((x) => x !== one)].slice(0, most))
  if (kept.size > mostIds) kept.delete(kept.keys().next().value as string)
  chosen.set(b, one)
  return one
}
