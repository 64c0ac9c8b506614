import type { Project } from '../../project/schema/project.ts'
import { saveFile } from '../sheet/save-file.ts'
import { nameOf } from './kept-job.ts'
import { canChoosePlace, pickPlace } from './pick-file.ts'
import { fileOf, rememberFile } from './shelf.ts'

/** What became of saving a job as a file. */
export type Saved =
  | { readonly kind: 'saved'; readonly name: string }
  /** Into the folder of downloads: this browser lets no page choose a place. */
  | { readonly kind: 'downloaded'; readonly name: string }
  | { readonly kind: 'given-up' }
  | { readonly kind: 'failed'; readonly message: string }

/** A file on disk that a page may write to after it has asked. */
interface AskedHandle extends FileSystemFileHandle {
  readonly requestPermission?: (how: { readonly mode: 'readwrite' }) => Promise<PermissionState>
}

/** The job as the text of a file. */
export const fileText = (project: Project): string => `${JSON.stringify(project, null, 2)}\n`

/** A name for the file of a job that every system takes. */
export function fileName(project: Project): string {
  const plain = nameOf(project)
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 60)
  return `${plain || 'job'}.json`
}

/**
 * Saves to the file that the job was opened from or saved to before; asks for a place where there is none yet, or
 * where another is wanted; gives it to the downloads where no place can be asked for.
 */
export async function saveJob(project: Project, id: string | undefined, another = false): Promise<Saved> {
  if (!canChoosePlace()) {
    saveFile(fileName(project), new TextEncoder().encode(fileText(project)))
    return { kind: 'downloaded', name: fileName(project) }
  }
  try {
    const before = another || id === undefined ? undefined : await fileOf(id).catch(() => undefined)
    const handle = before ?? (await pickPlace(fileName(project)))
    if (!handle) return { kind: 'given-up' }
    await write(handle, fileText(project))
    if (id !== undefined) await rememberFile(id, handle).catch(() => undefined)
    return { kind: 'saved', name: handle.name }
  } catch (error) {
    return { kind: 'failed', message: error instanceof Error ? error.message : String(error) }
  }
}

async function write(handle: AskedHandle, text: string): Promise<void> {
  const may = await handle.requestPermission?.({ mode: 'readwrite' })
  if (may !== undefined && may !== 'granted') throw new Error('The browser was not allowed to write to it.')
  // The file changes only when all of it is written.
  const stream = await handle.createWritable()
  await stream.write(text)
  await stream.close()
}
