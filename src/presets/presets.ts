import { presetFiles } from './files.ts'
import { type Presets, presetsOf } from './registry.ts'

export type { Presets } from './registry.ts'

let loaded: Presets | undefined

/**
 * All entries of all files. They are trusted here, because a start must not wait for it: the tests and the command
 * line's list put every entry through its schema (`presetProblems`).
 */
export function loadPresets(): Presets {
  loaded ??= presetsOf(Object.values(presetFiles))
  return loaded
}
