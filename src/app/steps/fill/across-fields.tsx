import { type AcrossForm, acrossAs, acrossForm, acrossForms, throughWall } from '../../../job/place-forms.ts'
import { placeWords } from '../../../project/place-words.ts'
import type { BodyInput } from '../../../project/schema/part.ts'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { PickField } from '../../fields/pick-field.tsx'
import { useSaid } from '../../fields/use-said.ts'
import { SizeField } from '../../readings/size-field.tsx'
import { useProject } from '../../work/work-context.ts'
import { acrossWords } from './kind-words.ts'
import type { PartInHand } from './use-part.ts'

/** Where it lies in the cross-section, and which way it faces. */
export function AcrossFields({ hand, body }: { readonly hand: PartInHand; readonly body: BodyInput }) {
  const { path } = hand
  if (throughWall(body))
    return (
      <fieldset>
        <legend>In the wall</legend>
        <div className="fill-fields">
          <SizeField path={`${path}/at/theta`} label="at θ, °" kind="angle" optional placeholder="0" />
          <SizeField
            path={`${path}/at/outer`}
            label="r of its outer end, mm"
            optional
            placeholder="outside of the wall"
          />
        </div>
      </fieldset>
    )
  return (
    <fieldset>
      <legend>Across</legend>
      <div className="fill-fields">
        {body.shape !== 'ring-sector' && <PlaceFields hand={hand} />}
        <SizeField
          path={`${path}/at/facing`}
          label="Its top faces θ, °"
          kind="angle"
          optional
          placeholder="as placed"
        />
      </div>
    </fieldset>
  )
}

function PlaceFields({ hand }: { readonly hand: PartInHand }) {
  const { part, path, place, placeOf, edit } = hand
  const said = useSaid()
  const project = useProject((p) => p)
  const at = `${path}/at/across`
  const form = acrossForm(part.at?.across)
  const others = project.parts.filter((p) => p.id !== part.id)
  const choose = (value: string) =>
    edit((p) => {
      const [first] = others
      const ref = first && `parts/${first.id}`
      const neighbour = ref === undefined ? undefined : { ref, across: placeOf(ref)?.across }
      const across = acrossAs(value as AcrossForm, place?.across, neighbour)
      const { across: _, ...rest } = p.at ?? {}
      return { ...p, at: across ? { ...rest, across } : rest }
    })
  return (
    <>
      <ChoiceField
        id={at}
        label="Place"
        value={form}
        onValue={choose}
        options={acrossForms
          .filter((f) => f !== 'beside' || others.length > 0)
          .map((f) => ({
            value: f,
            label: f === 'axis' && part.presses ? 'where it presses' : acrossWords[f],
          }))}
        fault={said.fault(at)?.path === at ? said.fault(at)?.hint : undefined}
      />
      {form === 'xy' && (
        <>
          <SizeField path={`${at}/x`} label="x, towards θ 0°, mm" measured={false} />
          <SizeField path={`${at}/y`} label="y, towards θ 90°, mm" measured={false} />
        </>
      )}
      {form === 'polar' && (
        <>
          <SizeField path={`${at}/r`} label="r, mm" measured={false} />
          <SizeField path={`${at}/theta`} label="θ, °" kind="angle" />
        </>
      )}
      {form === 'pushed' && <SizeField path={`${at}/pushed`} label="towards θ, °" kind="angle" />}
      {form === 'beside' && (
        <>
          <PickField
            path={`${at}/beside`}
            label="Beside"
            options={others.map((p) => ({ value: `parts/${p.id}`, label: placeWords(project, `parts/${p.id}`) }))}
          />
          <SizeField path={`${at}/theta`} label="towards θ, °" kind="angle" />
        </>
      )}
      {(form === 'pushed' || form === 'beside') && <SizeField path={`${at}/gap`} label="Gap, mm" measured={false} />}
    </>
  )
}
