import { fieldsFor } from '../fields/fields-for.ts'
import { focusPath } from '../fields/focus-path.ts'
import { stepOf } from '../fields/step-of.ts'
import type { ViewStore } from './view-store.ts'

/** A step may still have to be fetched, and its numbers asked for: so many drawings of the page are waited for. */
const patience = 600

/**
 * Turns to the step that has the field of a path, lights the place, and puts the focus there once it is drawn. A box
 * may be drawn before its fields are: the focus waits on it, and goes on to the field unless the person has moved it.
 */
export function goToPath(view: ViewStore, path: string): void {
  const step = stepOf(path)
  if (step === undefined) return
  view.setState({ step, lit: path })
  let tries = 0
  let waiting: Element | null = null
  const attempt = () => {
    if (waiting && document.activeElement !== waiting) return
    const drawn = document.getElementById(path) !== null
    if (document.querySelector(`[data-step="${step}"]`) && (drawn || !waiting)) {
      openAround(path)
      if (focusPath(path)) {
        if (drawn) return
        waiting = document.activeElement
      }
    }
    tries += 1
    if (tries < patience) requestAnimationFrame(attempt)
  }
  requestAnimationFrame(attempt)
}

/** Opens the boxes that the field lies in. */
function openAround(path: string): void {
  const field = fieldsFor(path)
    .map((id) => document.getElementById(id))
    .find((e) => e !== null)
  for (let box = field?.closest('details'); box; box = box.parentElement?.closest('details')) box.open = true
}
