import type { How } from '../rules/source.ts'
import type { Preset } from './schema/kinds.ts'

/** How the figure at a dotted path (`body.diameter`) is known; undefined where the entry does not say. */
export function howKnown(entry: Preset, path: string): How | undefined {
  if (typeof entry.how === 'string') return entry.how
  const parts = path.split('.')
  for (let n = parts.length; n > 0; n--) {
    const how = entry.how[parts.slice(0, n).join('.')]
    if (how) return how
  }
  return undefined
}

/** What a verdict says of a number it took from a preset: `18650 cell, flat top: makers' data sheets (from memory)`. */
export function citation(entry: Preset, path: string): string {
  return `${entry.name}: ${entry.source} (${howKnown(entry, path) ?? 'not said'})`
}
