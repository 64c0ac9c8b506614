import { type RefObject, useEffect } from 'react'

/** Closes an open list by Escape, by a press elsewhere, and when the focus goes elsewhere. */
export function useLightDismiss(box: RefObject<HTMLDetailsElement | null>): void {
  useEffect(() => {
    const outside = (event: Event) => {
      const at = box.current
      if (at?.open && event.target instanceof Node && !at.contains(event.target)) at.open = false
    }
    const press = (event: KeyboardEvent) => {
      const at = box.current
      if (!at?.open || event.key !== 'Escape') return
      at.open = false
      at.querySelector('summary')?.focus()
    }
    document.addEventListener('pointerdown', outside)
    document.addEventListener('focusin', outside)
    document.addEventListener('keydown', press)
    return () => {
      document.removeEventListener('pointerdown', outside)
      document.removeEventListener('focusin', outside)
      document.removeEventListener('keydown', press)
    }
  }, [box])
}
