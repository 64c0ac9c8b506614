import { fieldsFor } from './fields-for.ts'

/**
 * Puts the focus on the field of a path: fields have their paths as ids. Where the path itself has no field, the
 * nearest does: one below it, or the record it is in. False where nothing on the page belongs to it.
 */
export function focusPath(path: string): boolean {
  for (const id of fieldsFor(path)) {
    const found = document.getElementById(id) ?? document.querySelector(`[id^="${CSS.escape(id)}/"]:not([id$="-note"])`)
    const target = found && (found.matches(focusable) ? found : found.querySelector(focusable))
    if (!(target instanceof HTMLElement) || !target.checkVisibility()) continue
    target.scrollIntoView({ block: 'nearest' })
    target.focus({ preventScroll: true })
    if (document.activeElement === target) return true
  }
  return false
}

const focusable = 'input, select, textarea, button, summary, a[href], [tabindex]'
