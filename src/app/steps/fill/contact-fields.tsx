import { heightAlone } from '../../../job/place-forms.ts'
import { placeWords } from '../../../project/place-words.ts'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { PickField } from '../../fields/pick-field.tsx'
import { useSaid } from '../../fields/use-said.ts'
import { SizeField } from '../../readings/size-field.tsx'
import { useProject } from '../../work/work-context.ts'
import type { PartInHand } from './use-part.ts'

/** What a contact presses on, and how far it gives way. */
export function ContactFields({ hand }: { readonly hand: PartInHand }) {
  const { part, path, preset, place, edit } = hand
  const said = useSaid()
  const project = useProject((p) => p)
  const targets = project.parts.filter((p) => p.id !== part.id && p.kind !== 'contact')
  const choose = (ref: string) =>
    edit((p) => {
      const { presses, ...rest } = p
      if (ref !== '') return { ...rest, presses: { part: ref, end: presses?.end ?? 'rear' } }
      return rest.at?.z === undefined && place ? { ...rest, at: { ...rest.at, z: heightAlone(place.rear) } } : rest
    })
  const placeholder = preset ? 'as the preset' : 'mm or in'
  return (
    <fieldset>
      <legend>Presses</legend>
      <div className="fill-fields">
        <ChoiceField
          id={`${path}/presses/part`}
          label="on"
          value={part.presses?.part ?? ''}
          onValue={choose}
          options={[
            { value: '', label: 'nothing' },
            ...targets.map((p) => ({ value: `parts/${p.id}`, label: placeWords(project, `parts/${p.id}`) })),
          ]}
          fault={said.fault(`${path}/presses`)?.hint}
        />
        {part.presses && (
          <PickField
            path={`${path}/presses/end`}
            label="its"
            options={[
              { value: 'rear', label: 'rear end' },
              { value: 'blade', label: 'blade end' },
            ]}
          />
        )}
        <SizeField path={`${path}/free`} label="Free length, mm" optional placeholder={placeholder} />
        <SizeField path={`${path}/solid`} label="Fully pressed, mm" optional placeholder={placeholder} />
        <SizeField
          path={`${path}/preload`}
          label="Least compression, mm"
          measured={false}
          optional
          placeholder="usual"
        />
      </div>
    </fieldset>
  )
}
