import { freshName, freshStamp, type KeptJob, nameOf, nextCard, withName } from './kept-job.ts'
import { renamed } from './renamed.ts'
import { allCards, put, remove, take } from './shelf.ts'
import { tell } from './tidings.ts'

/** What is done to kept jobs from their list. Each tells the other tabs. */

/** Gives a job another name; false where it has gone or was changed meanwhile. */
export async function rename(id: string, name: string): Promise<boolean> {
  const kept = await take(id)
  if (!kept) return false
  const { history } = kept.contents
  const project = renamed(kept.contents.project, name)
  return written({ card: nextCard(id, project, kept.card, freshStamp(), Date.now()), contents: { project, history } }, [
    kept.card.stamp,
  ])
}

/** A job beside the first, with the same history. */
export async function duplicate(id: string): Promise<boolean> {
  const kept = await take(id)
  if (!kept) return false
  const names = (await allCards()).map((c) => c.name)
  const project = withName(kept.contents.project, freshName(nameOf(kept.contents.project), names))
  return add({ project, history: kept.contents.history }).then(() => true)
}

/** A job that was not kept before; gives its id. */
export async function add(contents: KeptJob['contents']): Promise<string> {
  const id = freshStamp()
  await written({ card: nextCard(id, contents.project, undefined, freshStamp(), Date.now()), contents }, [])
  return id
}

/** Takes a job away, and gives what is needed to put it back. */
export async function takeAway(id: string): Promise<KeptJob | undefined> {
  const kept = await remove(id)
  tell({ id, stamp: undefined })
  return kept
}

export function putBack(kept: KeptJob): Promise<boolean> {
  return written(kept, [])
}

async function written({ card, contents }: KeptJob, seen: readonly string[]): Promise<boolean> {
  const may = await put(card, contents, seen)
  if (may === 'write') tell({ id: card.id, stamp: card.stamp })
  return may === 'write' || may === 'written'
}
