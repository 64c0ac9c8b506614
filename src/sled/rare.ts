import { fetchWalls } from '../resolve/rare.ts'
import type * as seldom from './seldom.ts'

/** What few sleds have, and the page's first verdict does not wait for. */
type Rare = typeof seldom

let fetched: Rare | undefined

/**
 * To be awaited once before whole jobs are answered: by the command line, by the worker's calls for them, and by tests.
 * A quick check does without.
 */
export async function fetchRare(): Promise<void> {
  const [own] = await Promise.all([import('./seldom.ts'), fetchWalls()])
  fetched = own
}

/** A bug where nobody has waited for them. */
export function rare(): Rare {
  if (!fetched) throw new Error('fetchRare() was not awaited before a whole job was answered')
  return fetched
}
