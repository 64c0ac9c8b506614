import { freshStamp, type KeptJob, nameOf, nextCard, withName } from './kept-job.ts'
import { forgetWords, foundWords, type LastWords } from './last-words.ts'
import { cardOf, put } from './shelf.ts'

/** Puts on the shelf what closed tabs had not written yet. What does not fit any more becomes a job of its own. */
export async function recover(): Promise<void> {
  for (const words of foundWords()) {
    const kept = await cardOf(words.id)
    const { card, contents } = recovered(words, kept)
    const may = await put(card, contents, words.on)
    if (may === 'changed' || may === 'deleted') {
      const aside = setAside(words)
      await put(aside.card, aside.contents, [])
    }
    forgetWords(words.stamp)
  }
}

/** The job as the closing tab would have written it. */
function recovered(words: LastWords, kept: KeptJob['card'] | undefined): KeptJob {
  const { id, stamp, project, history } = words
  return { card: nextCard(id, project, kept, stamp, Date.now()), contents: { project, history } }
}

/** The same beside the job that has gone on without it. */
function setAside({ project, history }: LastWords): KeptJob {
  const named = withName(project, `${nameOf(project).slice(0, 100)} (not written)`)
  return {
    card: nextCard(freshStamp(), named, undefined, freshStamp(), Date.now()),
    contents: { project: named, history },
  }
}
