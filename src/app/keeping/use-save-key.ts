import { useEffect, useEffectEvent } from 'react'

/** Ctrl or Cmd with S saves the job as a file: the browser's own way would save the page. */
export function useSaveKey(save: () => void): void {
  const pressed = useEffectEvent(save)
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.key.toLowerCase() !== 's' || !(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey) return
      event.preventDefault()
      pressed()
    }
    document.addEventListener('keydown', press)
    return () => document.removeEventListener('keydown', press)
  }, [])
}
