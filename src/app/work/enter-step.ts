import { flushSync } from 'react-dom'
import type { StepName, ViewStore } from './view-store.ts'

/** A title this near the lower edge is not yet in view, px: the foot of a narrow page lies over it. */
const foot = 90

/**
 * Turns to a step and to its beginning, wherever the one before was scrolled to. Where the title is in view the page
 * stays as it is: strips and findings do not move for it.
 */
export function enterStep(view: ViewStore, step: StepName): HTMLElement | null {
  flushSync(() => view.setState({ step }))
  const title = document.getElementById('step-title')
  const below = title !== null && title.getBoundingClientRect().top > innerHeight - foot
  title?.scrollIntoView({ block: below ? 'start' : 'nearest' })
  return title
}
