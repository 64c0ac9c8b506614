import type { ChosenFile } from './open-file.ts'

/** The file pickers that some browsers have. */
interface Pickers {
  readonly showOpenFilePicker?: (options: object) => Promise<readonly FileSystemFileHandle[]>
  readonly showSaveFilePicker?: (options: object) => Promise<FileSystemFileHandle>
}
const pickers = globalThis as Pickers

const types = [{ description: 'Sledwright project', accept: { 'application/json': ['.json'] } }]

/** Asks for a file to open; undefined where the person thought better of it. */
export async function pickFile(): Promise<ChosenFile | undefined> {
  if (!pickers.showOpenFilePicker) return pickByInput()
  const [handle] = await orNothing(pickers.showOpenFilePicker({ types }), [])
  return handle && { handle, file: await handle.getFile() }
}

/** Whether this browser can write to a file that the person has chosen. */
export const canChoosePlace = (): boolean => pickers.showSaveFilePicker !== undefined

/** Asks where to save; undefined where the person thought better of it. */
export async function pickPlace(suggestedName: string): Promise<FileSystemFileHandle | undefined> {
  return pickers.showSaveFilePicker && orNothing(pickers.showSaveFilePicker({ suggestedName, types }), undefined)
}

function pickByInput(): Promise<ChosenFile | undefined> {
  return new Promise((resolve) => {
    const input = document.createElement('input')
    input.type = 'file'
    input.accept = '.json,application/json'
    input.onchange = () => resolve(input.files?.[0] && { file: input.files[0] })
    input.oncancel = () => resolve(undefined)
    input.click()
  })
}

/** A picker that is closed fails; that is no failure of anybody's. */
async function orNothing<T>(choosing: Promise<T>, nothing: T): Promise<T> {
  try {
    return await choosing
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return nothing
    throw error
  }
}
