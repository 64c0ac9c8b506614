import { useEffect } from 'react'
import type { Desk } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'

/** Some browsers also give the place of a dropped file, to save to. */
interface DroppedItem extends DataTransferItem {
  readonly getAsFileSystemHandle?: () => Promise<FileSystemHandle | null>
}

/**
 * A file that is let go of anywhere on the page is opened as a job. Left alone, a browser would show it in the place
 * of the page and of all that is typed in it. A field that takes files itself keeps its own way.
 */
export function useFileDrop(desk: Desk<WorkCalls>): void {
  useEffect(() => {
    const over = (event: DragEvent) => {
      if (isForThePage(event)) event.preventDefault()
    }
    const drop = (event: DragEvent) => {
      const item: DroppedItem | undefined = event.dataTransfer?.items[0]
      const file = item?.getAsFile()
      if (!isForThePage(event) || !file) return
      event.preventDefault()
      const place = item?.getAsFileSystemHandle?.() ?? Promise.resolve(null)
      void Promise.all([import('./open-file.ts'), place]).then(([{ openFile }, handle]) =>
        openFile(desk, { file, ...(handle instanceof FileSystemFileHandle && { handle }) }),
      )
    }
    document.addEventListener('dragover', over)
    document.addEventListener('drop', drop)
    return () => {
      document.removeEventListener('dragover', over)
      document.removeEventListener('drop', drop)
    }
  }, [desk])
}

const isForThePage = ({ dataTransfer, target, defaultPrevented }: DragEvent): boolean =>
  !defaultPrevented &&
  dataTransfer?.types.includes('Files') === true &&
  !(target instanceof Element && target.closest('input[type="file"]'))
