import { useEffect, useEffectEvent } from 'react'

/**
 * Ctrl or Cmd with Z, Shift+Z or Y step through the job. A field of the job is part of it: what is typed there is in
 * the job at every key, and goes back with it, a word a step. A field that holds a text of its own first (its id is no
 * path of the project) keeps the browser's own undo, and so does everything in a dialog.
 */
export function useUndoKeys(undo: () => void, redo: () => void): void {
  const step = useEffectEvent((way: 'undo' | 'redo') => (way === 'undo' ? undo() : redo()))
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const way = wayOf(event)
      if (way === undefined || event.defaultPrevented || hasOwnUndo(event.target)) return
      event.preventDefault()
      step(way)
    }
    document.addEventListener('keydown', press)
    return () => document.removeEventListener('keydown', press)
  }, [])
}

function wayOf({ ctrlKey, metaKey, altKey, shiftKey, key }: KeyboardEvent): 'undo' | 'redo' | undefined {
  if (!(ctrlKey || metaKey) || altKey) return undefined
  const letter = key.toLowerCase()
  if (letter === 'z') return shiftKey ? 'redo' : 'undo'
  return letter === 'y' && ctrlKey && !shiftKey ? 'redo' : undefined
}

const textFields = 'textarea, input:not([type]), input[type="text"], input[type="search"], [contenteditable="true"]'

function hasOwnUndo(target: EventTarget | null): boolean {
  if (document.querySelector('dialog[open]')) return true
  return target instanceof HTMLElement && target.matches(textFields) && !target.id.includes('/')
}
