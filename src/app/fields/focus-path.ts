import { fieldsFor } from './fields-for.ts'

/**
 * Puts the focus on the field of a path: fields have their paths as ids. Where the path itself has no field, the
 * nearest does: one below it, or the record it is in. False where nothing on the page belongs to it.
 */
export function focusPath(path: string): boolean {
  for (const id of fieldsFor(path)) {
    const found = document.getElementById(id) ?? document.querySelector(`[id^="${CSS.escape(id)}/"]:not([id$="-note"])`)
    const target = found && (found.matches(focusable) ? found : found.querySelector(focusable))
    if (!(target instanceof HTMLElement)) continue
    unfold(target)
    if (!target.checkVisibility()) continue
    target.scrollIntoView({ block: 'nearest' })
    target.focus({ preventScroll: true })
    if (document.activeElement === target) return true
  }
  return false
}

/** Opens what the field is folded away in; a summary is seen without that. */
function unfold(field: HTMLElement): void {
  const summary = field.closest('summary')
  for (let at = field.parentElement?.closest('details'); at; at = at.parentElement?.closest('details'))
    if (summary?.parentElement !== at) at.open = true
}

const focusable = 'input, select, textarea, button, summary, a[href], [tabindex]'
