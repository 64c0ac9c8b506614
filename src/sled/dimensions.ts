import type { Dimension } from '../../geometry/plan/plan.ts'

/** One number of the sled: the person's where it was typed, else the default with its source. */
export function dimension(
  name: string,
  typed: number | undefined,
  fallback: number,
  path: string,
  source: string,
  unit: Dimension['unit'] = 'mm',
): Dimension {
  return typed === undefined
    ? { name, value: fallback, unit, how: 'default', path, source }
    : { name, value: typed, unit, how: 'typed', path, source: 'typed' }
}

/** One that follows from others; `path` is where to change what it follows from. */
export function derived(
  name: string,
  value: number,
  path: string,
  source: string,
  unit: Dimension['unit'] = 'mm',
): Dimension {
  return { name, value, unit, how: 'derived', path, source }
}
