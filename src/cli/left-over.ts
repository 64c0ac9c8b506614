import { existsSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import type { FileLayout } from '../job/lay-out.ts'
import { ending, unproven } from '../job/sled-files.ts'

/** Where the files of a run go, and what their names begin with. */
export interface Place {
  readonly folder: string
  readonly base: string
  readonly layout: FileLayout
  readonly sleds: readonly string[]
}

/**
 * Files that an earlier run left under names that promise a proven sled of this project, laid out the same way, and
 * that this run did not write: whoever prints one of them prints something else than was judged.
 */
export function leftOver({ folder, base, layout, sleds }: Place, written: readonly string[]): string[] {
  if (!existsSync(folder)) return []
  const end = ending({ layout, proven: true })
  const own = (stem: string): boolean =>
    sleds.some((s) => stem === `${base}-${s}` || stem.startsWith(`${base}-${s}-`)) && !stem.endsWith(`-${unproven}`)
  return readdirSync(folder)
    .filter((name) => {
      const stem = /^(.*)\.(?:stl|3mf)$/.exec(name)?.[1]
      if (stem === undefined || !stem.endsWith(end)) return false
      return own(stem.slice(0, stem.length - end.length)) && (end !== '' || !stem.endsWith('-assembled'))
    })
    .toSorted()
    .map((name) => join(folder, name))
    .filter((path) => !written.includes(path))
}
