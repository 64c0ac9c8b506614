import type { discsOnRods } from './constructions/discs-on-rods.ts'
import type { markItems } from './features/marks.ts'
import type { splitBodies } from './features/splits.ts'

/** What few sleds have, and the page's first verdict does not wait for. */
interface Rare {
  readonly discsOnRods: typeof discsOnRods
  readonly markItems: typeof markItems
  readonly splitBodies: typeof splitBodies
}

let fetched: Rare | undefined

/**
 * To be awaited once before whole jobs are answered: by the command line, by the worker's calls for them, and by tests.
 * A quick check is a cage in one piece without letters.
 */
export async function fetchRare(): Promise<void> {
  if (fetched) return
  const [discs, marks, splits] = await Promise.all([
    import('./constructions/discs-on-rods.ts'),
    import('./features/marks.ts'),
    import('./features/splits.ts'),
  ])
  fetched = { discsOnRods: discs.discsOnRods, markItems: marks.markItems, splitBodies: splits.splitBodies }
}

/** A bug where nobody has waited for them. */
export function rare(): Rare {
  if (!fetched) throw new Error('fetchRare() was not awaited before a whole job was answered')
  return fetched
}
