import { fetchRare as fetchSleds } from '../sled/rare.ts'
import type * as seldom from './seldom.ts'

/** The checks that few jobs need, and the page's first verdict does not wait for. */
type Rare = typeof seldom

let fetched: Rare | undefined

/**
 * To be awaited once before whole jobs are answered: by the command line, by the worker's calls for them, and by tests.
 * It fetches what the layers below keep back, too. A quick check does without.
 */
export async function fetchRare(): Promise<void> {
  const [own] = await Promise.all([import('./seldom.ts'), fetchSleds()])
  fetched = own
}

/** A bug where nobody has waited for them. */
export function rareChecks(): Rare {
  if (!fetched) throw new Error('fetchRare() was not awaited')
  return fetched
}
