import { loadPresets } from '../../presets/presets.ts'
import type { Kind } from '../../presets/schema/kinds.ts'
import { presetText } from '../../presets/text.ts'
import { presetProblems } from '../../presets/validate.ts'
import { lines } from '../columns.ts'
import { exit } from '../exit.ts'
import type { Io } from '../io.ts'
import { problemsText } from '../problems-text.ts'
import { usageText } from '../usage.ts'

/**
 * The entries of one kind or of all, one a line so that a search finds whole entries. This is also where the data is
 * put through its schemas once, in a release too.
 */
export function presets(kind: string | undefined, options: { readonly json?: boolean }, io: Io): number {
  const all = loadPresets()
  const { kinds } = all
  const faults = presetProblems()
  if (faults.length > 0) {
    io.err(problemsText(faults, 'The presets themselves are at fault:', io.width))
    return exit.bug
  }
  const chosen = kind === undefined ? kinds : kinds.filter((k) => k === kind || `${k}s` === kind)
  if (chosen.length === 0) {
    io.err(usageText(`There are no presets of the kind "${kind}".`, `Kinds: ${kinds.join(', ')}.`, io.width))
    return exit.wrongUsage
  }
  if (options.json)
    io.out(
      `${JSON.stringify(
        chosen.flatMap((k: Kind) => all.ofKind(k)),
        null,
        2,
      )}\n`,
    )
  else io.out(lines(chosen.flatMap((k, i) => [...headingOf(k, i, chosen.length), ...all.ofKind(k).map(presetText)])))
  return exit.done
}

/** Only where several kinds follow each other. */
const headingOf = (kind: Kind, i: number, of: number): string[] =>
  of === 1 ? [] : [...(i === 0 ? [] : ['']), `# ${kind}`]
