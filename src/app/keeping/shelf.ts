import { createStore, promisifyRequest } from 'idb-keyval'
import type { JobCard, JobContents, KeptJob } from './kept-job.ts'
import { type MayWrite, mayWrite } from './revision.ts'

/**
 * The jobs in the browser's own database. A job is two records, written in one transaction: its card for the list,
 * and its contents. All functions reject with the browser's own error where it keeps nothing.
 */

const jobs = createStore('sledwright', 'jobs')
const cardKey = (id: string) => `card/${id}`
const contentsKey = (id: string) => `contents/${id}`
const fileKey = (id: string) => `file/${id}`

/** The cards of all jobs, the last written first. */
export async function allCards(): Promise<JobCard[]> {
  const cards = await jobs('readonly', (store) =>
    promisifyRequest<JobCard[]>(store.getAll(IDBKeyRange.bound('card/', 'card/\uffff'))),
  )
  return cards.toSorted((a, b) => b.written - a.written)
}

/** The newest writing of a job, if it is still there. */
export function cardOf(id: string): Promise<JobCard | undefined> {
  return jobs('readonly', (store) => promisifyRequest<JobCard | undefined>(store.get(cardKey(id))))
}

/** A kept job, if there is one of that id. */
export function take(id: string): Promise<KeptJob | undefined> {
  return jobs('readonly', async (store) => {
    const [card, contents] = await Promise.all([
      promisifyRequest<JobCard | undefined>(store.get(cardKey(id))),
      promisifyRequest<JobContents | undefined>(store.get(contentsKey(id))),
    ])
    return card && contents && { card, contents }
  })
}

/**
 * Writes a job if what is kept is still one of the writings that the work builds on. Look and writing are one
 * transaction: of two tabs that write at once, one finds the other's work.
 */
export function put(card: JobCard, contents: JobContents, seen: readonly string[]): Promise<MayWrite> {
  return jobs('readwrite', (store) => {
    const { transaction } = store
    return new Promise<MayWrite>((resolve, reject) => {
      let may: MayWrite = 'write'
      transaction.oncomplete = () => resolve(may)
      transaction.onabort = transaction.onerror = () => reject(transaction.error ?? new Error('nothing was written'))
      const kept: IDBRequest<JobCard | undefined> = store.get(cardKey(card.id))
      kept.onsuccess = () => {
        may = mayWrite(kept.result, card.stamp, seen)
        if (may !== 'write') return
        try {
          store.put(contents, contentsKey(card.id))
          store.put(card, cardKey(card.id))
        } catch (error) {
          reject(error instanceof Error ? error : new Error(String(error)))
          transaction.abort()
        }
      }
    })
  })
}

/** Takes a job off the shelf, and gives it back for as long as somebody may want it again. */
export async function remove(id: string): Promise<KeptJob | undefined> {
  const kept = await take(id)
  await jobs('readwrite', (store) => {
    for (const key of [cardKey(id), contentsKey(id), fileKey(id)]) store.delete(key)
    return promisifyRequest(store.transaction)
  })
  return kept
}

/** The file on disk that a job was opened from or saved to. */
export function fileOf(id: string): Promise<FileSystemFileHandle | undefined> {
  return jobs('readonly', (store) => promisifyRequest<FileSystemFileHandle | undefined>(store.get(fileKey(id))))
}

export function rememberFile(id: string, handle: FileSystemFileHandle): Promise<void> {
  return jobs('readwrite', (store) => {
    store.put(handle, fileKey(id))
    return promisifyRequest(store.transaction)
  })
}
