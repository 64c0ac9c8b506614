import { type End, endHeight, heightAlone, heightFrom, measuredFrom, placedFace } from '../../../job/place-forms.ts'
import { placeWords } from '../../../project/place-words.ts'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { PickField } from '../../fields/pick-field.tsx'
import { useSaid } from '../../fields/use-said.ts'
import { SizeField } from '../../readings/size-field.tsx'
import { useProject } from '../../work/work-context.ts'
import { endWords } from './kind-words.ts'
import { type PartInHand, usePlaces } from './use-part.ts'

const ends = (['rear', 'middle', 'blade'] as const).map((end) => ({ value: end, label: endWords[end] }))
const datum = 'datum'
const pressing = 'pressing'

/** Where it lies along the hilt: from the datum, or from an end of something else. */
export function AlongFields({ hand }: { readonly hand: PartInHand }) {
  const { part, path, body, place, placeOf, edit } = hand
  const said = useSaid()
  const project = useProject((p) => p)
  const { places } = usePlaces()
  const z = part.at?.z
  const from = measuredFrom(z)
  const own = placedFace(part, body)
  const height = place && endHeight(place, own)
  const setZ = (next: typeof z) =>
    edit((p) => {
      const { z: _, ...rest } = p.at ?? {}
      return { ...p, at: next === undefined ? rest : { ...rest, z: next } }
    })
  const chooseFrom = (value: string) => {
    const of = placeOf(value)
    if (value === pressing) return setZ(undefined)
    if (value === datum || !of) return setZ(height === undefined ? '' : heightAlone(height))
    // Along the hilt one measures from the rear; on the sled one goes on from the end of the part before.
    const end = part.on?.startsWith('sections/') || value.startsWith('sections/') ? 'rear' : 'blade'
    setZ(heightFrom(height ?? of[end], of, end))
  }
  const chooseEnd = (end: string) => {
    const of = from && placeOf(from.of)
    if (from && of && height !== undefined) setZ({ ...heightFrom(height, of, end as End) })
    else if (from) setZ({ ...from, end: end as End })
  }
  const refs = places.map((p) => p.ref).filter((ref) => ref !== path && !ref.startsWith('sleds/'))
  const known = from === undefined || refs.includes(from.of)
  const chosen = from?.of ?? (part.presses && z === undefined ? pressing : datum)
  return (
    <fieldset>
      <legend>Along the hilt</legend>
      <div className="fill-fields">
        <ChoiceField
          id={`${path}/at/z/of`}
          label="Placed from"
          value={chosen}
          onValue={chooseFrom}
          options={[
            ...(part.presses ? [{ value: pressing, label: 'what it presses' }] : []),
            { value: datum, label: 'datum, z = 0' },
            ...refs.map((ref) => ({ value: ref, label: placeWords(project, ref) })),
            ...(known ? [] : [{ value: from.of, label: placeWords(project, from.of) }]),
          ]}
          fault={said.fault(`${path}/at/z/of`)?.hint}
        />
        {from && (
          <ChoiceField
            id={`${path}/at/z/end`}
            label="its"
            value={from.end ?? 'blade'}
            onValue={chooseEnd}
            options={ends}
          />
        )}
        {from && <SizeField path={`${path}/at/z/by`} label="by, mm" measured={false} optional placeholder="0" />}
        {chosen === datum && <SizeField path={`${path}/at/z`} label="at z, mm" measured={false} />}
        {chosen !== pressing && (
          <PickField
            path={`${path}/at/face`}
            label="Its face placed"
            none={`${endWords[placedFace({ ...part, at: {} }, body)]} (usual)`}
            options={ends}
          />
        )}
      </div>
    </fieldset>
  )
}
