import type { JobContents } from './kept-job.ts'

/**
 * What a closing tab had not written yet. The database may not finish once a page is being left; the small storage
 * does, because it is written at once. Whoever comes next puts it on the shelf.
 */
export interface LastWords extends JobContents {
  readonly id: string
  /** The stamp its writing has, or would have had: if that is what is kept, nothing was lost. */
  readonly stamp: string
  /** The stamps it builds on: the last writing that was finished, and one that was under way. */
  readonly on: readonly string[]
}

const prefix = 'sledwright-unwritten/'
/** Steps back that go with it: here nothing is shared between them, and room is scarce. */
const mostSteps = 20

/** Leaves them. Where there is no room, the database alone has to do. */
export function leaveWords(words: LastWords): void {
  const { past, future } = words.history
  const short: LastWords = { ...words, history: { past: past.slice(-mostSteps), future: future.slice(-mostSteps) } }
  try {
    localStorage.setItem(prefix + words.stamp, JSON.stringify(short))
  } catch {
    // Nothing more can be done in a page that is being left.
  }
}

export function forgetWords(stamp: string): void {
  try {
    localStorage.removeItem(prefix + stamp)
  } catch {
    // Where nothing can be kept there is nothing to forget.
  }
}

/** All that was left, by whichever tab. */
export function foundWords(): LastWords[] {
  try {
    return Object.keys(localStorage)
      .filter((key) => key.startsWith(prefix))
      .flatMap((key) => {
        const words: LastWords | null = JSON.parse(localStorage.getItem(key) ?? 'null')
        return words?.project && words.history ? [words] : []
      })
  } catch {
    return []
  }
}
