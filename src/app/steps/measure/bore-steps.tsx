import { withRecord } from '../../../project/path.ts'
import type { BoreStepInput, SectionInput } from '../../../project/schema/hilt.ts'
import { useProject } from '../../work/work-context.ts'
import { BoreStep } from './bore-step.tsx'
import { newStep } from './new-records.ts'
import { OwnFault, useEditAndGo } from './record-card.tsx'

/** The bore of a section, step by step from its rear. */
export function BoreSteps({ section }: { readonly section: string }) {
  const path = `sections/${section}/bore`
  const steps = useProject((p) => p.sections.find((s) => s.id === section)?.bore) as readonly BoreStepInput[]
  const go = useEditAndGo()
  // The one that was last has taken what was left of the section till now: it is asked how long it is.
  const add = () =>
    go(
      (p) => withRecord(p, path, newStep(p.sections.find((s) => s.id === section) as SectionInput)),
      `${path}/${steps.at(-1)?.id ?? steps.length - 1}/length`,
    )
  return (
    <fieldset className="steps" data-list>
      <legend>Bore, from the rear</legend>
      <OwnFault path={path} />
      <ol>
        {steps.map((step, i) => (
          <BoreStep key={step.id ?? i} section={section} step={step} at={i} count={steps.length} />
        ))}
      </ol>
      <button type="button" className="button" data-add onClick={add}>
        Add a step
      </button>
    </fieldset>
  )
}
