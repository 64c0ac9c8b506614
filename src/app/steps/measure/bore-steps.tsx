import { withRecord } from '../../../project/path.ts'
import type { BoreStepInput, SectionInput } from '../../../project/schema/hilt.ts'
import { useProject } from '../../work/work-context.ts'
import { BoreStep } from './bore-step.tsx'
import { newStep } from './new-records.ts'
import { OwnFault, useEditAndGo } from './record-card.tsx'

/** The bore of a section, step by step from its rear. */
export function BoreSteps({ section }: { readonly section: string }) {
  const path = `sections/${section}/bore`
  const steps = useSteps(section)
  return (
    <fieldset className="steps" data-list>
      <legend>Bore, from the rear</legend>
      <OwnFault path={path} />
      <ol>
        {steps.map((step, i) => (
          <BoreStep key={step.id ?? i} section={section} step={step} at={i} count={steps.length} />
        ))}
      </ol>
      <AddStep section={section} />
    </fieldset>
  )
}

const useSteps = (section: string): readonly BoreStepInput[] =>
  useProject((p) => p.sections.find((s) => s.id === section)?.bore) ?? []

/** One more step at the blade end. The one that was last took what was left of the section: it is asked how long it is. */
export function AddStep({ section }: { readonly section: string }) {
  const path = `sections/${section}/bore`
  const steps = useSteps(section)
  const go = useEditAndGo()
  const add = () =>
    go(
      (p) => withRecord(p, path, newStep(p.sections.find((s) => s.id === section) as SectionInput)),
      `${path}/${steps.at(-1)?.id ?? steps.length - 1}/length`,
    )
  return (
    <button type="button" className="button" data-add onClick={add}>
      Add a bore step
    </button>
  )
}
