import type * as features from './features.ts'

/** What is in and through the wall: no quick check has any of it, and the page's first verdict does not wait for it. */
type Features = typeof features

let fetched: Features | undefined

/** To be awaited before whole jobs are resolved: part of `fetchRare`. */
export async function fetchFeatures(): Promise<void> {
  fetched ??= await import('./features.ts')
}

/** A bug where nobody has waited for it. */
export function rareFeatures(): Features {
  if (!fetched) throw new Error('fetchRare() was not awaited before a whole job was resolved')
  return fetched
}
