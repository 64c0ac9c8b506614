import type * as seldom from './seldom.ts'

/** What is in, through and over the wall, and between sections: the page's first verdict does not wait for it. */
type Walls = typeof seldom

let fetched: Walls | undefined

/** To be awaited before whole jobs are resolved: part of `fetchRare`. */
export async function fetchWalls(): Promise<void> {
  fetched ??= await import('./seldom.ts')
}

/** A bug where nobody has waited for it. */
export function walls(): Walls {
  if (!fetched) throw new Error('fetchRare() was not awaited before a whole job was resolved')
  return fetched
}

/** What only speaks of fields no quick check has may be left out where it was not fetched: there are none then. */
export const wallsIfThere = (): Walls | undefined => fetched
