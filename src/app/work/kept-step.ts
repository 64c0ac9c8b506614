import { useEffect } from 'react'
import { type StepName, steps, type ViewStore } from './view-store.ts'

/** The step that was open at this place of the browser's history, which outlives a reload; else the first. */
export function keptStep(): StepName {
  const kept: unknown = history.state?.step
  return steps.find((s) => s === kept) ?? 'measure'
}

/** Keeps the step with the address, not in it: an address that is passed on begins at the beginning. */
export function useKeptStep(view: ViewStore): void {
  useEffect(
    () =>
      view.subscribe(({ step }, before) => {
        if (step !== before.step) history.replaceState({ ...history.state, step }, '')
      }),
    [view],
  )
}
