import { plausible } from '../../../entry/plausible.ts'
import { withValue } from '../../../project/path.ts'
import type { SectionInput } from '../../../project/schema/hilt.ts'
import type { QuantityInput } from '../../../project/schema/quantity.ts'
import { SizeField } from '../../readings/size-field.tsx'
import { useProject, useSetValue } from '../../work/work-context.ts'
import { TakeOut, useEditAndGo } from './record-card.tsx'

type Steps = NonNullable<SectionInput['outside']>

/** What one step of the outside is set to; the only one, emptied, goes. */
function useSetDiameter(section: string): (i: number, diameter?: QuantityInput) => void {
  const path = `sections/${section}/outside`
  const set = useSetValue()
  const steps = useOutside(section)
  return (i, diameter = '') => {
    if (steps.length < 2 && diameter === '' && steps[0]?.diameterEnd === undefined) set(path, undefined)
    else if (steps.length === 0) set(path, [{ diameter }])
    else set(`${path}/${i}/diameter`, diameter)
  }
}

const none: Steps = []
const useOutside = (section: string): Steps =>
  useProject((p) => p.sections.find((s) => s.id === section)?.outside) ?? none

interface OfSection {
  readonly section: string
}

/** An outside of one diameter, or of two where it tapers. It may be left out: then no wall is judged. */
export function OneOutside({ section }: OfSection) {
  const path = `sections/${section}/outside/0`
  const setDiameter = useSetDiameter(section)
  const taper = useOutside(section)[0]?.diameterEnd !== undefined
  return (
    <>
      <SizeField
        path={`${path}/diameter`}
        label={taper ? 'Outside ⌀, rear' : 'Outside ⌀'}
        usual={plausible.outside}
        placeholder="mm or in"
        narrow
        onValue={(diameter) => setDiameter(0, diameter)}
      />
      {taper && <BladeEnd path={`${path}/diameterEnd`} label="Outside ⌀, blade end" />}
    </>
  )
}

const BladeEnd = ({ path, label }: { readonly path: string; readonly label: string }) => (
  <SizeField path={path} label={label} usual={plausible.outside} optional placeholder="the same" narrow />
)

/** One more step at the blade end; the one that was last is asked how long it is. */
export function AddOutside({ section }: OfSection) {
  const path = `sections/${section}/outside`
  const go = useEditAndGo()
  const written = useOutside(section)
  const steps: Steps = written.length > 0 ? written : [{ diameter: '' }]
  return (
    <button
      type="button"
      className="button"
      data-add
      onClick={() => go((p) => withValue(p, path, [...steps, { diameter: '' }]), `${path}/${steps.length - 1}/length`)}
    >
      Add an outside step
    </button>
  )
}

/** The outside of a section in steps from its rear. */
export function OutsideSteps({ section }: OfSection) {
  const path = `sections/${section}/outside`
  const setDiameter = useSetDiameter(section)
  const steps = useOutside(section)
  return (
    <fieldset className="steps" data-list>
      <legend>Outside, from the rear</legend>
      <ol>
        {steps.map((step, i) => (
          // A step of the outside has no name but its place
          <li key={i} className="step outside-step">
            <SizeField
              path={`${path}/${i}/diameter`}
              label={step.diameterEnd === undefined ? 'Outside ⌀' : '⌀ rear end'}
              usual={plausible.outside}
              narrow
              onValue={(diameter) => setDiameter(i, diameter)}
            />
            <BladeEnd path={`${path}/${i}/diameterEnd`} label="⌀ blade end" />
            <SizeField path={`${path}/${i}/length`} label="Length" optional placeholder="the rest" narrow />
            <TakeOut path={`${path}/${i}`} name={`outside step ${i + 1}`} label="×" />
          </li>
        ))}
      </ol>
      <AddOutside section={section} />
    </fieldset>
  )
}
