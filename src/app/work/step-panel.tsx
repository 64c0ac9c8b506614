import { lazy, Suspense } from 'react'
import { stepWords } from './step-words.ts'
import type { StepName } from './view-store.ts'

/** Each step's fields come when the step is first entered. */
const panels = {
  measure: lazy(() => import('../steps/measure/measure-step.tsx')),
  fill: lazy(() => import('../steps/fill/fill-step.tsx')),
  sled: lazy(() => import('../steps/sled/sled-step.tsx')),
  print: lazy(() => import('../steps/print/print-step.tsx')),
} as const

/** What is done in the step at hand. */
export function StepPanel({ step }: { readonly step: StepName }) {
  const Panel = panels[step]
  return (
    <section className="work-step" aria-labelledby="step-title">
      <h2 id="step-title">{stepWords[step]}</h2>
      <Suspense fallback={<p className="small soft">Fetching the fields …</p>}>
        <div data-step={step}>
          <Panel />
        </div>
      </Suspense>
    </section>
  )
}
