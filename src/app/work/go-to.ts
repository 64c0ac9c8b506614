import { fieldsFor } from '../fields/fields-for.ts'
import { focusPath } from '../fields/focus-path.ts'
import { stepOf } from '../fields/step-of.ts'
import type { ViewStore } from './view-store.ts'

/** A step's fields may still have to be fetched: so many drawings of the page are waited for. */
const patience = 120

/** Turns to the step that has the field of a path, lights the place, and puts the focus there once it is drawn. */
export function goToPath(view: ViewStore, path: string): void {
  const step = stepOf(path)
  if (step === undefined) return
  view.setState({ step, lit: path })
  let tries = 0
  const attempt = () => {
    if (document.querySelector(`[data-step="${step}"]`)) {
      openAround(path)
      if (focusPath(path)) return
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
