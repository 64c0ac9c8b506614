import { useSyncExternalStore } from 'react'

/** Height of the window, px: strips share it with what is below them. */
export const useViewHeight = (): number => useSyncExternalStore(subscribe, () => window.innerHeight)

function subscribe(changed: () => void): () => void {
  window.addEventListener('resize', changed)
  return () => window.removeEventListener('resize', changed)
}
