import { lazy, Suspense } from 'react'
import { enterStep } from './enter-step.ts'
import { stepWords } from './step-words.ts'
import { type StepName, steps } from './view-store.ts'
import { useWork } from './work-context.ts'

/** Each step's fields come when the step is first entered. */
const panels = {
  measure: lazy(() => import('../steps/measure/measure-step.tsx')),
  fill: lazy(() => import('../steps/fill/fill-step.tsx')),
  sled: lazy(() => import('../steps/sled/sled-step.tsx')),
  print: lazy(() => import('../steps/print/print-step.tsx')),
} as const

/** What is done in the step at hand, and at its end the way to the next. */
export function StepPanel({ step }: { readonly step: StepName }) {
  const { view } = useWork()
  const Panel = panels[step]
  const next = steps[steps.indexOf(step) + 1]
  return (
    <section className="work-step" aria-labelledby="step-title">
      <h2 id="step-title" tabIndex={-1}>
        {stepWords[step]}
      </h2>
      <Suspense fallback={<p className="small soft">Fetching the fields …</p>}>
        <div data-step={step}>
          <Panel />
        </div>
        {next && (
          <p className="step-on">
            <button
              type="button"
              className="button"
              // For who tabs on, too, the step begins at its title.
              onClick={() => enterStep(view, next)?.focus({ preventScroll: true })}
            >
              Go on to {stepWords[next]}
            </button>
          </p>
        )}
      </Suspense>
    </section>
  )
}
