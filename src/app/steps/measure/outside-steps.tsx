import { plausible } from '../../../entry/plausible.ts'
import { withValue } from '../../../project/path.ts'
import type { SectionInput } from '../../../project/schema/hilt.ts'
import type { QuantityInput } from '../../../project/schema/quantity.ts'
import { SizeField } from '../../readings/size-field.tsx'
import { useProject, useSetValue } from '../../work/work-context.ts'
import { TakeOut, useEditAndGo } from './record-card.tsx'

type Steps = NonNullable<SectionInput['outside']>

/** The outside of a section: one diameter, or steps from its rear. It may be left out: then no wall is judged. */
export function OutsideSteps({ section }: { readonly section: string }) {
  const path = `sections/${section}/outside`
  const set = useSetValue()
  const go = useEditAndGo()
  const written = useProject((p) => p.sections.find((s) => s.id === section)?.outside) ?? []
  const steps: Steps = written.length > 0 ? written : [{ diameter: '' }]
  const only = steps.length === 1
  const setDiameter = (i: number, diameter: QuantityInput = '') => {
    if (only && diameter === '' && steps[0]?.diameterEnd === undefined) set(path, undefined)
    else if (written.length === 0) set(path, [{ diameter }])
    else set(`${path}/${i}/diameter`, diameter)
  }
  const add = () =>
    go((p) => withValue(p, path, [...steps, { diameter: '' }] satisfies Steps), `${path}/${steps.length - 1}/length`)
  return (
    <fieldset className="steps" data-list>
      <legend>Outside, from the rear</legend>
      <ol>
        {steps.map((step, i) => (
          // biome-ignore lint: a step of the outside has no name but its place
          <li key={i} className="step fields-3">
            {!only && (
              <SizeField path={`${path}/${i}/length`} label="Length" optional placeholder="what is left" narrow />
            )}
            <SizeField
              path={`${path}/${i}/diameter`}
              label={step.diameterEnd === undefined ? 'Outside ⌀' : '⌀ at the rear'}
              usual={plausible.outside}
              placeholder="mm or in"
              narrow
              onValue={(diameter) => setDiameter(i, diameter)}
            />
            {written.length > 0 && (
              <SizeField
                path={`${path}/${i}/diameterEnd`}
                label="⌀ at the blade end"
                usual={plausible.outside}
                optional
                placeholder="the same"
                narrow
              />
            )}
            {!only && <TakeOut path={`${path}/${i}`} name={`outside step ${i + 1}`} label="×" />}
          </li>
        ))}
      </ol>
      <button type="button" className="button" data-add onClick={add}>
        Add an outside step
      </button>
    </fieldset>
  )
}
