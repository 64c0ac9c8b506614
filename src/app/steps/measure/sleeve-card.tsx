import { choicesOf } from '../../../project/choice-words.ts'
import { placeWords } from '../../../project/place-words.ts'
import type { Project } from '../../../project/schema/project.ts'
import { PickField } from '../../fields/pick-field.tsx'
import { TickField } from '../../fields/tick-field.tsx'
import { WordsField } from '../../fields/words-field.tsx'
import { SizeField } from '../../readings/size-field.tsx'
import { useProject } from '../../work/work-context.ts'
import { OnField } from './on-field.tsx'
import { PlaceField } from './place-field.tsx'
import { RecordCard } from './record-card.tsx'

const kinds = choicesOf('sleeves/kind')

const ends = choicesOf('sleeves/rearEnd')

/** A cover over the outside: a grip sleeve, a band, a strip. */
export function SleeveCard({ sleeve }: { readonly sleeve: Project['sleeves'][number] }) {
  const path = `sleeves/${sleeve.id}`
  const name = useProject((p) => placeWords(p, path))
  const kind = kinds.find((k) => k.value === sleeve.kind)?.label
  const strip = sleeve.kind === 'strip' || sleeve.kind === 'cover'
  return (
    <RecordCard
      path={path}
      group="sleeves"
      name={name}
      line={
        <span className="plain-line">
          <b>{name}</b>
          {kind && !name.includes(kind) && <span>{kind}</span>}
        </span>
      }
    >
      <div className="fields-3">
        <WordsField path={`${path}/name`} label="Name" placeholder={sleeve.id} />
        <PickField path={`${path}/kind`} label="Kind" none="not said" options={kinds} />
        <OnField path={`${path}/on`} place={`${path}/z`} />
      </div>
      <PlaceField path={`${path}/z`} label="Starts" />
      <div className="fields-3">
        <SizeField path={`${path}/length`} label="Length" placeholder="mm or in" narrow />
        <SizeField path={`${path}/inside`} label="Inside ⌀" optional placeholder="mm or in" narrow />
        <SizeField path={`${path}/outside`} label="Outside ⌀" optional placeholder="mm or in" narrow />
        <SizeField path={`${path}/standoff`} label="Gap under it" optional measured={false} placeholder="none" narrow />
        {strip && (
          <>
            <SizeField path={`${path}/theta`} label="Middle at θ" kind="angle" optional placeholder="all around" />
            <SizeField path={`${path}/half`} label="Half angle" kind="angle" optional placeholder="180" />
          </>
        )}
        <PickField path={`${path}/rearEnd`} label="Rear end" none="not said" options={ends} />
        <PickField path={`${path}/bladeEnd`} label="Blade end" none="not said" options={ends} />
      </div>
      <TickField path={`${path}/sliding`} label="It slides" />
    </RecordCard>
  )
}
