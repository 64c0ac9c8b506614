import { enterStep } from './enter-step.ts'
import { stepWords } from './step-words.ts'
import { steps } from './view-store.ts'
import { useView, useWork } from './work-context.ts'

/** The steps of the job in their usual order; any may be entered first. */
export function StepBar() {
  const { view } = useWork()
  const step = useView((v) => v.step)
  return (
    <nav className="step-bar" aria-label="Steps of the job">
      {steps.map((s) => (
        <button key={s} type="button" aria-current={s === step ? 'step' : undefined} onClick={() => enterStep(view, s)}>
          {stepWords[s]}
        </button>
      ))}
    </nav>
  )
}
